package fairpull.domain.heat;

import java.util.List;

/**
 * Something a reader must know before relying on a plan of heat.
 *
 * @param code what is noticed
 * @param figures in the order that the code documents
 */
public record HeatNotice(Code code, List<Double> figures) {
    /** What can be noticed. */
    public enum Code {
        /** The log ends before one time constant has passed. Figures: its seconds, the longest time constant in seconds. */
        LOG_SHORTER_THAN_TIME_CONSTANT,
        /** A time constant is not known within a factor of two. Figures: low and high in seconds. */
        TIME_CONSTANT_LOOSE,
        /** A time constant is not known within a factor of three: nothing can be planned with it. Figures: low and high in seconds. */
        LOG_CANNOT_SAY,
        /** The fitted ambient is less sure than the tolerance. Figures: ambient and its standard error in kelvin. */
        AMBIENT_LOOSE,
        /** Neighbouring residuals resemble each other; errors are widened for it. Figures: correlation, factor of widening. */
        READINGS_FOLLOW_ONE_ANOTHER,
        /** No reading is below 50 °C: are they in °F? Figures: the lowest in kelvin. */
        FAHRENHEIT_SUSPECTED,
        /** The rise of a pull was read off the log. Figures: the rise in kelvin. */
        RISE_TAKEN_FROM_LOG,
        /** The shares of the two time constants were read off the log. */
        SHARES_TAKEN_FROM_LOG,
        /** The time constants were typed in: a starting guess until a log confirms them. */
        TYPED_NOT_FITTED,
        /** Ambient was not given: the reference of 25 °C stands for it. */
        AMBIENT_ASSUMED,
        /** At the interval asked for no number of warm-ups looked for is enough. Figures: the number looked for. */
        NOT_HELD,
        /** With the warm-ups heat leaves no less on B − A than with none. Figures: its relative size with them and without, signless. */
        WARM_UPS_SERVE_THE_GATE,
        /** What is left on the deciding measure is large. Figures: its share of the worthwhile gain. */
        BIAS_LARGE
    }

    public HeatNotice {
        figures = List.copyOf(figures);
    }

    /** {@return a notice} */
    public static HeatNotice of(Code code, Double... figures) {
        return new HeatNotice(code, List.of(figures));
    }
}
