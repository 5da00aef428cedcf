package fairpull.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as an export prints them, by exact decimal arithmetic: {@code Double.toString} differs between releases of Java. */
final class Decimals {
    private Decimals() {
    }

    /** {@return the number as printed, halves away from zero} */
    static String fixed(double value, int places) {
        return rounded(value, places).toPlainString();
    }

    /** {@return the number that is left once it was printed and read again} */
    static double asPrinted(double value, int places) {
        return rounded(value, places).doubleValue();
    }

    private static BigDecimal rounded(double value, int places) {
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(places) : rounded;
    }
}
