package fairpull.report.chart;

/**
 * How wide a text is at most, without asking a font: the page may be read with fonts that are not known here. The widths are at
 * least those of DejaVu Sans 2.37, one of the widest faces in use, in its own advance widths; letters beyond Latin-1 are taken as
 * wide, so that only rare ligatures and number forms are wider than thought.
 */
public final class LetterWidths {
    private static final double BOLD = 1.18;

    private LetterWidths() {
    }

    /** {@return the width of a text in units of the drawing} */
    public static double of(String text, Shape.Type type) {
        double ems = text.chars().mapToDouble(LetterWidths::ems).sum();
        return ems * type.size() * (type.bold() ? BOLD : 1);
    }

    private static double ems(int letter) {
        if ("iljI|.,:;'’‘·".indexOf(letter) >= 0) {
            return 0.36;
        }
        if (letter == '\u202f' || letter == '\u2009') {
            return 0.25;
        }
        if (" frt!()[]-/\u00a0".indexOf(letter) >= 0) {
            return 0.42;
        }
        if ("–“”⁰¹²³⁴⁵⁶⁷⁸⁹⁻".indexOf(letter) >= 0) {
            return 0.65;
        }
        if ("+−±×÷=<>^~#&→←Δ∞".indexOf(letter) >= 0) {
            return 0.86;
        }
        if ("mMwW%@©®¼½¾Ææ".indexOf(letter) >= 0 || letter > 0xff) {
            return 1.1;
        }
        return Character.isUpperCase(letter) ? 0.80 : 0.65;
    }

    /** {@return the text, or its beginning with an ellipsis where it is wider than allowed} */
    public static String fit(String text, Shape.Type type, double width) {
        if (of(text, type) <= width) {
            return text;
        }
        String cut = text;
        while (!cut.isEmpty() && of(cut + "…", type) > width) {
            cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
        }
        return cut.strip() + "…";
    }
}
