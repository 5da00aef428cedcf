package fairpull.io.table;

import fairpull.domain.pull.DecimalMark;
import java.util.regex.Pattern;

/** Reads numbers as loggers write them: exact to the last bit, without making a string of the plain ones. */
final class NumberText {
    private static final double[] POWERS_OF_TEN = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11,
        1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
    /** Up to here a whole number and its division by a power of ten up to 1e22 are both exact or correctly rounded. */
    private static final int EXACT_DIGITS = 15;
    private static final int LONGEST = 400;
    /** What programs write where there is no value at a moment or a calculation had no result. Common practice, no source. */
    private static final Pattern NO_VALUE = Pattern.compile(
            "[+\\-\u2212]?(nan|inf|infinity)|#?n/a|#na|#(num|value|div/0)!|null|[\\-\u2212\u2013\u2014]{1,3}", Pattern.CASE_INSENSITIVE);

    private NumberText() {
    }

    /** What a cell says about the decimal mark of its file. */
    enum Evidence {
        /** Not a number under any mark. */
        TEXT,
        /** A number that reads alike under both marks. */
        EITHER,
        /** A number only with a decimal point, such as 1.5 or 1,234.5. */
        POINT,
        /** A number only with a decimal comma. */
        COMMA,
        /** 1.234: a decimal point, or a mark of thousands beside a decimal comma. */
        POINT_OR_THOUSANDS,
        /** 1,234: a decimal comma, or a mark of thousands beside a decimal point. */
        COMMA_OR_THOUSANDS
    }

    /** {@return the number in a cell, NaN where it holds none} */
    static double parse(CharSequence cell, DecimalMark mark) {
        int from = start(cell);
        int to = end(cell);
        if (from >= to || to - from > LONGEST) {
            return Double.NaN;
        }
        boolean negative = cell.charAt(from) == '-' || cell.charAt(from) == '\u2212';
        int first = negative || cell.charAt(from) == '+' ? from + 1 : from;
        long digits = 0;
        int count = 0;
        int decimals = -1;
        for (int i = first; i < to; i++) {
            char c = cell.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (c == mark.symbol() && decimals < 0) {
                decimals = 0;
            } else {
                return parseSlowly(cell.subSequence(first, to).toString(), negative, mark);
            }
            if (count > EXACT_DIGITS) {
                return parseSlowly(cell.subSequence(first, to).toString(), negative, mark);
            }
        }
        if (count == 0) {
            return Double.NaN;
        }
        double value = digits / POWERS_OF_TEN[Math.max(decimals, 0)];
        return negative ? -value : value;
    }

    /** {@return whether a cell holds nothing} */
    static boolean isBlank(CharSequence cell) {
        return start(cell) >= end(cell);
    }

    /** {@return whether a cell says that there is no value: NaN, inf, #N/A, null, --} */
    static boolean isNoValue(CharSequence cell) {
        return NO_VALUE.matcher(cell.subSequence(start(cell), Math.max(start(cell), end(cell)))).matches();
    }

    /** {@return what a cell that is not blank says about the decimal mark} */
    static Evidence evidence(CharSequence cell) {
        boolean withPoint = !Double.isNaN(parse(cell, DecimalMark.POINT));
        boolean withComma = !Double.isNaN(parse(cell, DecimalMark.COMMA));
        if (withPoint && withComma) {
            boolean point = contains(cell, '.');
            return point ? Evidence.POINT_OR_THOUSANDS : contains(cell, ',') ? Evidence.COMMA_OR_THOUSANDS : Evidence.EITHER;
        }
        return withPoint ? Evidence.POINT : withComma ? Evidence.COMMA : Evidence.TEXT;
    }

    private static double parseSlowly(String unsigned, boolean negative, DecimalMark mark) {
        int exponentAt = exponentAt(unsigned);
        String mantissa = unsigned.substring(0, exponentAt);
        String exponent = unsigned.substring(exponentAt);
        int decimalAt = mantissa.indexOf(mark.symbol());
        String whole = decimalAt < 0 ? mantissa : mantissa.substring(0, decimalAt);
        String decimals = decimalAt < 0 ? "" : mantissa.substring(decimalAt + 1);
        String plainWhole = withoutThousands(whole, mark);
        boolean sound = isDigits(plainWhole) && isDigits(decimals) && plainWhole.length() + decimals.length() > 0
                && isExponent(exponent);
        if (!sound) {
            return Double.NaN;
        }
        double value = Double.parseDouble((plainWhole.isEmpty() ? "0" : plainWhole) + "." + decimals + "0" + exponent);
        return Double.isInfinite(value) ? Double.NaN : negative ? -value : value;
    }

    private static int exponentAt(String unsigned) {
        int at = Math.max(unsigned.indexOf('e'), unsigned.indexOf('E'));
        return at < 0 ? unsigned.length() : at;
    }

    private static boolean isExponent(String text) {
        if (text.isEmpty()) {
            return true;
        }
        int from = text.length() > 1 && (text.charAt(1) == '-' || text.charAt(1) == '+') ? 2 : 1;
        return text.length() > from && text.length() - from <= 4 && isDigits(text.substring(from));
    }

    /** {@return the whole part without its marks of thousands, or as it is where they do not stand after every third digit} */
    private static String withoutThousands(String whole, DecimalMark mark) {
        int lead = whole.length() % 4;
        if (whole.length() < 5 || lead == 0 || whole.charAt(0) == '0') {
            return whole;
        }
        char grouping = whole.charAt(lead);
        if (grouping != mark.grouping() && " \u00a0\u202f\u2009'\u2019".indexOf(grouping) < 0) {
            return whole;
        }
        StringBuilder plain = new StringBuilder(whole.substring(0, lead));
        for (int i = lead; i < whole.length(); i += 4) {
            if (whole.charAt(i) != grouping) {
                return whole;
            }
            plain.append(whole, i + 1, i + 4);
        }
        return plain.toString();
    }

    private static boolean isDigits(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    private static boolean contains(CharSequence cell, char mark) {
        return cell.toString().indexOf(mark) >= 0;
    }

    private static int start(CharSequence cell) {
        int from = 0;
        while (from < cell.length() && isSpace(cell.charAt(from))) {
            from++;
        }
        return from;
    }

    private static int end(CharSequence cell) {
        int to = cell.length();
        while (to > 0 && isSpace(cell.charAt(to - 1))) {
            to--;
        }
        return to;
    }

    private static boolean isSpace(char c) {
        return c <= ' ' || c == '\u00a0' || c == '\u202f' || c == '\ufeff';
    }
}
