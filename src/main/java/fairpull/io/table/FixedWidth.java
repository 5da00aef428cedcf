package fairpull.io.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table whose columns stand under each other, kept apart by blanks alone, perhaps below lines of prose. Where each column has its own
 * stretch of the line, cells are cut there and may be blank; otherwise every line must have as many words as the others.
 */
final class FixedWidth {
    private static final int LINES_LOOKED_AT = 400;
    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final Pattern WIDE_GAP = Pattern.compile("\\s{2,}");
    private static final Pattern RULE = Pattern.compile("[\\s=+|_-]*[=_-]{3}[\\s=+|_-]*");

    private final int headerLine;
    private final int firstDataLine;
    private final String header;
    private final int columns;
    /** Where each column but the last ends; empty where cells are told apart by words alone. */
    private final int[] cuts;

    private FixedWidth(int headerLine, int firstDataLine, String header, int columns, int[] cuts) {
        this.headerLine = headerLine;
        this.firstDataLine = firstDataLine;
        this.header = header;
        this.columns = columns;
        this.cuts = cuts;
    }

    /** {@return the columns of a text; empty where it is no such table of at least two columns} */
    static Optional<FixedWidth> of(TextSource source) {
        List<String> lines = source.firstLines(LINES_LOOKED_AT);
        int first = 0;
        while (first < lines.size() && !isNumbers(lines.get(first))) {
            first++;
        }
        if (first == lines.size() || lines.stream().anyMatch(line -> line.indexOf('\t') >= 0)) {
            return Optional.empty();
        }
        List<String> data = lines.subList(first, lines.size()).stream().filter(FixedWidth::holdsNumber).toList();
        Stretches stretches = Stretches.of(data);
        int words = words(data.get(0)).size();
        boolean evenWords = data.stream().allMatch(line -> words(line).size() == words);
        int columns = stretches.count() >= words ? stretches.count() : evenWords ? words : 0;
        int[] cuts = stretches.count() >= words ? stretches.cuts() : new int[0];
        int header = headerAbove(lines, first, columns);
        return columns < 2 || header < 0
                ? Optional.empty()
                : Optional.of(new FixedWidth(header + 1, first + 1, lines.get(header).strip(), columns, cuts));
    }

    /** {@return the cells of a line, counted from 1; empty where they do not fit the columns} */
    Optional<List<String>> cells(String line, int number) {
        if (number < headerLine || line.isBlank()) {
            return Optional.of(List.of(line.strip().replace('\t', ' ')));
        }
        if (RULE.matcher(line).matches()) {
            return Optional.of(List.of(""));
        }
        if (number < firstDataLine || line.strip().equals(header)) {
            return Optional.of(names(line));
        }
        if (!holdsNumber(line)) {
            return Optional.of(List.of(line.strip().replace('\t', ' ')));
        }
        return cuts.length == 0 ? Optional.of(words(line)).filter(words -> words.size() == columns) : cut(line);
    }

    private Optional<List<String>> cut(String line) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int cut : cuts) {
            int to = Math.min(cut, line.length());
            boolean through = to < line.length() && to > 0 && line.charAt(to) > ' ' && line.charAt(to - 1) > ' ';
            if (through) {
                return Optional.empty();
            }
            cells.add(line.substring(Math.min(from, to), to).strip());
            from = to;
        }
        cells.add(line.substring(from).strip());
        return Optional.of(cells);
    }

    /** Names may hold single blanks and need not stand exactly above their numbers. */
    private List<String> names(String line) {
        List<String> wide = List.of(WIDE_GAP.split(line.strip()));
        if (wide.size() == columns) {
            return wide;
        }
        List<String> words = words(line);
        if (words.size() == columns || cuts.length == 0) {
            return words;
        }
        List<StringBuilder> names = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            names.add(new StringBuilder());
        }
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            int column = 0;
            while (column < cuts.length && cuts[column] <= (word.start() + word.end() - 1) / 2) {
                column++;
            }
            StringBuilder name = names.get(column);
            name.append(name.isEmpty() ? "" : " ").append(word.group());
        }
        return names.stream().map(StringBuilder::toString).toList();
    }

    /** The header is the line of words above the numbers; a line of units, or a rule, may stand between. Counted from 0, -1 for none. */
    private static int headerAbove(List<String> lines, int firstData, int columns) {
        int last = wordsAbove(lines, firstData);
        if (last < 0) {
            return -1;
        }
        int before = wordsAbove(lines, last);
        boolean areUnits = words(lines.get(last)).stream().allMatch(word -> word.equals("-")
                || UnitText.find(HeaderCell.unitOf(word)).isPresent());
        boolean namesBefore = before >= 0 && (WIDE_GAP.split(lines.get(before).strip()).length == columns
                || words(lines.get(before)).size() == columns);
        return areUnits && namesBefore ? before : last;
    }

    /** The nearest line above one that holds words, with nothing but a rule between. */
    private static int wordsAbove(List<String> lines, int line) {
        int above = line - 1;
        while (above >= 0 && RULE.matcher(lines.get(above)).matches()) {
            above--;
        }
        return above >= 0 && !lines.get(above).isBlank() ? above : -1;
    }

    private static boolean isNumbers(String line) {
        List<String> words = words(line);
        return words.size() > 1 && words.stream().allMatch(FixedWidth::isNumber);
    }

    private static boolean holdsNumber(String line) {
        return words(line).stream().anyMatch(FixedWidth::isNumber) && words(line).stream().filter(FixedWidth::isNumber).count() * 2
                >= words(line).size();
    }

    private static boolean isNumber(String word) {
        return NumberText.evidence(word) != NumberText.Evidence.TEXT || NumberText.isNoValue(word) || ClockText.isClock(word);
    }

    private static List<String> words(String line) {
        return WORD.matcher(line).results().map(result -> result.group()).toList();
    }
}
