package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Publication.Values.Each;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.Undisclosed.Item;
import fairpull.domain.audit.Undisclosed;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was not disclosed, by how much it could matter. First stands what bars a claim from being shown, though no size can be put on it: a
 * state before that was not run again, other changes, what values are of. Then by size: the near end of the 95 % interval of the published
 * difference on a rig of ordinary scatter with all that was not disclosed done well, minus the near end where one item alone is at its
 * worst plausible value ({@link Assumptions}).
 *
 * <ul>
 * <li>another rig moves it by {@link Assumptions#RIGS_APART} of the level;
 * <li>another day brings another strap-down with it, unless the straps are said to have stayed;
 * <li>the scatter of the rig counts at its most plausible instead of the ordinary one;
 * <li>smoothing and the engine speed have no size, and stand last with what could not matter.
 * </ul>
 */
public final class Disclosure {
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
                .sorted(Comparator.comparingDouble(Disclosure::weight).reversed()).toList();
    }

    private static double weight(Undisclosed gap) {
        return switch (gap.item()) {
            case RETURN, OTHER_CHANGES, VALUES -> Double.POSITIVE_INFINITY;
            default -> gap.moves().orElse(0);
        };
    }

    private static boolean isMissing(Item item, Publication publication) {
        Procedure procedure = publication.procedure();
        Keeping kept = procedure.keeping();
        Quoting quoting = procedure.quoting();
        boolean ofEngine = publication.figures().stream().anyMatch(Publication.Figure::isOfEngine);
        return switch (item) {
            case RIG -> kept.rig().isEmpty() && ofEngine;
            case CORRECTIONS -> !procedure.correcting().corrections().isKnown() && ofEngine;
            case BAROMETERS -> !procedure.correcting().barometers().isKnown() && ofEngine && Assumptions.barometer(procedure) > 0;
            case DAY -> kept.day().isEmpty() && ofEngine;
            case STRAP_DOWN -> kept.strapDown().isEmpty() && ofEngine;
            case PULLS -> AuditAnswer.measured(publication).isPresent()
                    && (quoting.before().isEmpty() || quoting.after().isEmpty());
            case NAMED_BEFORE -> quoting.namedBefore().isEmpty();
            case RETURN -> procedure.returning().returned().isEmpty()
                    && !publication.figures().stream().allMatch(Disclosure::isOfSpecimens);
            case VALUES -> publication.figures().stream().flatMap(figure -> figure.values().stream())
                    .anyMatch(values -> values.each().isEmpty());
            case OTHER_CHANGES -> kept.allElse().isEmpty();
            case SCATTER -> procedure.scatter().isEmpty() && ofEngine;
            case SMOOTHING -> !procedure.sweeping().smoothing().isKnown() && ofEngine;
            case ENGINE_SPEED -> ofEngine && publication.figures().stream().anyMatch(Disclosure::hasNoSpeed);
        };
    }

    private static boolean hasNoSpeed(Publication.Figure figure) {
        return figure.at().isEmpty() && figure.isOfEngine();
    }

    private static boolean isOfSpecimens(Publication.Figure figure) {
        return figure.values().flatMap(Publication.Values::each).filter(Each.SPECIMEN::equals).isPresent();
    }

    private OptionalDouble moves(Item item) {
        Optional<Sameness> different = Optional.of(Sameness.DIFFERENT);
        Keeping kept = procedure.keeping();
        return switch (item) {
            case RIG -> of(worst.shifts().rig());
            case CORRECTIONS -> of(Math.max(worst.shifts().standards(), worst.shifts().weather()));
            case BAROMETERS -> of(worst.shifts().barometer());
            case DAY -> OptionalDouble.of(otherDay());
            case STRAP_DOWN -> against(procedure.with(kept.withStrapDown(different)));
            case PULLS -> OptionalDouble.of(nearEnd(procedure, scatter.ordinary()) - nearEnd(withWorstPulls()));
            case NAMED_BEFORE -> against(procedure.with(procedure.quoting().withNamedBefore(Optional.of(false))));
            case SCATTER -> OptionalDouble.of(nearEnd(procedure, scatter.ordinary()) - nearEnd(procedure, scatter.most()));
            case RETURN, OTHER_CHANGES, VALUES, SMOOTHING, ENGINE_SPEED -> OptionalDouble.empty();
        };
    }

    /** Another day brings another strap-down with it, unless the straps are said to have stayed, and weather to what is not corrected. */
    private double otherDay() {
        Optional<Sameness> different = Optional.of(Sameness.DIFFERENT);
        Keeping kept = procedure.keeping();
        Keeping apart = kept.withDay(different).withStrapDown(kept.strapDown().or(() -> different));
        return against(procedure.with(apart)).getAsDouble()
                + (Assumptions.isUncorrected(procedure) ? worst.shifts().weather() * figure.before().si() : 0);
    }

    private OptionalDouble of(double share) {
        return OptionalDouble.of(share * figure.before().si());
    }

    private OptionalDouble against(Procedure disclosed) {
        return OptionalDouble.of(nearEnd(procedure, scatter.ordinary()) - nearEnd(disclosed, scatter.ordinary()));
    }

    /** What is assumed and not what was disclosed: the worst number of pulls may be fewer than the installs of the order. */
    private Assumed withWorstPulls() {
        Assumed well = Assumptions.ordinary(procedure, scatter.ordinary(), pickedCritical);
        return new Assumed(worst.before(), worst.after(), well.scatter(), well.refits(), well.days(), well.shifts(), well.criticalValue());
    }

    private double nearEnd(Procedure disclosed, ScatterShares shares) {
        return nearEnd(Assumptions.ordinary(disclosed, shares, pickedCritical));
    }

    private double nearEnd(Assumed assumed) {
        return Audit.difference(figure, assumed).interval().low();
    }
}
