package fairpull.ui.page.pulls;

import fairpull.app.task.Latest;
import fairpull.app.usecase.pulls.ExportView;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.IncomingPulls;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.report.chart.Role;
import fairpull.ui.form.Choice;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The files that are looked at: which pulls they go to, what they would read, how the columns of the one that is chosen are read. */
final class IncomingPart extends JPanel {
    private static final String REMEMBERED = "remembered";
    private static final String UNKNOWN = "unknown";
    private static final int MOST_FILES = 6;

    private final Runnable changed;
    private final ReadingTable files = new ReadingTable("import.files");
    private final ReadingTable columns = new ReadingTable("import.columns");
    private final JScrollPane filesScroll = new JScrollPane(files);
    private final JScrollPane columnsScroll = new JScrollPane(columns);
    private final Prose found = Prose.small("");
    private final Prose doubts = new Prose("", Role.B, Look.Type.BODY);
    private final JPanel placing = row();
    private final JPanel reading = row();
    private final JPanel whole = row();
    private final JCheckBox onePull = new JCheckBox(Words.of("import.onePull"));
    private final Latest<ExportView> viewing = new Latest<>(SwingUtilities::invokeLater);
    private final Map<Path, PullId> places = new HashMap<>();
    private final Map<Quantity, String> chosenColumns = new EnumMap<>(Quantity.class);
    private String corrected = REMEMBERED;
    private Optional<DecimalMark> mark = Optional.empty();
    private Optional<Path> test = Optional.empty();
    private Optional<IncomingPulls> incoming = Optional.empty();
    private Optional<ExportView> view = Optional.empty();

