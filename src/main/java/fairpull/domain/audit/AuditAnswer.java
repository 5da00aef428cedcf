package fairpull.domain.audit;

import fairpull.domain.air.AirState;
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
     * @param chance how often chance alone gives as much
     * @param mixes what else gives an unchanged car as much
     * @param errors what the comparison makes of a true gain of 1 % at ordinary scatter
     * @param test of the values published one by one
     * @param budget what but the part moves it; empty for what is neither power nor torque
     */
    public record OfFigure(Publication.Figure figure, ScatterRange scatter, ChanceAlone chance, Mixes mixes, Optional<TypeErrors> errors,
            Optional<TTest> test, List<BudgetTerm> budget) {
        public OfFigure {
            budget = List.copyOf(budget);
        }
    }

    /**
     * What gives an unchanged car as much where it differs between both figures; for power and torque, as far as it is not excluded.
     *
     * @param standards the pair of standards whose mixing comes nearest
     * @param air in which they are mixed
     * @param barometers the elevation in m at which mixed barometers alone give as much
     */
    public record Mixes(Optional<StandardsMixed> standards, AirState air, OptionalDouble barometers) {
    }

    /**
     * How a claim stands.
     *
     * @param claim the claim
     * @param graded its grade with the figures behind it
     * @param byValues whether it was held against values published one by one, and not against an assumed scatter
     * @param someGain how the claim would stand were it of any gain at all
     */
    public record OfClaim(Publication.Claim claim, GradedClaim graded, boolean byValues, Grade someGain) {
    }

    /** {@return what the figure of a claim can show} */
    public OfFigure figureOf(OfClaim claim) {
        return figures.stream().filter(figure -> figure.figure().name().equals(claim.claim().figure())).findFirst().orElseThrow();
    }

    /** {@return the figure in whose unit it is said how much matters: the first of power or torque without values one by one} */
    public Optional<Publication.Figure> measured() {
        return measured(publication);
    }

    /** {@return the same of a publication} */
    public static Optional<Publication.Figure> measured(Publication publication) {
        return publication.figures().stream().filter(figure -> figure.values().isEmpty() && figure.isOfEngine()).findFirst();
    }
}
