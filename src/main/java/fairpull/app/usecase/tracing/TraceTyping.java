package fairpull.app.usecase.tracing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.engine.tracing.Follower;
import fairpull.engine.tracing.Thinning;
import java.util.OptionalDouble;

/** What people type into the fields of a chart that is traced. */
public final class TraceTyping {
    private TraceTyping() {
    }

    /**
     * What stands at a point of an axis.
     *
     * @param value the number; empty for an empty text
     * @param unit typed with it, or {@link Units#ONE}
     */
    public record AxisValue(OptionalDouble value, Unit unit) {
        /** {@return an axis with this value at one of its points, in the unit that was typed if one was} */
        public AxisDraft at(int point, AxisDraft axis) {
            AxisDraft valued = axis.withValue(point, value);
            return unit.equals(Units.ONE) ? valued : valued.withUnit(unit);
        }
    }

    /** {@return a value with or without its unit, such as {@code 2000 rpm}} */
    public static AxisValue axisValue(String text) {
        if (text.isBlank()) {
            return new AxisValue(OptionalDouble.empty(), Units.ONE);
        }
        Amount amount = Amount.parse(text).filter(typed -> Double.isFinite(typed.value()))
                .orElseThrow(() -> new UsageException("", "The number that the chart shows there, such as 2000 rpm or 150 hp."));
        return new AxisValue(OptionalDouble.of(amount.value()), amount.unit());
    }

    /** {@return the value at a point of an axis as it stands in its field} */
    public static String text(AxisDraft axis, int point) {
        if (axis.value(point).isEmpty()) {
            return "";
        }
        String number = PlainNumber.shortest(axis.value(point).getAsDouble()).toPlainString();
        return axis.unit().equals(Units.ONE) ? number : number + " " + axis.unit().symbol();
    }

    /** {@return the longest gap that is bridged, in pixels} */
    public static int gap(String text) {
        return whole(text, 0, Follower.LONGEST_GAP_PX);
    }

    /** {@return pixels from one point to the next} */
    public static int step(String text) {
        return whole(text, 1, Thinning.LONGEST_STEP_PX);
    }

    /** {@return the gap that is bridged unless another is typed} */
    public static int usualGap() {
        return Follower.USUAL_GAP_PX;
    }

    /** {@return the step that is taken unless another is typed} */
    public static int usualStep() {
        return Thinning.USUAL_STEP_PX;
    }

    private static int whole(String text, int least, int most) {
        String bare = text.strip().replaceFirst("(?i)\\s*(px|pixels?)$", "");
        if (!bare.matches("\\d{1,4}") || Integer.parseInt(bare) < least || Integer.parseInt(bare) > most) {
            throw new UsageException("", "A whole number of pixels from " + least + " to " + most + ".");
        }
        return Integer.parseInt(bare);
    }
}
