package fairpull.domain.audit;

import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One finding of an audit.
 *
 * @param names of the figures or curves that it is about, as they were published
 * @param side before, after or both
 * @param unit in which its figures are told
 * @param figures by what they are, in SI, shares as shares
 * @param symbols a mixed-up unit, an order, a smoothing, an oddity, the curves that a figure was held against; may be empty
 */
public record Found(List<String> names, Side side, Unit unit, Map<FoundFigure, Double> figures, String symbols) {
    public Found {
        names = List.copyOf(names);
        figures = Map.copyOf(figures);
    }

    /** {@return a finding without figures yet} */
    public static Found of(String name, Side side, Unit unit) {
        return of(name.isEmpty() ? List.of() : List.of(name), side, unit);
    }

    /** {@return a finding about several of them, without figures yet} */
    public static Found of(List<String> names, Side side, Unit unit) {
        return new Found(names, side, unit, Map.of(), "");
    }

    /** {@return a finding about the publication as a whole, without figures yet} */
    public static Found ofAll() {
        return of("", Side.BOTH, Units.ONE);
    }

    /** {@return the same with one more figure, in SI} */
    public Found with(FoundFigure figure, double si) {
        Map<FoundFigure, Double> more = new HashMap<>(figures);
        more.put(figure, si);
        return new Found(names, side, unit, more, symbols);
    }

    /** {@return the same with other symbols} */
    public Found saying(String other) {
        return new Found(names, side, unit, figures, other);
    }

    /** {@return what it is about, in one line; names may hold commas, so that it is for reading alone} */
    public String about() {
        return String.join(", ", names);
    }

    /** {@return a figure in SI, which the finding must have} */
    public double si(FoundFigure figure) {
        if (!figures.containsKey(figure)) {
            throw new IllegalArgumentException("a finding with " + figures.keySet() + " has no " + figure);
        }
        return figures.get(figure);
    }

    /** {@return a figure as it is told: in the unit of the finding, speeds in rpm, ratios, shares and counts as they are} */
    public double told(FoundFigure figure) {
        return figure.in(unit, si(figure));
    }
}
