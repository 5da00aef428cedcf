package fairpull.io.table;

import fairpull.domain.pull.PullId;
import fairpull.io.table.Sample.SampleRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Pulls side by side: which columns belong to which pull, told from the headings alone. A column of no pull, such as a common engine speed,
 * belongs to all of them.
 *
 * @param how how they were found
 * @param pulls one entry a pull, in the order of the file
 */
record PullColumns(String how, List<OfPull> pulls) {
    /**
     * The columns of one pull.
     *
     * @param label what the file calls it
     * @param columns its columns by their place in the file
     */
    record OfPull(String label, Map<Integer, Column> columns) {
    }

    /**
     * One column of a pull.
     *
     * @param index its place among the columns of one pull: that of the first column of the file that stands for the same thing
     * @param header its header without the name of the pull
     */
    record Column(int index, String header) {
    }

    /** A header cell of the file with the pull it belongs to. */
    private record Heading(int place, Optional<String> label, String text) {
    }

    /** {@return the pulls that the headings of a table name; empty where they name none, or one that only says which run this was} */
    static Optional<PullColumns> of(Layout layout) {
        List<Heading> headings = byLabel(layout);
        List<String> labels = labels(headings);
        boolean named = labels.size() > 1 || labels.size() == 1 && PullId.parse(labels.get(0)).isPresent();
        if (named) {
            return Optional.of(of("the headings name " + String.join(", ", labels), headings));
        }
        return byRepetition(layout.names()).map(repeated -> of("the same headings stand " + labels(repeated).size() + " times side by side",
                repeated));
    }

    private static PullColumns of(String how, List<Heading> headings) {
        List<String> labels = labels(headings);
        Map<String, Integer> places = new LinkedHashMap<>();
        List<OfPull> pulls = new ArrayList<>();
        for (String label : labels) {
            Map<Integer, Column> columns = new LinkedHashMap<>();
            Map<String, Integer> seen = new LinkedHashMap<>();
            for (Heading heading : headings) {
                if (heading.label().isEmpty() || heading.label().get().equals(label)) {
                    String folded = folded(heading.text());
                    String role = (heading.label().isEmpty() ? "all" : "one") + "\n" + folded + "\n" + seen.merge(folded, 1, Integer::sum);
                    columns.put(heading.place(), new Column(places.computeIfAbsent(role, key -> heading.place()), heading.text()));
                }
            }
            pulls.add(new OfPull(label, columns));
        }
        return new PullColumns(how, pulls);
    }

    private static List<Heading> byLabel(Layout layout) {
        List<Heading> headings = new ArrayList<>();
        String group = "";
        for (int place = 0; place < layout.names().usedCells(); place++) {
            String above = layout.groups().isEmpty() ? "" : layout.groups().get().cell(place);
            group = above.isBlank() ? group : PullLabel.in(above).map(PullLabel::label).orElse("");
            String text = layout.names().cell(place).strip();
            Optional<PullLabel> own = PullLabel.in(text);
            String label = own.map(PullLabel::label).orElse(group);
            headings.add(new Heading(place, Optional.of(label).filter(name -> !name.isEmpty()), own.map(PullLabel::rest).orElse(text)));
        }
        return headings;
    }

    private static List<String> labels(List<Heading> headings) {
        return headings.stream().flatMap(heading -> heading.label().stream()).distinct().toList();
    }

    /** Blocks of at least two headings that repeat to the end of the line, behind columns that all of them share. */
    private static Optional<List<Heading>> byRepetition(SampleRow names) {
        int width = names.usedCells();
        List<String> folded = IntStream.range(0, width).mapToObj(place -> folded(names.cell(place))).toList();
        for (int shared = 0; shared < width; shared++) {
            for (int block = 2; block * 2 <= width - shared; block++) {
                if ((width - shared) % block == 0 && repeats(folded, shared, block)) {
                    return Optional.of(repeated(names, shared, block));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean repeats(List<String> names, int shared, int block) {
        List<String> first = names.subList(shared, shared + block);
        boolean distinct = first.stream().distinct().count() == block && first.stream().noneMatch(String::isEmpty);
        boolean known = first.stream().anyMatch(name -> ColumnWords.of(name).isOfAPull());
        boolean same = IntStream.range(shared, names.size()).allMatch(at -> names.get(at).equals(first.get((at - shared) % block)));
        return distinct && known && same;
    }

    private static List<Heading> repeated(SampleRow names, int shared, int block) {
        return IntStream.range(0, names.usedCells()).mapToObj(place -> new Heading(place,
                place < shared ? Optional.empty() : Optional.of(String.valueOf((place - shared) / block + 1)),
                names.cell(place).strip())).toList();
    }

    private static String folded(String heading) {
        return heading.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
