package fairpull.domain.tracing;

import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An axis as far as it is known.
 *
 * @param first where its first point is
 * @param firstValue what stands there
 * @param second where its second point is
 * @param secondValue what stands there
 * @param scale linear unless it was said
 * @param unit of the values
 */
public record AxisDraft(Optional<PixelPoint> first, OptionalDouble firstValue, Optional<PixelPoint> second, OptionalDouble secondValue,
        AxisScale scale, Unit unit) {
    /** Nothing is known of it. */
    public static final AxisDraft NONE = new AxisDraft(Optional.empty(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(),
            AxisScale.LINEAR, Units.ONE);

    /** {@return the axis, once all of it is known} */
    public Optional<Axis> axis() {
        if (first.isEmpty() || second.isEmpty() || firstValue.isEmpty() || secondValue.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Axis(new AxisPoint(first.get(), firstValue.getAsDouble()), new AxisPoint(second.get(),
                secondValue.getAsDouble()), scale, unit));
    }

    /** {@return the same axis with one of its points, 0 or 1, somewhere else} */
    public AxisDraft withPlace(int point, PixelPoint place) {
        return point == 0 ? new AxisDraft(Optional.of(place), firstValue, second, secondValue, scale, unit)
                : new AxisDraft(first, firstValue, Optional.of(place), secondValue, scale, unit);
    }

    /** {@return the same axis with another value at one of its points, 0 or 1} */
    public AxisDraft withValue(int point, OptionalDouble value) {
        return point == 0 ? new AxisDraft(first, value, second, secondValue, scale, unit)
                : new AxisDraft(first, firstValue, second, value, scale, unit);
    }

    /** {@return the same axis laid out otherwise} */
    public AxisDraft withScale(AxisScale other) {
        return new AxisDraft(first, firstValue, second, secondValue, other, unit);
    }

    /** {@return the same axis in another unit} */
    public AxisDraft withUnit(Unit other) {
        return new AxisDraft(first, firstValue, second, secondValue, scale, other);
    }

    /** {@return where one of its points, 0 or 1, is} */
    public Optional<PixelPoint> place(int point) {
        return point == 0 ? first : second;
    }

    /** {@return the value at one of its points, 0 or 1} */
    public OptionalDouble value(int point) {
        return point == 0 ? firstValue : secondValue;
    }
}