    IncomingPart(Runnable changed) {
        super(new MigLayout("insets 0, gap 8 6, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.changed = changed;
        setOpaque(false);
        onePull.setName("import.onePull");
        onePull.setOpaque(false);
        onePull.setToolTipText(Words.tip(Words.of("import.onePull.tip")));
        onePull.addActionListener(event -> changed.run());
        found.setName("import.found");
        doubts.setName("import.doubts");
        files.onChosen(row -> file());
        columns.onChosen(row -> column());
        add(filesScroll, "growx, wmin 0");
        add(placing, "growx, wmin 0");
        add(doubts, "growx, wmin 0");
        add(found, "growx, wmin 0");
        add(columnsScroll, "growx, wmin 0");
        add(reading, "growx, wmin 0");
        add(whole, "growx, wmin 0");
        offerWhole();
    }

    private static JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8 4", ""));
        row.setOpaque(false);
        return row;
    }

    /** {@return how the files are to be read, as it was chosen} */
    ImportPulls.Reading reading() {
        StatedCorrection stated = switch (corrected) {
            case REMEMBERED -> StatedCorrection.nothing();
            case UNKNOWN -> StatedCorrection.unknown();
            default -> StatedCorrection.of(Correction.valueOf(corrected));
        };
        return new ImportPulls.Reading(List.copyOf(chosenColumns.values()), stated, mark, onePull.isSelected(), Optional.empty());
    }

    /** {@return the pulls for which files were chosen by hand} */
    Map<Path, PullId> places() {
        return Map.copyOf(places);
    }

    /** Forgets what was chosen. */
    void clear() {
        incoming = Optional.empty();
        view = Optional.empty();
        places.clear();
        chosenColumns.clear();
        corrected = REMEMBERED;
        mark = Optional.empty();
        onePull.setSelected(false);
        viewing.stop();
        offerWhole();
    }

    private void offerWhole() {
        whole.removeAll();
        List<String> standards = Stream.concat(Stream.of(REMEMBERED, UNKNOWN), Stream.of(Correction.values()).map(Enum::name)).toList();
        Choice<String> standard = new Choice<>("import.corrected", standards, key -> Words.of("import.corrected." + key), key -> {
            corrected = key;
            changed.run();
        });
        standard.show(corrected);
        standard.addTo(whole);
        List<Optional<DecimalMark>> marks = List.of(Optional.empty(), Optional.of(DecimalMark.POINT), Optional.of(DecimalMark.COMMA));
        Choice<Optional<DecimalMark>> decimal = new Choice<>("import.mark", marks,
                one -> Words.of("import.mark." + one.map(DecimalMark::id).orElse("told")), one -> {
            mark = one;
            changed.run();
        });
        decimal.show(mark);
        decimal.addTo(whole);
        whole.add(onePull);
    }

    /** Shows what was found. */
    void show(Path folder, IncomingPulls looked) {
        int before = files.chosen();
        test = Optional.of(folder);
        incoming = Optional.of(looked);
        files.show(List.of(Words.of("import.files.file"), Words.of("import.files.goes"), Words.of("import.files.reads"),
                Words.of("import.files.doubts")), looked.files().stream().map(file -> List.of(file.path().getFileName().toString(),
                        file.place().map(PullId::toString).orElse("–"), file.problem().orElse(String.join("; ", file.pulls())),
                        file.doubts().isEmpty() ? "" : Integer.toString(file.doubts().size()))).toList(), 150, 60, 420, 60);
        int rows = Math.min(MOST_FILES, looked.files().size());
        filesScroll.setPreferredSize(new Dimension(400, (rows + 1) * files.getRowHeight() + 8));
        files.choose(Math.max(0, Math.min(before, looked.files().size() - 1)));
        file();
    }

    private Optional<IncomingPulls.Incoming> chosenFile() {
        return incoming.filter(looked -> files.chosen() >= 0 && files.chosen() < looked.files().size())
                .map(looked -> looked.files().get(files.chosen()));
    }

    private void file() {
        placing.removeAll();
        chosenFile().ifPresent(file -> {
            List<PullId> all = new ArrayList<>(incoming.orElseThrow().free());
            file.place().filter(place -> !all.contains(place)).ifPresent(place -> all.add(0, place));
            Choice<PullId> place = new Choice<>("import.place", all, PullId::toString, pull -> {
                places.put(file.path(), pull);
                changed.run();
            });
            file.place().ifPresent(place::show);
            place.addTo(placing);
            placing.add(Prose.small(Words.of("import.place.free", incoming.orElseThrow().free().size())), "wmin 0, growx, pushx");
            List<String> said = Stream.concat(file.problem().stream(), file.doubts().stream()).toList();
            doubts.setText(String.join("\n", said));
            doubts.setVisible(!said.isEmpty());
            read(file.path());
        });
        placing.revalidate();
    }

    private void read(Path file) {
        Path folder = test.orElseThrow();
        ImportPulls.Reading how = reading();
        viewing.ask(progress -> {
            try {
                return ExportView.of(folder, file, how);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }, ended -> {
            view = Optional.empty();
            ended.tell(export -> {
                view = Optional.of(export);
                show(export);
            }, fault -> found.setText(FaultWords.of(fault)));
            columnsScroll.setVisible(view.isPresent());
            reading.setVisible(view.isPresent());
            revalidate();
            repaint();
        });
    }

    private void show(ExportView export) {
        int before = columns.chosen();
        columns.show(List.of(Words.of("import.columns.column"), Words.of("import.columns.read"), Words.of("import.columns.unit"),
                Words.of("import.columns.why"), Words.of("import.columns.first")), export.columns().stream().map(column -> List.of(
                        column.header(), column.quantity().map(Quantity::words).orElse(Words.of("import.columns.not")),
                        column.unit().map(Unit::symbol).orElse(column.quantity().isPresent() ? "?" : ""), column.reason(),
                        String.join("  ", export.firstCells(column)))).toList(), 150, 90, 50, 200, 200);
        columnsScroll.setPreferredSize(new Dimension(400, (Math.min(8, export.columns().size()) + 1) * columns.getRowHeight() + 8));
        String marked = Words.of("import.mark." + export.decimalMark().id());
        String pulls = export.pulls() == 1 && export.labels().isEmpty() ? Words.of("import.found.one", export.rows(), marked)
                : Words.of("import.found.several", export.rows(), marked, export.pulls(), export.howFound());
        found.setText(String.join("\n", Stream.concat(Stream.of(pulls), export.questions().stream()).toList()));
        columns.choose(Math.max(0, Math.min(before, export.columns().size() - 1)));
        column();
    }

    private Optional<ExportView.Column> chosenColumn() {
        return view.filter(export -> columns.chosen() >= 0 && columns.chosen() < export.columns().size())
                .map(export -> export.columns().get(columns.chosen()));
    }

    /** What the chosen column is read as, and in which unit: both can be chosen against the guess. */
    private void column() {
        reading.removeAll();
        chosenColumn().ifPresent(column -> {
            List<Optional<Quantity>> quantities = new ArrayList<>();
            quantities.add(Optional.empty());
            ExportView.quantities().forEach(quantity -> quantities.add(Optional.of(quantity)));
            column.quantity().filter(own -> !ExportView.quantities().contains(own)).ifPresent(own -> quantities.add(Optional.of(own)));
            Choice<Optional<Quantity>> quantity = new Choice<>("import.quantity", quantities,
                    one -> one.map(Quantity::words).orElse(Words.of("import.columns.not")),
                    one -> one.ifPresentOrElse(chosen -> choose(column, chosen, column.unit().filter(unit -> unit.quantity() == chosen)),
                            () -> column.quantity().ifPresent(this::leaveOut)));
            quantity.show(column.quantity());
            List<Optional<Unit>> units = new ArrayList<>();
            if (column.unit().isEmpty()) {
                units.add(Optional.empty());
            }
            column.quantity().ifPresent(own -> Units.of(own).forEach(unit -> units.add(Optional.of(unit))));
            Choice<Optional<Unit>> unit = new Choice<>("import.unit", units, one -> one.map(Unit::symbol).orElse("?"),
                    one -> one.ifPresent(chosen -> choose(column, chosen.quantity(), one)));
            unit.show(column.unit());
            unit.enable(column.quantity().isPresent());
            reading.add(new Line(Words.of("import.reading", column.header()), Role.SOFT, Look.Type.BODY));
            quantity.addTo(reading);
            unit.addTo(reading);
        });
        reading.revalidate();
        reading.repaint();
    }

    private void leaveOut(Quantity quantity) {
        chosenColumns.put(quantity, ExportView.none(quantity));
        changed.run();
    }

    private void choose(ExportView.Column column, Quantity quantity, Optional<Unit> unit) {
        chosenColumns.put(quantity, ExportView.choice(column.number(), quantity, unit));
        changed.run();
    }
}
