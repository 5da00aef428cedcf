package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.HeaderFinder.Header;
import fairpull.io.table.Sample.SampleRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where the table stands in a file, told from its first rows under each delimiter.
 *
 * @param source the text, which knows its columns where they stand under each other without a delimiter
 * @param sample the first rows under the delimiter that fits best
 * @param header the header in it
 */
record Layout(TextSource source, Sample sample, Header header) {

    /**
     * Finds the table.
     *
     * @throws InputException if there is no header, or nothing below it
     */
    static Layout of(TextSource source) {
        List<Sample> samples = new ArrayList<>();
        Optional<Layout> best = Optional.empty();
        for (Delimiter delimiter : Delimiter.CHARACTERS) {
            Sample sample = Sample.of(source, delimiter);
            samples.add(sample);
            Optional<Layout> found = HeaderFinder.find(sample).map(header -> new Layout(source, sample, header));
            if (found.isPresent() && (best.isEmpty() || found.get().fitsBetterThan(best.get()))) {
                best = found;
            }
        }
        Optional<Layout> withDelimiter = best;
        return fixedWidth(source, withDelimiter).or(() -> withDelimiter).orElseThrow(() -> noTable(source, samples));
    }

    /** Columns kept apart by blanks are only thought of where no delimiter gives two columns of numbers. */
    private static Optional<Layout> fixedWidth(TextSource source, Optional<Layout> withDelimiter) {
        if (withDelimiter.isPresent() && withDelimiter.get().header.numericColumns() > 1) {
            return Optional.empty();
        }
        return FixedWidth.of(source).map(source::with).flatMap(fixed -> {
            Sample sample = Sample.of(fixed, Delimiter.BLANKS);
            return HeaderFinder.find(sample).map(header -> new Layout(fixed, sample, header));
        }).filter(found -> withDelimiter.isEmpty() || found.header.weight() > withDelimiter.get().header.weight());
    }

    /**
     * A header of a single cell may just hide the others: it never wins against one of several cells that stands no further down, which is
     * how a line with a bad cell would become a header; at equal weight the delimiter that cuts the header into more cells wins.
     */
    private boolean fitsBetterThan(Layout other) {
        if (hides(other) || other.hides(this)) {
            return other.hides(this);
        }
        int byWeight = Double.compare(header.weight(), other.header.weight());
        return byWeight > 0 || byWeight == 0 && names().usedCells() > other.names().usedCells();
    }

    private boolean hides(Layout other) {
        return names().usedCells() == 1 && other.names().usedCells() > 1 && other.names().line() <= names().line();
    }

    SampleRow names() {
        return sample.rows().get(header.row());
    }

    Optional<SampleRow> units() {
        return header.unitRow() ? Optional.of(sample.rows().get(header.row() + 1)) : Optional.empty();
    }

    int firstDataLine() {
        return sample.rows().get(header.firstDataRow()).line();
    }

    /** {@return the row of names over groups of columns that stands right above the header, where there is one} */
    Optional<SampleRow> groups() {
        return header.row() > 0 ? Optional.of(sample.rows().get(header.row() - 1)) : Optional.empty();
    }

    Dialect dialect(DecimalMark mark) {
        OptionalInt unitLine = units().map(row -> OptionalInt.of(row.line())).orElse(OptionalInt.empty());
        return new Dialect(source.charset(), source.markLength() > 0, sample.delimiter(), mark, names().line(), unitLine);
    }

    private static InputException noTable(TextSource source, List<Sample> samples) {
        String file = source.file().toString();
        Sample widest = samples.get(0);
        for (Sample sample : samples) {
            widest = width(sample) > width(widest) ? sample : widest;
        }
        if (widest.trouble().isPresent()) {
            return widest.trouble().get();
        }
        if (widest.rows().isEmpty()) {
            return new InputException(Place.of(file), "the file holds nothing but blanks", "export it again");
        }
        SampleRow first = widest.rows().get(0);
        if (isNumbers(first)) {
            return new InputException(Place.of(file, first.line()), "there is no header: the first line already holds numbers",
                    "put a line with the names of the columns first");
        }
        return widest.rows().size() == 1
                ? new InputException(Place.of(file, first.line()), "there is a header but no row of data below it", "export it again")
                : new InputException(Place.of(file), "no line of names with numbers below it was found",
                        "export a table with a line of column names");
    }

    /** A sample that broke off before its first row may be of any width: what stopped it is the message. */
    private static int width(Sample sample) {
        boolean brokeOff = sample.rows().isEmpty() && sample.trouble().isPresent();
        return brokeOff ? Integer.MAX_VALUE : sample.rows().isEmpty() ? 0 : sample.rows().get(0).cells().size();
    }

    private static boolean isNumbers(SampleRow row) {
        int numbers = 0;
        int used = 0;
        for (int column = 0; column < row.cells().size(); column++) {
            numbers += row.isNumber(column) ? 1 : 0;
            used += row.isBlank(column) ? 0 : 1;
        }
        return numbers * 2 >= used && numbers > 0;
    }
}
