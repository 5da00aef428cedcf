package fairpull.io.table;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.function.Predicate;

/** The step from characters to rows: one pass over the file, one row at a time, within stated limits. */
final class Rows {
    /** The most columns that are read. */
    static final int MAXIMUM_COLUMNS = 2_000;
    /** The most characters in one cell. */
    static final int MAXIMUM_CELL = 1 << 14;

    private Rows() {
    }

    /**
     * Visits the rows of a file that hold anything, until the visitor has seen enough.
     *
     * @param visitor returns whether it wants the next row
     * @throws InputException if the text is no table under that delimiter
     */
    static void visit(TextSource source, Delimiter delimiter, Predicate<Row> visitor) {
        Collector collector = new Collector(source);
        try (CsvReader<Row> reader = CsvReader.builder()
                .fieldSeparator(delimiter.symbol())
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .trimWhitespacesAroundQuotes(source.blanksRoundQuotes())
                .maxBufferSize(MAXIMUM_CELL)
                .build(collector, source.open());
             CloseableIterator<Row> rows = reader.iterator()) {
            visitAll(rows, visitor);
        } catch (CsvParseException | UncheckedIOException | IOException e) {
            throw collector.explain(e);
        }
    }

    private static void visitAll(Iterator<Row> rows, Predicate<Row> visitor) {
        boolean wanted = true;
        while (wanted && rows.hasNext()) {
            Row row = rows.next();
            wanted = row.isBlank() || visitor.test(row);
        }
    }

    /** Gathers the cells of one row after the other in a single {@link Row}, and knows where the reading stands. */
    private static final class Collector extends AbstractBaseCsvCallbackHandler<Row> {
        private final TextSource source;
        private final Row row = new Row();

        Collector(TextSource source) {
            this.source = source;
        }

        @Override
        protected void handleBegin(long startingLine) {
            row.begin((int) Math.min(startingLine, Integer.MAX_VALUE));
        }

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            if (index >= MAXIMUM_COLUMNS) {
                throw new InputException(place(), "the line has more than " + MAXIMUM_COLUMNS + " cells", "export fewer channels");
            }
            row.add(buffer, offset, length, quoted);
        }

        @Override
        protected Row buildRecord() {
            return row;
        }

        /** The tokeniser wraps whatever is thrown while it reads a row. */
        InputException explain(Exception trouble) {
            if (trouble.getCause() instanceof InputException own) {
                return own;
            }
            if (trouble.getCause() instanceof Error error) {
                throw error;
            }
            if (trouble instanceof IOException io) {
                return TextSource.unreadable(source.file(), io);
            }
            if (trouble instanceof UncheckedIOException unchecked) {
                return TextSource.unreadable(source.file(), unchecked.getCause());
            }
            InputException refusal = new InputException(place(),
                    "a quote is not closed or not alone in its cell, or a cell has more than " + MAXIMUM_CELL + " characters",
                    "mend the quotes, or export the file again if it is cut off");
            refusal.initCause(trouble);
            return refusal;
        }

        private Place place() {
            return Place.of(source.file().toString(), Math.max(1, row.line()));
        }
    }
}
