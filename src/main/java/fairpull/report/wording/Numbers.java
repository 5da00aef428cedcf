package fairpull.report.wording;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * How figures are printed: as many decimals as give their uncertainty two significant digits, a true minus sign, and a narrow
 * space that does not break before the unit.
 */
public final class Numbers {
    /** The narrow no-break space between a number and its unit. */
    public static final String THIN = "\u202f";
    private static final String FIXED = "\u00a0";
    private static final String MINUS = "\u2212";
    private static final int PLAIN_DECIMALS = 6;

    private final int decimals;
    private final String unit;

    private Numbers(int decimals, String unit) {
        this.decimals = decimals;
        this.unit = unit;
    }

    /** {@return figures that are known to within {@code uncertainty}, which gets two significant digits} */
    public static Numbers resolving(double uncertainty, String unit) {
        double size = Math.abs(uncertainty);
        boolean usable = size > 0 && Double.isFinite(size);
        return new Numbers(usable ? 1 - (int) Math.floor(Math.log10(size)) : 2, unit);
    }

    /** {@return figures as a finding deserves them: its interval gets two significant digits} */
    public static Numbers of(Finding finding) {
        return resolving(uncertaintyOf(finding), finding.unit());
    }

    private static double uncertaintyOf(Finding finding) {
        if (finding.interval().isPresent() && finding.estimate().isPresent()) {
            Interval interval = finding.interval().get();
            double change = finding.estimate().get().change();
            double near = Math.min(Math.abs(change - interval.low()), Math.abs(interval.high() - change));
            if (near > 0 && Double.isFinite(near)) {
                return near;
            }
        }
        return finding.installs().stream().mapToDouble(Checks.InstallMean::standardDeviation).filter(sd -> sd > 0).max()
                .orElseGet(() -> spreadOfMeans(finding));
    }

    private static double spreadOfMeans(Finding finding) {
        OptionalDouble low = finding.installs().stream().mapToDouble(Checks.InstallMean::mean).min();
        OptionalDouble high = finding.installs().stream().mapToDouble(Checks.InstallMean::mean).max();
        return low.isPresent() && high.isPresent() ? (high.getAsDouble() - low.getAsDouble()) / 10 : 0;
    }

    /** {@return the figures with one decimal more, for tables} */
    public Numbers finer() {
        return new Numbers(decimals + 1, unit);
    }

    /** {@return the number alone} */
    public String bare(double value) {
        if (Double.isNaN(value)) {
            return "–";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "∞" : MINUS + "∞";
        }
        return Math.abs(decimals) > PLAIN_DECIMALS ? scientific(value) : plain(value);
    }

    private String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return withTrueMinus(decimals < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded);
    }

    private String scientific(double value) {
        if (value == 0) {
            return "0";
        }
        int exponent = (int) Math.floor(Math.log10(Math.abs(value)));
        int digits = Math.max(0, exponent + decimals);
        BigDecimal mantissa = BigDecimal.valueOf(value).movePointLeft(exponent).setScale(digits, RoundingMode.HALF_UP);
        return withTrueMinus(mantissa) + THIN + "×" + THIN + "10" + raised(exponent);
    }

    private static String raised(int exponent) {
        StringBuilder raised = new StringBuilder();
        for (char digit : Integer.toString(exponent).toCharArray()) {
            raised.append(digit == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
        }
        return raised.toString();
    }

    /** {@return the number with its unit} */
    public String with(double value) {
        return withUnit(bare(value), unit);
    }

    /** {@return the number with its sign, and its unit} */
    public String signed(double value) {
        return withUnit(signedBare(value), unit);
    }

    /** {@return the number with its sign, without a unit} */
    public String signedBare(double value) {
        String bare = bare(value);
        return value > 0 && !isZero(bare) ? "+" + bare : bare;
    }

    /** {@return both ends in words, the unit once: {@code 3.3 to 6.9 hp}} */
    public String fromTo(double low, double high) {
        return bare(low) + " to " + with(high);
    }

    /** {@return whether the number prints as zero} */
    public boolean printsAsZero(double value) {
        return isZero(bare(value));
    }

    private static boolean isZero(String bare) {
        return bare.chars().noneMatch(letter -> letter >= '1' && letter <= '9');
    }

    /** {@return a figure that was given, not measured: as typed, at most six significant digits} */
    public static String given(double value) {
        return significant(value, 6);
    }

    /** {@return the number with so many significant digits, without zeros at its end} */
    static String significant(double value, int digits) {
        if (Double.isInfinite(value) || Double.isNaN(value)) {
            return Double.isNaN(value) ? "–" : value > 0 ? "∞" : MINUS + "∞";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits)).stripTrailingZeros();
        boolean plain = rounded.scale() <= 9 && rounded.precision() - rounded.scale() <= 9;
        return plain ? withTrueMinus(rounded) : rounded.toString().replace("-", MINUS);
    }

    /** {@return a given figure with its unit} */
    public static String given(double value, String unit) {
        return withUnit(given(value), unit);
    }

    /** {@return a figure of a record with its unit: at most three significant digits} */
    public static String brief(double value, String unit) {
        return withUnit(significant(value, 3), unit);
    }

    /** {@return a share as percent} */
    public static String percent(double share) {
        return given(Math.round(share * 1e6) / 1e4) + THIN + "%";
    }

    /** {@return the level of an interval as percent: one decimal, more only where what is missing from 100 % would vanish} */
    public static String level(double share) {
        double missing = 100 * (1 - share);
        int places = missing > 0 ? Math.max(1, -(int) Math.floor(Math.log10(missing) + 1e-9)) : 1;
        return given(BigDecimal.valueOf(100 * share).setScale(places, RoundingMode.HALF_UP).doubleValue()) + THIN + "%";
    }

    /** {@return a chance as whole percent, kept from reading as certain} */
    public static String chance(double share) {
        return share > 0.99 && share < 1 ? "above 99" + THIN + "%" : Math.round(share * 100) + THIN + "%";
    }

    /** {@return a p-value with its sign of equality: {@code p = 0.0032}} */
    public static String p(double value) {
        if (value < 0.0001 || value > 0.99) {
            return String.join(FIXED, "p", value > 0.99 ? ">" : "<", value > 0.99 ? "0.99" : "0.0001");
        }
        int places = value >= 0.1 ? 2 : 1 - (int) Math.floor(Math.log10(value));
        return String.join(FIXED, "p", "=", BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString());
    }

    /** {@return degrees of freedom} */
    public static String degreesOfFreedom(double value) {
        if (Double.isInfinite(value)) {
            return "∞";
        }
        return BigDecimal.valueOf(value).setScale(value >= 100 ? 0 : 1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    /** {@return degrees of freedom with the noun} */
    public static String withDegreesOfFreedom(double value) {
        String number = degreesOfFreedom(value);
        return number + (number.equals("1") ? " degree of freedom" : " degrees of freedom");
    }

    /** {@return a number of things: {@code 1 pull}, {@code 2 pulls}} */
    static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** {@return minutes as hours and minutes} */
    public static String duration(double minutes) {
        long whole = Math.round(minutes);
        String rest = whole % 60 + THIN + "min";
        return whole < 60 ? rest : whole / 60 + THIN + "h" + (whole % 60 == 0 ? "" : " " + rest);
    }

    private static String withUnit(String number, String unit) {
        return unit.isBlank() || unit.equals("1") ? number : number + THIN + unit;
    }

    private static String withTrueMinus(BigDecimal value) {
        return value.signum() < 0 ? MINUS + value.negate().toPlainString() : value.toPlainString();
    }
}
