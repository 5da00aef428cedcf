package fairpull.ui.theme;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The decimal mark of the locale, for what is shown and typed in the window. Behind it all figures are written with a point; here alone
 * they get the mark that the reader is used to, and lose it again.
 */
public final class LocalNumbers {
    private static final String POINT = ".";
    /** A point between digits that is no part of a longer chain such as a version or an address. */
    private static final Pattern DECIMAL_POINT = Pattern.compile("(?<=\\d)(?<!\\.\\d{1,9})\\.(?=\\d+(?!\\d|\\.\\d))");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)|(?<![\\d,]),(?=\\d)");
    /** Digits are parted in threes by a space that does not break, which no locale mistakes for a decimal mark. */
    private static final String NARROW = "\u202f";

    private LocalNumbers() {
    }

    private static boolean comma() {
        return DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT)).getDecimalSeparator() == ',';
    }

    /** {@return a text with figures as the reader is used to them} */
    public static String shown(String text) {
        return comma() ? DECIMAL_POINT.matcher(THOUSANDS.matcher(text).replaceAll(NARROW)).replaceAll(",") : text;
    }

    /** {@return what was typed, as the program reads it: a comma is a decimal mark where the locale has it; a point always is} */
    public static String typed(String text) {
        return comma() ? DECIMAL_COMMA.matcher(text).replaceAll(POINT) : text;
    }
}
