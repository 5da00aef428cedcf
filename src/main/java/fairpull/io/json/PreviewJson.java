package fairpull.io.json;

import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.Optional;

/** How exports would be read, as JSON. */
public final class PreviewJson {
    private PreviewJson() {
    }

    /**
     * One column.
     *
     * @param number its place, counted from 1
     * @param header what it is called
     * @param quantity what it seems to be
     * @param unit its unit, where that is known
     * @param reason why
     */
    public record Column(int number, String header, Optional<Quantity> quantity, Optional<Unit> unit, String reason) {
    }

    /**
     * One file.
     *
     * @param name its name
     * @param rows how many rows of data it has
     * @param columns its columns
     * @param pulls how many pulls it holds
     * @param labels what it calls them
     * @param howFound how they were found
     * @param doubts what is not certain
     * @param questions what must be said before it can be imported
     */
    public record File(String name, int rows, List<Column> columns, int pulls, List<String> labels, String howFound,
                       List<String> doubts, List<String> questions) {
    }

    /** {@return the document} */
    public static String document(List<File> files) {
        return Tree.empty().trees("files", files, (tree, file) -> tree.text("file", file.name()).whole("rows", file.rows())
                .trees("columns", file.columns(), (column, guess) -> column.whole("number", guess.number()).text("header", guess.header())
                        .text("quantity", guess.quantity().map(Quantity::words).orElse(null))
                        .text("unit", guess.unit().map(Unit::symbol).orElse(null)).text("reason", guess.reason()))
                .whole("pulls", file.pulls()).texts("pullNames", file.labels()).text("pullsFound", file.howFound())
                .texts("doubts", file.doubts()).texts("questions", file.questions())).document();
    }
}
