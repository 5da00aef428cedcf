package fairpull.io.table;

import fairpull.domain.pull.Mapping;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What is said of cells without a value: a logger writes NaN, #N/A or -- where it had none at that moment. */
public final class MissingValues {
    private static final int COLUMNS_NAMED = 6;

    private MissingValues() {
    }

    /** {@return how many cells of which column say that there is no value, one sentence a column, the columns that are used first} */
    static List<String> doubts(List<ExportColumn> columns, Predicate<ExportColumn> isUsed) {
        List<ExportColumn> concerned = columns.stream().filter(column -> column.noValues() > 0)
                .sorted(Comparator.comparing((ExportColumn column) -> !isUsed.test(column))).toList();
        List<String> doubts = new ArrayList<>();
        concerned.stream().limit(COLUMNS_NAMED).forEach(column -> doubts.add(cells(column.noValues(), "column “" + column.label() + "”")
                + " there is no value, and " + (column.noValues() == 1 ? "counts" : "count") + " as blank"));
        List<ExportColumn> others = concerned.stream().skip(COLUMNS_NAMED).toList();
        if (!others.isEmpty()) {
            int count = others.stream().mapToInt(ExportColumn::noValues).sum();
            doubts.add(cells(count, others.size() == 1 ? "another column" : others.size() + " other columns") + " so too");
        }
        return doubts;
    }

    private static String cells(int count, String where) {
        return (count == 1 ? "1 cell of " : count + " cells of ") + where + (count == 1 ? " says" : " say");
    }

    /** {@return which rows of a pull are left out because a column that counts has no value in them; empty where none is} */
    public static Optional<String> rowsLeftOut(Export export, Mapping mapping) {
        List<ExportColumn> gappy = mapping.columns().stream().filter(MappedExport::mustBeThere)
                .flatMap(used -> export.columns().stream().filter(column -> column.index() == used.index()))
                .filter(column -> column.isNumeric() && column.numbers().stream().anyMatch(Double::isNaN)).toList();
        int left = export.rows() - MappedExport.completeRows(gappy.stream().map(ExportColumn::numbers).toList(), export.rows()).length;
        String columns = gappy.stream().map(column -> "“" + column.label() + "”").collect(Collectors.joining(" or "));
        return left == 0 ? Optional.empty() : Optional.of(left + " of " + export.rows() + (left == 1 ? " rows is" : " rows are")
                + " left out: no value of " + columns + " stands in " + (left == 1 ? "it" : "them"));
    }
}
