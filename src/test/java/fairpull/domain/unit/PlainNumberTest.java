package fairpull.domain.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The shortest decimal that reads back. What “shortest” and “reads back” mean is held against the JDK alone: {@link Double#parseDouble}
 * and {@link BigDecimal}, never {@code Double.toString}, which differs between versions of Java.
 */
class PlainNumberTest {
    private static final int RANDOM_NUMBERS = 20_000;
    private static final long SEED = 20260509;

    @ParameterizedTest
    @CsvSource({"0.0,0", "-0.0,0", "1,1", "2e-3,0.002", "1e22,10000000000000000000000", "1e23,100000000000000000000000",
        "0.1,0.1", "0.30000000000000004,0.30000000000000004", "123456.75,123456.75", "-3.5,-3.5", "1e-7,0.0000001",
        "9007199254740993,9007199254740992"})
    void knownNumbers(double number, String text) {
        assertThat(PlainNumber.shortest(number).toPlainString()).isEqualTo(text);
    }

    @Test
    void everyNumberReadsBackAndNoShorterOneDoes() {
        SplittableRandom random = new SplittableRandom(SEED);
        DoubleStream.concat(
                DoubleStream.of(Double.MIN_VALUE, 2 * Double.MIN_VALUE, Double.MIN_NORMAL, Math.nextDown(Double.MIN_NORMAL),
                        Double.MAX_VALUE, Math.nextDown(Double.MAX_VALUE), 1e23, Math.nextUp(1e23), 1e22, 2e-3, 0x1p1023, 0x1p-1074),
                DoubleStream.concat(
                        DoubleStream.generate(() -> Double.longBitsToDouble(random.nextLong())).filter(Double::isFinite)
                                .limit(RANDOM_NUMBERS),
                        DoubleStream.generate(() -> Double.longBitsToDouble(random.nextLong() >>> 12)).limit(RANDOM_NUMBERS / 10)))
                .forEach(PlainNumberTest::check);
        DoubleStream.generate(() -> Math.rint(random.nextDouble() * 1e6) / 1e3).limit(RANDOM_NUMBERS).forEach(PlainNumberTest::check);
    }

    private static void check(double number) {
        BigDecimal shortest = PlainNumber.shortest(number);
        String text = shortest.toPlainString();
        if (Double.parseDouble(text) != number) {
            throw new AssertionError(text + " does not read back to " + Double.toHexString(number));
        }
        if (text.contains("E") || text.contains(".") && text.endsWith("0")) {
            throw new AssertionError(text + " is not plain");
        }
        int digits = number == 0 ? 1 : shortest.stripTrailingZeros().precision();
        if (digits > 1 && (readsBack(number, digits - 1, RoundingMode.FLOOR) || readsBack(number, digits - 1, RoundingMode.CEILING))) {
            throw new AssertionError(text + " is not the shortest for " + Double.toHexString(number));
        }
    }

    /** The two decimals of so many digits that lie next to a number are the only ones of that length that could read back to it. */
    private static boolean readsBack(double number, int digits, RoundingMode towards) {
        BigDecimal exact = new BigDecimal(number);
        int scale = digits - exact.precision() + exact.scale();
        return exact.setScale(scale, towards).doubleValue() == number;
    }
}
