package fairpull.report.write;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The order in which letters stand on a line, from left to right, where words of scripts that run from right to left are among them: the
 * Unicode bidirectional algorithm (UAX 9) of the Java library, in pages that run from left to right.
 */
final class ReadingOrder implements BidiSplitter, BidiReorderer {
    private List<BidiTextRun> runs = List.of();

    /** {@return the letters of one line from left to right} */
    static String onLine(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        StringBuilder shown = new StringBuilder(line.length());
        for (BidiTextRun run : runs(line)) {
            String text = line.substring(run.getStart(), run.getStart() + run.getLength());
            shown.append(run.getDirection() == RTL ? turned(text) : text);
        }
        return shown.toString();
    }

    /**
     * Stretches that stand one behind the other. What runs from right to left stays in one with the numbers in it: only when its line is
     * known can be said how it stands there.
     */
    private static List<BidiTextRun> runs(String text) {
        Bidi levels = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        List<BidiTextRun> runs = new ArrayList<>();
        int start = 0;
        for (int end = 1; end <= text.length(); end++) {
            boolean turned = levels.getLevelAt(start) > 0;
            if (end == text.length() || levels.getLevelAt(end) > 0 != turned) {
                runs.add(new BidiTextRun(start, end - start, turned ? RTL : LTR));
                start = end;
            }
        }
        return runs;
    }

    /** Marks stay behind the letter to which they belong, and brackets open towards what they enclose. */
    private static String turned(String text) {
        List<String> letters = letters(text);
        byte[] levels = new byte[letters.size()];
        Bidi order = new Bidi(text, Bidi.DIRECTION_RIGHT_TO_LEFT);
        int at = 0;
        for (int place = 0; place < levels.length; place++) {
            levels[place] = (byte) order.getLevelAt(at);
            String letter = letters.get(place);
            at += letter.length();
            if (levels[place] % 2 == 1 && letter.length() == 1) {
                letters.set(place, mirrored(letter));
            }
        }
        Object[] shown = letters.toArray();
        Bidi.reorderVisually(levels, 0, shown, 0, shown.length);
        StringBuilder line = new StringBuilder(text.length());
        for (Object letter : shown) {
            line.append(letter);
        }
        return line.toString();
    }

    private static List<String> letters(String text) {
        BreakIterator ends = BreakIterator.getCharacterInstance(Locale.ROOT);
        ends.setText(text);
        List<String> letters = new ArrayList<>();
        int start = ends.first();
        for (int end = ends.next(); end != BreakIterator.DONE; end = ends.next()) {
            letters.add(text.substring(start, end));
            start = end;
        }
        return letters;
    }

    private static String mirrored(String letter) {
        String pairs = "()[]{}<>«»‹›";
        int place = pairs.indexOf(letter);
        return place < 0 ? letter : pairs.substring(place ^ 1, (place ^ 1) + 1);
    }

    @Override
    public void setParagraph(String paragraph, byte direction) {
        runs = paragraph.isEmpty() ? List.of() : runs(paragraph);
    }

    @Override
    public int countTextRuns() {
        return runs.size();
    }

    @Override
    public BidiTextRun getVisualRun(int place) {
        return runs.get(place);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
        return LTR;
    }

    @Override
    public String reorderRTLTextToLTR(String text) {
        return turned(text);
    }

    /** No typeface of ours has the joined shapes of Arabic. */
    @Override
    public String shapeText(String text) {
        return text;
    }

    @Override
    public String deshapeText(String text) {
        return text;
    }

    @Override
    public boolean isLiveImplementation() {
        return true;
    }
}
