package fairpull.report.write;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line of a page may end: where a text of the Java library may, but never within a number, as in {@code ±5.0}. */
final class LineBreaks implements FSTextBreaker {
    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String other) {
        text = other;
        breaks.setText(other);
    }

    @Override
    public int next() {
        int end = breaks.next();
        while (end != BreakIterator.DONE && isWithinNumber(end)) {
            end = breaks.next();
        }
        return end;
    }

    /** A digit begins a line behind a space alone. */
    private boolean isWithinNumber(int place) {
        return place > 0 && place < text.length() && Character.isDigit(text.charAt(place))
                && !Character.isWhitespace(text.charAt(place - 1));
    }
}
