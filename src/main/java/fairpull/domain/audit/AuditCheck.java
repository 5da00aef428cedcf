package fairpull.domain.audit;

import fairpull.domain.unit.Unit;
import java.util.List;

/**
 * What came of one question put to a publication.
 *
 * @param code which question
 * @param state what came of it
 * @param found each time that it was raised, or what stands where it is clear
 */
public record AuditCheck(Code code, State state, List<Found> found) {
    /** The questions, each with the figures of a finding; quantities in SI, shares as shares. */
    public enum Code {
        /** Power ÷ (torque × engine speed) of a pair of figures at one speed: ratio, least, most that rounding allows, speed. */
        FIGURES_IDENTITY,
        /** A figure against its values: what is printed, what the values come to, how far rounding allows them to be apart. */
        VALUES_AGAINST_FIGURES,
        /** Values published one by one that do not scatter: the difference that all of them show. */
        VALUES_DO_NOT_SCATTER,
        /** Power and torque along curves: median of the ratio, what reading allows it to be off, worst deviation beyond that, its speed. */
        CURVES_IDENTITY,
        /** Where the numbers of power and torque must meet by their units, where they do (NaN: nowhere), what reading allows. */
        CURVES_MEET,
        /** A figure of the text, what the curve shows, how far reading and rounding allow them to be apart. */
        TEXT_AGAINST_PLOT,
        /** Equal values in a row at the top of a curve: how many, which value. */
        CURVE_PLATEAU,
        /** A stretch of the curve after that stands in the one before to the last digit: how many points. */
        CURVE_STRETCH_COPIED,
        /** The curve after is the one before times a factor: the factor. */
        CURVE_IS_MULTIPLE,
        /** A gain in the first part of the sweep and none after it: mean gain there, mean gain after, both relative; speed between. */
        GAIN_AT_START_ONLY,
        /** The best of several pulls on one side, or of more than on the other: what that adds on average, pulls before, pulls after. */
        PICKED_PULLS,
        /** The figure or its speed was picked afterwards: critical value, that of one named before, lowest and highest speed. */
        PICKED_SPEED,
        /** Figures of two days, neither corrected: the apparent gain that air may make of an unchanged car, relative. */
        UNCORRECTED_DAYS,
        /** Barometers that differ: apparent gain at the elevation of the rig, that elevation; both NaN where it is not known. */
        BAROMETERS,
        /** Smoothing that differs between both. */
        SMOOTHING,
        /** An order that does not return to the state before. */
        NO_RETURN,
        /** What was said of the procedure hardly goes together: the symbols are the {@link Oddity#id}. */
        ODDITIES
    }

    /** What can come of a question. */
    public enum State {
        RAISED, CLEAR, NOT_APPLICABLE
    }

    /**
     * One finding.
     *
     * @param about what it is about: names of figures or curves, as they were published
     * @param side before, after or both
     * @param unit in which its figures are told
     * @param figures as the code documents them
     * @param symbols a mixed-up unit, an order, a smoothing, an oddity; may be empty
     */
    public record Found(String about, Side side, Unit unit, List<Double> figures, String symbols) {
        public Found {
            figures = List.copyOf(figures);
        }
    }

    /** Which side of a comparison. */
    public enum Side {
        BEFORE, AFTER, BOTH
    }

    public AuditCheck {
        found = List.copyOf(found);
    }

    /** {@return the question does not apply: too little was published for it} */
    public static AuditCheck notApplicable(Code code) {
        return new AuditCheck(code, State.NOT_APPLICABLE, List.of());
    }

    /** {@return raised where anything was found, clear otherwise} */
    public static AuditCheck of(Code code, List<Found> found) {
        return new AuditCheck(code, found.isEmpty() ? State.CLEAR : State.RAISED, found);
    }

    /** {@return raised where anything was found, clear where something was looked at, not applicable otherwise} */
    public static AuditCheck of(Code code, boolean looked, List<Found> found) {
        return looked ? of(code, found) : notApplicable(code);
    }
}
