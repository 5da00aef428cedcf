package fairpull.app.usecase.pulls;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.typing.TypedColumns;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.PreviewJson;
import fairpull.io.table.ColumnChoice;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.ExportFile;
import fairpull.io.table.GuessedColumn;
import fairpull.io.table.Preview;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Says how exports would be read, and takes nothing. */
public final class PreviewExport {
    private static final int ROWS_SHOWN = 3;

    private PreviewExport() {
    }

    /**
     * {@return columns, guesses with their reasons, pulls, first rows and doubts of some files}
     *
     * @param folder of the test that they are to go into: what its measures lack is said; any other folder stands for none
     * @param onePull whether each file is said to be one pull, whatever it looks like
     */
    public static Answer preview(Path folder, List<Path> files, List<String> columns, Optional<DecimalMark> decimalMark,
            boolean onePull) throws IOException {
        Optional<Plan> plan = Files.isRegularFile(folder.resolve("plan.json"))
                ? Optional.of(TestFolder.open(folder).read().plan()) : Optional.empty();
        Map<Quantity, ColumnChoice> choices = TypedColumns.choices(columns);
        List<ExportView> views = files.stream().map(file -> preview(file, choices, decimalMark, onePull, Surface.COMMAND_LINE))
                .map(preview -> plan.map(planned -> against(planned, preview, Surface.COMMAND_LINE)).orElse(preview))
                .map(ExportView::of).toList();
        StringBuilder text = new StringBuilder();
        views.forEach(view -> text.append(words(view)));
        if (plan.isEmpty()) {
            text.append(folder).append(" is no test yet: whether its measures have their columns is not said\n");
        }
        return new Answer(text.toString(), json(views));
    }

    /** Without the deciding measure an export is refused; a further one is missed in the finding. */
    static Preview against(Plan plan, Preview preview, Surface surface) {
        Set<Quantity> known = preview.columns().stream().flatMap(column -> column.quantity().stream()).collect(Collectors.toSet());
        return preview.with(MeasureColumns.missing(plan, plan.question().further(), known, surface),
                MeasureColumns.missing(plan, List.of(plan.question().deciding()), known, surface));
    }

    /** {@return the preview of one file} */
    static Preview preview(Path file, Map<Quantity, ColumnChoice> choices, Optional<DecimalMark> decimalMark, boolean onePull,
            Surface surface) {
        ExportFile look = ExportFile.look(file, decimalMark);
        Optional<Mapping> proposal = ColumnGuess.guess(onePull ? look.table() : look.sample(), choices).proposal();
        Preview preview = onePull ? Preview.ofOnePull(look, choices, surface)
                : Preview.of(look, proposal.map(mapping -> parted(file, look, mapping.withDecimalMark(decimalMark))).orElse(look), choices,
                        surface);
        return proposal.flatMap(mapping -> PullTraces.unpaired(preview.columns(), preview.export(), mapping))
                .map(doubt -> preview.with(List.of(doubt), List.of())).orElse(preview);
    }

    private static ExportFile parted(Path file, ExportFile look, Mapping mapping) {
        return SweptFile.isForSweeps(look) ? SweptFile.parted(look.isWhole() ? look : ExportFile.read(file, mapping), mapping) : look;
    }

    private static String words(ExportView view) {
        StringBuilder text = new StringBuilder();
        text.append(view.file()).append(": ").append(counted(view.rows(), "row")).append(", ")
                .append(counted(view.columns().size(), "column")).append(", ").append(pulls(view)).append('\n');
        view.unitLine().ifPresent(line -> text.append("  line ").append(line).append(" is taken as a row of units\n"));
        for (ExportView.Column column : view.columns()) {
            text.append(String.format(Locale.ROOT, "  %3d  %-32s  %-24s  %s%n", column.number(), column.header(), reading(column),
                    column.reason()));
        }
        view.firstRows().stream().limit(ROWS_SHOWN).forEach(row -> text.append("       ").append(String.join(" | ", row)).append('\n'));
        view.doubts().forEach(doubt -> text.append("  doubt: ").append(doubt).append('\n'));
        view.questions().forEach(question -> text.append("  to be said: ").append(question).append('\n'));
        return text.toString();
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String pulls(ExportView view) {
        return view.pulls() == 1 && view.labels().isEmpty()
                ? "one pull"
                : view.pulls() + (view.pulls() == 1 ? " pull: " : " pulls: ") + view.howFound();
    }

    private static String reading(ExportView.Column column) {
        return column.quantity().map(quantity -> GuessedColumn.words(quantity)
                + column.unit().map(unit -> " in " + unit.symbol()).orElse(", no unit named"))
                .orElse("not used");
    }

    private static String json(List<ExportView> views) {
        return PreviewJson.document(views.stream().map(view -> new PreviewJson.File(view.file(), view.rows(), view.columns().stream()
                .map(column -> new PreviewJson.Column(column.number(), column.header(), column.quantity(), column.unit(),
                        column.reason())).toList(), view.pulls(), view.labels(), view.howFound(), view.doubts(), view.questions()))
                .toList());
    }
}
