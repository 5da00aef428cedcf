package fairpull.io.table;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;

/** Takes a text apart into lines, whatever ends them (LF, CR or both), and never holds more of a line than a cell may have. */
final class LineCutter implements Closeable {
    private final Reader text;
    private final char[] chunk = new char[1 << 13];
    private final StringBuilder line = new StringBuilder();
    private int at;
    private int filled;
    private boolean afterReturn;
    private boolean shortened;

    LineCutter(Reader text) {
        this.text = text;
    }

    /** {@return the next line without its end; null behind the last one} */
    String next() throws IOException {
        line.setLength(0);
        shortened = false;
        boolean any = false;
        for (int c = read(); c >= 0; c = read()) {
            boolean halfOfAnEnd = c == '\n' && afterReturn;
            afterReturn = c == '\r';
            if (halfOfAnEnd) {
                continue;
            }
            if (c == '\n' || c == '\r') {
                return line.toString();
            }
            any = true;
            shortened |= line.length() == Rows.MAXIMUM_CELL;
            if (!shortened) {
                line.append((char) c);
            }
        }
        return any ? line.toString() : null;
    }

    /** {@return whether the line returned last was longer} */
    boolean isShortened() {
        return shortened;
    }

    private int read() throws IOException {
        if (at == filled) {
            filled = text.read(chunk, 0, chunk.length);
            at = 0;
        }
        return filled <= 0 ? -1 : chunk[at++];
    }

    @Override
    public void close() throws IOException {
        text.close();
    }
}
