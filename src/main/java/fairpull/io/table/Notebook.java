package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.unit.Units;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A notebook kept beside the pulls: a table with a column {@code pull} and any others, units in the header.
 *
 * @param lines one line a pull
 */
public record Notebook(List<Line> lines) {
    private static final String PULL = "pull";
    private static final int MOST_LINES = 100_000;

    /**
     * One line.
     *
     * @param place where it stands
     * @param pull the pull it is about, as written
     * @param cells the other cells that hold anything, each with its column's unit behind it, by the column's name in small letters
     */
    public record Line(Place place, String pull, Map<String, String> cells) {
    }

    public Notebook {
        lines = List.copyOf(lines);
    }

    /** {@return the notebook in a file} */
    public static Notebook read(Path path) {
        TextSource source = TextSource.of(path);
        String file = path.toString();
        Delimiter delimiter = delimiter(source);
        List<HeaderCell> header = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        Rows.visit(source, delimiter, row -> {
            if (header.isEmpty()) {
                row.copy().forEach(cell -> header.add(title(cell)));
                return true;
            }
            if (lines.size() == MOST_LINES) {
                throw new InputException(Place.of(file, row.line()), "more than " + MOST_LINES + " lines",
                        "a notebook has one line a pull");
            }
            return lines.add(line(Place.of(file, row.line()), header, row.copy()));
        });
        if (lines.isEmpty()) {
            throw new InputException(Place.of(file), "no pull in it", "write one line a pull below a header with the column pull");
        }
        return new Notebook(lines);
    }

    /** The delimiter under which the first row has a column of pulls. */
    private static Delimiter delimiter(TextSource source) {
        for (Delimiter delimiter : Delimiter.CHARACTERS) {
            List<Sample.SampleRow> rows = Sample.of(source, delimiter).rows();
            if (!rows.isEmpty() && rows.get(0).cells().stream().anyMatch(cell -> name(HeaderCell.of(cell)).equals(PULL))) {
                return delimiter;
            }
        }
        throw new InputException(Place.of(source.file().toString(), 1), "no column named pull",
                "a notebook says in each line which pull it is about");
    }

    /** A title with its unit in brackets, or behind a comma as in the program's own tables. */
    private static HeaderCell title(String cell) {
        HeaderCell title = HeaderCell.of(cell);
        int comma = title.name().lastIndexOf(',');
        String behind = comma < 0 ? "" : title.name().substring(comma + 1).strip();
        boolean isUnit = title.unitText().isEmpty() && Units.find(behind).isPresent();
        return isUnit ? new HeaderCell(title.name().substring(0, comma).strip(), behind) : title;
    }

    private static Line line(Place place, List<HeaderCell> header, List<String> row) {
        String pull = "";
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(header.size(), row.size()); i++) {
            String cell = row.get(i).strip();
            String name = name(header.get(i));
            if (name.equals(PULL)) {
                pull = cell;
            } else if (!cell.isEmpty() && !name.isEmpty()) {
                cells.put(name, header.get(i).unitText().isEmpty() ? cell : cell + " " + header.get(i).unitText());
            }
        }
        if (pull.isEmpty()) {
            throw new InputException(place, "the line does not say which pull it is about", "write it in the column pull, such as B1-3");
        }
        return new Line(place, pull, cells);
    }

    private static String name(HeaderCell cell) {
        return cell.name().toLowerCase(Locale.ROOT);
    }
}
