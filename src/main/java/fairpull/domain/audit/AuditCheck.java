package fairpull.domain.audit;

import java.util.List;
import java.util.Set;

/**
 * What came of one question put to a publication.
 *
 * @param code which question
 * @param state what came of it
 * @param found each time that it was raised, with the figures of the code and no others
 */
public record AuditCheck(Code code, State state, List<Found> found) {
    /** The questions, each with the figures that its findings have, in the order in which they are written. */
    public enum Code {
        /** Power ÷ (torque × engine speed) of a pair of figures at one speed. */
        FIGURES_IDENTITY(FoundFigure.RATIO, FoundFigure.LEAST_RATIO, FoundFigure.MOST_RATIO, FoundFigure.SPEED),
        /** A figure against its values. */
        VALUES_AGAINST_FIGURES(FoundFigure.PRINTED, FoundFigure.OF_VALUES, FoundFigure.ALLOWED),
        /** Values published one by one that do not scatter. */
        VALUES_DO_NOT_SCATTER(FoundFigure.DIFFERENCE),
        /** Power and torque along curves: the median ratio, and the speed where it is worst. */
        CURVES_IDENTITY(FoundFigure.RATIO, FoundFigure.RATIO_ALLOWED, FoundFigure.WORST_BEYOND, FoundFigure.WORST_AT),
        /** Where the numbers of power and torque meet. */
        CURVES_MEET(FoundFigure.EXPECTED_SPEED, FoundFigure.MET_SPEED, FoundFigure.SPEED_ALLOWED),
        /** A figure of the text against what the curve shows. */
        TEXT_AGAINST_PLOT(FoundFigure.PRINTED, FoundFigure.SHOWN, FoundFigure.ALLOWED),
        /** Equal values in a row at the top of a curve. */
        CURVE_PLATEAU(FoundFigure.POINTS, FoundFigure.VALUE),
        /** A stretch of the curve after that stands in the one before to the last digit. */
        CURVE_STRETCH_COPIED(FoundFigure.POINTS),
        /** The curve after is the one before times a factor. */
        CURVE_IS_MULTIPLE(FoundFigure.FACTOR),
        /** A gain in the first part of the sweep and none after it. */
        GAIN_AT_START_ONLY(FoundFigure.GAIN_AT_START, FoundFigure.GAIN_AFTER, FoundFigure.UNTIL),
        /** A long curve of which not every point was looked at. */
        CURVE_THINNED(FoundFigure.PUBLISHED_POINTS, FoundFigure.POINTS),
        /** The best of several pulls on one side, or of more than on the other. */
        PICKED_PULLS(FoundFigure.ADDS, FoundFigure.PULLS_BEFORE, FoundFigure.PULLS_AFTER),
        /** The figure or its speed was picked afterwards. */
        PICKED_SPEED(FoundFigure.CRITICAL_VALUE, FoundFigure.NAMED_BEFORE, FoundFigure.FROM, FoundFigure.TO),
        /** Figures of two days, neither corrected: the most that air may make of an unchanged car. */
        UNCORRECTED_DAYS(FoundFigure.APPARENT_GAIN),
        /** Barometers that differ. */
        BAROMETERS(FoundFigure.APPARENT_GAIN, FoundFigure.ELEVATION),
        /** Smoothing that differs between both. */
        SMOOTHING,
        /** An order that does not return to the state before. */
        NO_RETURN,
        /** What was said of the procedure hardly goes together: the symbols are the {@link Oddity#id}. */
        ODDITIES;

        private final List<FoundFigure> figures;

        Code(FoundFigure... figures) {
            this.figures = List.of(figures);
        }

        /** {@return the figures of its findings} */
        public List<FoundFigure> figures() {
            return figures;
        }
    }

    /** What can come of a question. */
    public enum State {
        RAISED, CLEAR, NOT_APPLICABLE
    }

    /** Which side of a comparison. */
    public enum Side {
        BEFORE, AFTER, BOTH
    }

    public AuditCheck {
        found = List.copyOf(found);
        for (Found one : found) {
            if (!one.figures().keySet().equals(Set.copyOf(code.figures()))) {
                throw new IllegalArgumentException("a finding of " + code + " has the figures " + code.figures() + ", had "
                        + one.figures().keySet());
            }
        }
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
