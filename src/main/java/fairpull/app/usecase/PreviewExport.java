package fairpull.app.usecase;

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
        List<Preview> previews = files.stream().map(file -> preview(file, choices, decimalMark, onePull))
                .map(preview -> plan.map(planned -> against(planned, preview)).orElse(preview)).toList();
        StringBuilder text = new StringBuilder();
        previews.forEach(preview -> text.append(words(preview)));
        if (plan.isEmpty()) {
            text.append(folder).append(" is no test yet: whether its measures have their columns is not said\n");
        }
        return new Answer(text.toString(), json(previews));
    }

    /** Without the deciding measure an export is refused; a further one is missed in the finding. */
    private static Preview against(Plan plan, Preview preview) {
        Set<Quantity> known = preview.columns().stream().flatMap(column -> column.quantity().stream()).collect(Collectors.toSet());
        return preview.with(MeasureColumns.missing(plan, plan.question().further(), known),
                MeasureColumns.missing(plan, List.of(plan.question().deciding()), known));
    }

    private static Preview preview(Path file, Map<Quantity, ColumnChoice> choices, Optional<DecimalMark> decimalMark, boolean onePull) {
        ExportFile look = ExportFile.look(file, decimalMark);
        Optional<Mapping> proposal = ColumnGuess.guess(onePull ? look.table() : look.sample(), choices).proposal();
        Preview preview = onePull ? Preview.ofOnePull(look, choices)
                : Preview.of(look, proposal.map(mapping -> parted(file, look, mapping.withDecimalMark(decimalMark))).orElse(look), choices);
        return proposal.flatMap(mapping -> PullTraces.unpaired(preview.columns(), preview.export(), mapping))
                .map(doubt -> preview.with(List.of(doubt), List.of())).orElse(preview);
    }

    private static ExportFile parted(Path file, ExportFile look, Mapping mapping) {
        return SweptFile.isForSweeps(look) ? SweptFile.parted(look.isWhole() ? look : ExportFile.read(file, mapping), mapping) : look;
    }

    private static String words(Preview preview) {
        StringBuilder text = new StringBuilder();
        text.append(preview.export().fileName()).append(": ").append(counted(preview.export().rows(), "row")).append(", ")
                .append(counted(preview.export().columns().size(), "column")).append(", ").append(pulls(preview)).append('\n');
        preview.export().dialect().unitLine()
                .ifPresent(line -> text.append("  line ").append(line).append(" is taken as a row of units\n"));
        for (GuessedColumn column : preview.columns()) {
            text.append(String.format(Locale.ROOT, "  %3d  %-32s  %-24s  %s%n", column.column().index() + 1, column.column().label(),
                    reading(column), column.reason()));
        }
        preview.firstRows().stream().limit(ROWS_SHOWN).forEach(row -> text.append("       ").append(String.join(" | ", row)).append('\n'));
        preview.doubts().forEach(doubt -> text.append("  doubt: ").append(doubt).append('\n'));
        preview.questions().forEach(question -> text.append("  to be said: ").append(question).append('\n'));
        return text.toString();
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String pulls(Preview preview) {
        return preview.pulls() == 1 && preview.labels().isEmpty()
                ? "one pull"
                : preview.pulls() + (preview.pulls() == 1 ? " pull: " : " pulls: ") + preview.howFound();
    }

    private static String reading(GuessedColumn column) {
        return column.quantity().map(quantity -> GuessedColumn.words(quantity)
                + column.unit().map(unit -> " in " + unit.symbol()).orElse(", no unit named"))
                .orElse("not used");
    }

    private static String json(List<Preview> previews) {
        return PreviewJson.document(previews.stream().map(preview -> new PreviewJson.File(preview.export().fileName(),
                preview.export().rows(), preview.columns().stream().map(column -> new PreviewJson.Column(column.column().index() + 1,
                        column.column().label(), column.quantity(), column.unit(), column.reason())).toList(),
                preview.pulls(), preview.labels(), preview.howFound(), preview.doubts(), preview.questions())).toList());
    }
}
