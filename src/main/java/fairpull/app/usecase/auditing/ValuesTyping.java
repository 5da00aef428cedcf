package fairpull.app.usecase.auditing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Values one by one as people type them, or paste them out of a spreadsheet: two columns, or one at a time. */
public final class ValuesTyping {
    /** A number with a comma and digits on both sides of it, and maybe a unit behind. */
    private static final Pattern COMMA = Pattern.compile("(\\s*[-+−]?\\d+),(\\d+)(?!\\d|[,.]\\d)(.*)");
    private static final Pattern NUMBER = Pattern.compile("[-+−]?[.,]?\\d.*");
    private static final Pattern TWO_NUMBERS = Pattern.compile("\\s*([-+−]?\\d\\S*)\\s+([-+−]?\\d\\S*)\\s*");
    private static final int THOUSAND = 3;

    private ValuesTyping() {
    }

    /** {@return a value as it was printed; one without a unit takes that of its figure, or of the values beside it} */
    public static Optional<Printed> value(String text, FigureDraft figure) {
        Optional<Printed> beside = figure.before().or(figure::after).or(() -> figure.values().all().findFirst());
        Optional<Printed> value = AuditTyping.printed(pointed(List.of(text)).get(0), beside);
        if (value.isPresent() && beside.isPresent() && !value.get().isLike(beside.get())) {
            throw new UsageException("", "a value in " + beside.get().unit().symbol() + ", as the figure is");
        }
        return value;
    }

    /**
     * {@return the rows of what was pasted, each with one cell or two; heads, empty lines and a column that only counts are left out}
     *
     * @throws UsageException if it is wider than that, or there is nothing in it
     */
    public static List<List<String>> pasted(String text) {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        List<List<String>> rows = new ArrayList<>(lines.stream().map(line -> cells(line, lines)).toList());
        if (rows.size() > 1 && rows.get(0).stream().map(String::strip).noneMatch(cell -> NUMBER.matcher(cell).matches())) {
            rows.remove(0);
        }
        if (counts(rows)) {
            rows.replaceAll(row -> row.subList(1, row.size()));
        }
        int widest = rows.stream().mapToInt(List::size).max().orElse(0);
        if (widest == 0) {
            throw new UsageException("", "there are no values on the clipboard; copy two columns out of a table, or one");
        }
        if (widest > 2) {
            throw new UsageException("", "what was copied is " + widest + " columns wide; copy those before and after, or one of them");
        }
        return commas(rows);
    }

    private static List<String> cells(String line, List<String> lines) {
        for (String parting : List.of("\t", ";")) {
            if (lines.stream().anyMatch(any -> any.contains(parting))) {
                return List.of(line.split(parting, -1)).stream().map(String::strip).toList();
            }
        }
        Matcher two = TWO_NUMBERS.matcher(line);
        return two.matches() ? List.of(two.group(1), two.group(2)) : List.of(line.strip());
    }

    /** Whether the first of three columns says 1, 2, 3 and so on. */
    private static boolean counts(List<List<String>> rows) {
        return !rows.isEmpty() && IntStream.range(0, rows.size())
                .allMatch(row -> rows.get(row).size() == 3 && rows.get(row).get(0).equals(String.valueOf(row + 1)));
    }

    private static List<List<String>> commas(List<List<String>> rows) {
        List<String> pointed = pointed(rows.stream().flatMap(List::stream).toList());
        List<List<String>> read = new ArrayList<>();
        int next = 0;
        for (List<String> row : rows) {
            read.add(pointed.subList(next, next + row.size()));
            next += row.size();
        }
        return read;
    }

    /**
     * Decimal commas as points, where the numbers beside each other leave no doubt that they are: one has other than three digits behind
     * its comma, and none has a point.
     */
    private static List<String> pointed(List<String> cells) {
        boolean isDecimal = cells.stream().map(COMMA::matcher).anyMatch(cell -> cell.matches() && cell.group(2).length() != THOUSAND)
                && cells.stream().noneMatch(cell -> cell.matches(".*\\d\\.\\d.*"));
        return isDecimal ? cells.stream().map(cell -> COMMA.matcher(cell).replaceFirst("$1.$2$3")).toList() : cells;
    }
}
