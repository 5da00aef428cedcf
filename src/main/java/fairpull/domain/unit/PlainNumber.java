package fairpull.domain.unit;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as the shortest plain decimal that reads back to the same double: the same text on every Java. */
public final class PlainNumber {
    /** Seventeen digits always suffice for a double. */
    private static final int MOST_DIGITS = 17;
    private static final MathContext NOISE_FREE = new MathContext(12);

    private PlainNumber() {
    }

    /**
     * Returns the shortest decimal that reads back to {@code value}, which must be finite. Double.toString is not used: before Java 19
     * it is not always the shortest.
     */
    public static BigDecimal shortest(double value) {
        if (value == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == value) {
                return plain(rounded);
            }
        }
        return plain(exact.round(new MathContext(MOST_DIGITS)));
    }

    /** {@return a finite value to twelve significant digits, beyond which conversions from a unit and back leave noise} */
    public static double withoutNoise(double value) {
        return Double.isFinite(value) ? new BigDecimal(value).round(NOISE_FREE).doubleValue() : value;
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
