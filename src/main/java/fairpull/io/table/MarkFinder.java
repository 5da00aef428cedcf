package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.NumberText.Evidence;
import java.util.EnumMap;
import java.util.Map;

/**
 * Tells the decimal mark of a file from its cells. A cell such as 1,234 fits both marks: then another cell has to settle it, or whoever
 * reads the file.
 */
final class MarkFinder {
    /** A mark is settled against cells that speak for the other one if these are at most one in so many. */
    private static final int STRAYS = 20;

    private final TextSource source;
    private final Delimiter delimiter;
    private final Map<Evidence, Integer> counts = new EnumMap<>(Evidence.class);
    private final Map<Evidence, Seen> first = new EnumMap<>(Evidence.class);
    private boolean quoted;

    private record Seen(int line, String text) {
    }

    MarkFinder(TextSource source, Delimiter delimiter) {
        this.source = source;
        this.delimiter = delimiter;
    }

    /**
     * Finds the mark.
     *
     * @param firstDataLine the line on which the data begin
     * @throws InputException if the cells fit both marks, or speak for both
     */
    static DecimalMark of(TextSource source, Sample sample, int firstDataLine) {
        MarkFinder finder = new MarkFinder(source, sample.delimiter());
        for (Sample.SampleRow row : sample.rows()) {
            if (row.line() >= firstDataLine) {
                row.cells().forEach(cell -> finder.take(row.line(), cell));
                finder.sawQuotes(row.quoted());
            }
        }
        if (!finder.isSettled() && !sample.whole()) {
            finder.readOn(firstDataLine);
        }
        return finder.mark();
    }

    /** Takes a cell as evidence. */
    void take(int line, CharSequence cell) {
        if (!NumberText.isBlank(cell)) {
            Evidence evidence = NumberText.evidence(cell);
            counts.merge(evidence, 1, Integer::sum);
            first.computeIfAbsent(evidence, key -> new Seen(line, cell.toString().strip()));
        }
    }

    /** Notes whether cells stand in quotes, where a comma may be more than a delimiter. */
    void sawQuotes(boolean inQuotes) {
        quoted |= inQuotes;
    }

    private boolean isSettled() {
        return count(Evidence.POINT) + count(Evidence.COMMA) > 0
                || count(Evidence.POINT_OR_THOUSANDS) + count(Evidence.COMMA_OR_THOUSANDS) == 0;
    }

    private void readOn(int firstDataLine) {
        Rows.visit(source, delimiter, row -> {
            if (row.line() >= firstDataLine) {
                sawQuotes(row.isQuoted());
                for (int column = 0; column < row.size(); column++) {
                    take(row.line(), row.cell(column));
                }
            }
            return count(Evidence.POINT) + count(Evidence.COMMA) == 0;
        });
    }

    /** {@return the mark that the cells speak for} */
    DecimalMark mark() {
        int points = count(Evidence.POINT);
        int commas = count(Evidence.COMMA);
        if (points > commas * STRAYS) {
            return DecimalMark.POINT;
        }
        if (commas > points * STRAYS) {
            return DecimalMark.COMMA;
        }
        if (points > 0) {
            throw ask(Evidence.POINT, "and “" + first.get(Evidence.COMMA).text() + "” in line " + first.get(Evidence.COMMA).line()
                    + " have different decimal marks");
        }
        boolean loosePoints = count(Evidence.POINT_OR_THOUSANDS) > 0;
        boolean looseCommas = count(Evidence.COMMA_OR_THOUSANDS) > 0;
        boolean commaSeparatesCells = delimiter == Delimiter.COMMA && !quoted;
        if (looseCommas || loosePoints && !commaSeparatesCells) {
            throw ask(looseCommas ? Evidence.COMMA_OR_THOUSANDS : Evidence.POINT_OR_THOUSANDS, "can be read with either decimal mark");
        }
        return DecimalMark.POINT;
    }

    private InputException ask(Evidence about, String trouble) {
        Seen seen = first.get(about);
        return new InputException(Place.of(source.file().toString(), seen.line()), "“" + seen.text() + "” " + trouble,
                new Remedy("say which one it is: --decimal point or --decimal comma",
                    "choose the decimal mark below"));
    }

    private int count(Evidence evidence) {
        return counts.getOrDefault(evidence, 0);
    }
}
