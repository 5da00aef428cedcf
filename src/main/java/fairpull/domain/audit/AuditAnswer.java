package fairpull.domain.audit;

import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an audit answers. Gains and intervals are in SI.
 *
 * @param publication what was audited
 * @param curves its curves as they were read
 * @param figures what each figure can show, in their order
 * @param checks what came of each question put to it
 * @param claims how each claim stands, in their order
 * @param undisclosed what was not disclosed, what could move the figure furthest first
 */
public record AuditAnswer(Publication publication, List<CurvePair> curves, List<OfFigure> figures, List<AuditCheck> checks,
        List<OfClaim> claims, List<Undisclosed> undisclosed) {
    public AuditAnswer {
        curves = List.copyOf(curves);
        figures = List.copyOf(figures);
        checks = List.copyOf(checks);
        claims = List.copyOf(claims);
        undisclosed = List.copyOf(undisclosed);
    }

    /**
     * What a figure can show.
     *
     * @param figure the figure
     * @param scatter that it is held against
     * @param chanceAlone how often an unchanged car gives as much at ordinary scatter
     * @param chanceLeast the same at the least plausible scatter
     * @param chanceMost the same at the most
     * @param tippingPull the pull scatter, relative, above which chance alone gives as much in 5 % of unchanged pairs, the other layers in
     *     proportion
     * @param chances chance alone over scatter, from little to as much as is plausible or tips, whichever is more; empty with
     *     {@code tippingPull}
     * @param nearestMix the pair of standards whose mixing comes nearest, for power and torque
     * @param explainingElevation in m, at which mixed barometers alone give as much, for power and torque
     * @param errors what the comparison makes of a true gain of 1 % at ordinary scatter
     * @param test of the values published one by one
     * @param budget what but the part moves it; empty for what is neither power nor torque
     */
    public record OfFigure(Publication.Figure figure, ScatterRange scatter, double chanceAlone, double chanceLeast, double chanceMost,
            OptionalDouble tippingPull, List<ChanceAt> chances, Optional<StandardsMixed> nearestMix, OptionalDouble explainingElevation,
            Optional<TypeErrors> errors, Optional<TTest> test, List<BudgetTerm> budget) {
        public OfFigure {
            chances = List.copyOf(chances);
            budget = List.copyOf(budget);
        }
    }

    /**
     * A point of chance alone over scatter.
     *
     * @param pullScatter relative, the other layers in the proportions of ordinary scatter
     * @param chance how often an unchanged car gives as much
     */
    public record ChanceAt(double pullScatter, double chance) {
    }

    /**
     * How a claim stands.
     *
     * @param claim the claim
     * @param graded its grade with the figures behind it
     * @param byValues whether it was held against values published one by one, and not against an assumed scatter
     */
    public record OfClaim(Publication.Claim claim, GradedClaim graded, boolean byValues) {
    }

    /** {@return the figure in whose unit it is said how much matters: the first of power or torque without values one by one} */
    public Optional<Publication.Figure> measured() {
        return measured(publication);
    }

    /** {@return the same of a publication} */
    public static Optional<Publication.Figure> measured(Publication publication) {
        return publication.figures().stream().filter(figure -> figure.values().isEmpty()).filter(figure -> {
            Quantity quantity = figure.before().unit().quantity();
            return quantity == Quantity.POWER || quantity == Quantity.TORQUE;
        }).findFirst();
    }
}
