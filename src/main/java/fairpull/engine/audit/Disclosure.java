package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.Undisclosed.Item;
import fairpull.domain.audit.Undisclosed;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was not disclosed, by how much it could matter: the near end of the 95 % interval of the published difference on a rig of ordinary
 * scatter with all that was not disclosed done well, minus the near end where one item alone is at its worst plausible value
 * ({@link Assumptions}).
 *
 * <ul>
 * <li>another rig moves it by {@value #RIGS_APART} of the level: rigs read 5 to 10 % apart (common practice, no source; coast-downs of one
 * car over several rollers spread 5 to 11 %, EPA LDTP 78-05);
 * <li>another day brings another strap-down with it, unless the straps are said to have stayed;
 * <li>the scatter of the rig counts at its most plausible instead of the ordinary one;
 * <li>a state before that was not run again, other changes, smoothing and the engine speed have no size: it is that of whatever moved, or
 * was changed.
 * </ul>
 */
public final class Disclosure {
    /** How far another rig may read from this one, as a share of the level. */
    static final double RIGS_APART = 0.10;

    private final Procedure procedure;
    private final Publication.Figure figure;
    private final double pickedCritical;
    private final ScatterRange scatter;
    private final Assumed worst;

    private Disclosure(Procedure procedure, Publication.Figure figure, double pickedCritical) {
        this.procedure = procedure;
        this.figure = figure;
        this.pickedCritical = pickedCritical;
        this.scatter = PlausibleScatter.of(procedure.scatter(), figure.before());
        this.worst = Assumptions.worst(procedure, scatter.ordinary(), pickedCritical);
    }

    /**
     * What a publication does not disclose.
     *
     * @param publication the publication
     * @param pickedCritical critical value of the largest of those picked from, in case the figure was
     * @return what could move its first figure of power or torque furthest first, what has no size last
     */
    static List<Undisclosed> missing(Publication publication, double pickedCritical) {
        Procedure procedure = publication.procedure();
        Optional<Disclosure> sizes = AuditAnswer.measured(publication).map(figure -> new Disclosure(procedure, figure, pickedCritical));
        return Arrays.stream(Item.values()).filter(item -> isMissing(item, publication))
                .map(item -> new Undisclosed(item, sizes.map(size -> size.moves(item)).orElse(OptionalDouble.empty())))
                .sorted(Comparator.comparingDouble((Undisclosed gap) -> gap.moves().orElse(Double.NEGATIVE_INFINITY)).reversed())
                .toList();
    }

    private static boolean isMissing(Item item, Publication publication) {
        Procedure procedure = publication.procedure();
        boolean ofEngine = AuditAnswer.measured(publication).isPresent();
        return switch (item) {
            case RIG -> procedure.rig().isEmpty();
            case CORRECTIONS -> procedure.correctionBefore().isEmpty() || procedure.correctionAfter().isEmpty();
            case BAROMETERS -> !procedure.barometers().isKnown() && Assumptions.barometer(procedure) > 0;
            case DAY -> procedure.day().isEmpty();
            case STRAP_DOWN -> procedure.strapDown().isEmpty();
            case PULLS -> procedure.before().isEmpty() || procedure.after().isEmpty();
            case NAMED_BEFORE -> procedure.namedBefore().isEmpty();
            case RETURN -> procedure.returned().isEmpty();
            case OTHER_CHANGES -> procedure.allElse().isEmpty();
            case SCATTER -> procedure.scatter().isEmpty() && ofEngine;
            case SMOOTHING -> !procedure.smoothing().isKnown() && ofEngine;
            case ENGINE_SPEED -> ofEngine && publication.figures().stream().anyMatch(Disclosure::hasNoSpeed);
        };
    }

    private static boolean hasNoSpeed(Publication.Figure figure) {
        Quantity quantity = figure.before().unit().quantity();
        return figure.at().isEmpty() && (quantity == Quantity.POWER || quantity == Quantity.TORQUE);
    }

    private OptionalDouble moves(Item item) {
        Optional<Sameness> different = Optional.of(Sameness.DIFFERENT);
        return switch (item) {
            case RIG -> OptionalDouble.of(RIGS_APART * figure.before().si());
            case CORRECTIONS -> OptionalDouble.of(worst.standards() * figure.before().si());
            case BAROMETERS -> OptionalDouble.of(worst.barometer() * figure.before().si());
            case DAY -> against(procedure.withDay(different).withStrapDown(procedure.strapDown().or(() -> different)));
            case STRAP_DOWN -> against(procedure.withStrapDown(different));
            case PULLS -> against(procedure.withQuotes(BeforeAfter.of(worst.before(), worst.after())));
            case NAMED_BEFORE -> against(procedure.withNamedBefore(Optional.of(false)));
            case SCATTER -> OptionalDouble.of(nearEnd(procedure, scatter.ordinary()) - nearEnd(procedure, scatter.most()));
            case RETURN, OTHER_CHANGES, SMOOTHING, ENGINE_SPEED -> OptionalDouble.empty();
        };
    }

    private OptionalDouble against(Procedure disclosed) {
        return OptionalDouble.of(nearEnd(procedure, scatter.ordinary()) - nearEnd(disclosed, scatter.ordinary()));
    }

    private double nearEnd(Procedure disclosed, ScatterShares shares) {
        return new PublishedDifference(figure.gainSi(), figure.before().si(), figure.before().halfDigitSi(),
                Assumptions.ordinary(disclosed, shares, pickedCritical)).interval().low();
    }
}
