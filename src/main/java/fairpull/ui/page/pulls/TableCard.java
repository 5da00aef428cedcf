package fairpull.ui.page.pulls;

import fairpull.app.task.Latest;
import fairpull.app.usecase.pulls.ExcludePull;
import fairpull.app.usecase.pulls.PullsView;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The table of pulls; what is known of those chosen stands beneath, with leaving out, taking back and undo. */
final class TableCard extends Card {
    private static final int MOST_ROWS = 12;

    private final PullTable table;
    private final JScrollPane scroll;
    private final Prose about = new Prose("", Role.INK, Look.Type.BODY);
    private final Prose trouble = new Prose("", Role.B, Look.Type.BODY);
    private final JTextField because = new JTextField();
    private final Line complaint = new Line(" ", Role.B, Look.Type.SMALL);
    private final Line done = new Line("", Role.SOFT, Look.Type.BODY);
    private final JButton exclude = Buttons.of("pulls.exclude", () -> change(true));
    private final JButton readmit = Buttons.of("pulls.readmit", () -> change(false));
    private final JButton undo = Buttons.of("pulls.undo", this::undo);
    private final JPanel reason = new JPanel(new MigLayout("insets 0, gap 8 4, fillx, hidemode 3", "[pref!][grow, fill][pref!][pref!]"));
    private final Latest<List<PullId>> writing = new Latest<>(SwingUtilities::invokeLater);
    private final Runnable changed;
    private Optional<Path> folder = Optional.empty();
    private List<PullId> undoable = List.of();
    private boolean undoExcludes;

    /** A table; {@code changed} hears that something was written into the log. */
    TableCard(Chosen chosen, Runnable changed) {
        super(Words.of("pulls.head"), new MigLayout("insets 20, gap 8 6, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.changed = changed;
        table = new PullTable(chosen);
        scroll = new JScrollPane(table);
        about.setName("pulls.about");
        trouble.setName("pulls.trouble");
        done.setName("pulls.done");
        because.setName("pulls.because");
        because.setToolTipText(Words.tip(Words.of("pulls.because.tip")));
        because.getAccessibleContext().setAccessibleName(Words.of("pulls.because"));
        because.addActionListener(event -> change(exclude.isVisible()));
        complaint.setName("pulls.because.complaint");
        JLabel label = new JLabel(Words.of("pulls.because"));
        label.setLabelFor(because);
        label.setDisplayedMnemonic(Words.mnemonic("pulls.because"));
        reason.setOpaque(false);
        reason.add(label);
        reason.add(because, "wmin 80");
        reason.add(exclude);
        reason.add(readmit, "wrap");
        reason.add(complaint, "skip 1, spanx, wmin 0");
        add(trouble, "growx, wmin 0");
        add(scroll, "growx, wmin 0");
        add(about, "growx, wmin 0");
        add(reason, "growx, wmin 0");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 12 0, hidemode 3"));
        row.setOpaque(false);
        row.add(done);
        row.add(undo);
        add(row, "growx, wmin 0");
        chosen.listen(this::tell);
        tell();
        told("", List.of(), false);
    }

    /** Shows the pulls of a test. */
    void show(Path test, PullsView view) {
        folder = Optional.of(test);
        table.show(view);
        trouble.setText(String.join("\n", view.trouble()));
        trouble.setVisible(!view.trouble().isEmpty());
        long doubtful = view.rows().stream().filter(row -> !row.checks().isEmpty()).count();
        head(Words.of(doubtful == 0 ? "pulls.head.clear" : doubtful == 1 ? "pulls.head.doubt" : "pulls.head.doubts", view.rows().stream()
                .filter(row -> row.canBeExcluded()).count(), doubtful));
        int rows = Math.min(MOST_ROWS, Math.max(3, view.rows().size()));
        scroll.setPreferredSize(new Dimension(400, rows * table.getRowHeight() + table.getTableHeader().getPreferredSize().height + 6));
        tell();
        revalidate();
    }

    private void tell() {
        List<PullsView.Row> rows = table.chosenRows();
        about.setText(rows.isEmpty() ? Words.of("pulls.choose.one")
                : rows.stream().map(TableCard::words).collect(Collectors.joining("\n")));
        boolean out = rows.stream().anyMatch(PullsView.Row::canBeExcluded);
        boolean in = !out && rows.stream().anyMatch(PullsView.Row::canBeReadmitted);
        reason.setVisible(out || in);
        exclude.setVisible(out);
        readmit.setVisible(in);
        complain("");
        revalidate();
    }

    private static String words(PullsView.Row row) {
        String fate = row.fateWords() + (row.reason().isBlank() ? "" : ": " + row.reason());
        String checks = row.checks().isEmpty() ? "" : " " + String.join(" ", row.checks());
        return row.pull() + " · " + fate + "." + checks;
    }

    private void complain(String words) {
        complaint.setText(words.isEmpty() ? " " : words);
        complaint.setVisible(!words.isEmpty());
        because.putClientProperty("JComponent.outline", words.isEmpty() ? null : "warning");
    }

    private void change(boolean out) {
        List<PullId> pulls = table.chosenRows().stream().filter(row -> out ? row.canBeExcluded() : row.canBeReadmitted())
                .map(PullsView.Row::pull).toList();
        String why = because.getText().strip();
        if (why.isEmpty()) {
            complain(Words.of("pulls.because.missing"));
            because.requestFocusInWindow();
            return;
        }
        write(pulls, out, why);
    }

    /** The log is only added to: what is undone is written as well, with its reason. */
    private void undo() {
        write(undoable, undoExcludes, Words.of("pulls.undo.because"));
    }

    private void write(List<PullId> pulls, boolean out, String why) {
        Path test = folder.orElseThrow();
        writing.ask(progress -> {
            try {
                OffsetDateTime now = OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS);
                if (out) {
                    ExcludePull.exclude(test, pulls, why, now);
                } else {
                    ExcludePull.readmit(test, pulls, why, now);
                }
                return pulls;
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }, ended -> {
            ended.tell(written -> {
                because.setText("");
                told(Words.of(out ? "pulls.excluded" : "pulls.readmitted", written.stream().map(PullId::toString)
                        .collect(Collectors.joining(", "))), written, !out);
                changed.run();
            }, fault -> complain(FaultWords.of(fault)));
        });
    }

    private void told(String words, List<PullId> pulls, boolean excludes) {
        undoable = pulls;
        undoExcludes = excludes;
        done.setText(words);
        done.setVisible(!words.isEmpty());
        undo.setVisible(!pulls.isEmpty());
        revalidate();
    }
}
