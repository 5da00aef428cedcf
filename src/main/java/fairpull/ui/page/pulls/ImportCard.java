package fairpull.ui.page.pulls;

import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.task.Progress;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.IncomingPulls;
import fairpull.app.usecase.pulls.PastedTable;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.HeadlessException;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** How pulls come in: files chosen or dropped, tables pasted or typed; looked at first, then taken or let go. */
final class ImportCard extends Card {
    private final Desk desk;
    private final Runnable taken;
    private final IncomingPart incoming;
    private final JTextArea table = new JTextArea(5, 40);
    private final JPanel typing = new JPanel(new MigLayout("insets 0, gap 8 6, fillx, wrap 1, hidemode 3", "[grow, fill]"));
    private final Line complaint = new Line(" ", Role.B, Look.Type.SMALL);
    private final Prose said = Prose.body("");
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton cancel = Buttons.of("import.cancel", this::stop);
    private final JButton take = Buttons.primary("import.take", this::takeAll);
    private final JButton drop = Buttons.of("import.drop", () -> clear(""));
    private final JPanel acts = row(take, drop);
    private final Latest<PastedTable.Read> pasting = new Latest<>(SwingUtilities::invokeLater);
    private final List<Path> files = new ArrayList<>();
    private Optional<Job<?>> job = Optional.empty();
    private Optional<IncomingPulls> looked = Optional.empty();
    private boolean asked;

    /** A card; {@code taken} hears that something came in. */
    ImportCard(Desk desk, Runnable taken) {
        super(Words.of("import.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        this.taken = taken;
        incoming = new IncomingPart(this::look);
        setName("import");
        add(Prose.small(Words.of("import.sub")), "growx, wmin 0");
        add(row(Buttons.of("import.choose", this::choose), Buttons.of("import.paste", this::paste)), "growx");
        typing.setOpaque(false);
        table.setName("import.table");
        table.getAccessibleContext().setAccessibleName(Words.of("import.table"));
        table.setToolTipText(Words.tip(Words.of("import.table.tip")));
        typing.add(Prose.small(Words.of("import.table.help")), "growx, wmin 0");
        typing.add(new JScrollPane(table), "growx, wmin 0, h 90!");
        typing.add(row(Buttons.of("import.read", this::readTable), Buttons.of("import.table.close", () -> type(false))), "growx");
        complaint.setName("import.table.complaint");
        typing.add(complaint, "growx, wmin 0");
        progress.setName("import.progress");
        progress.getAccessibleContext().setAccessibleName(Words.of("import.progress"));
        said.setName("import.said");
        add(typing, "growx, wmin 0");
        add(incoming, "growx, wmin 0");
        add(said, "growx, wmin 0");
        add(progress, "split 2, growx");
        add(cancel, "growx 0");
        add(acts, "growx");
        typing.setVisible(false);
        complaint.setVisible(false);
        clear("");
    }

    private static JPanel row(JButton... buttons) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8 0, hidemode 3"));
        row.setOpaque(false);
        for (JButton button : buttons) {
            row.add(button);
        }
        return row;
    }

    /** Takes a file to be looked at; those that are dropped together are looked at together. */
    void take(Path file) {
        if (!files.contains(file)) {
            files.add(file);
        }
        if (!asked) {
            asked = true;
            SwingUtilities.invokeLater(() -> {
                asked = false;
                look();
            });
        }
    }

    private Path folder() {
        return desk.document().folder().orElseThrow();
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setMultiSelectionEnabled(true);
        chooser.setDialogTitle(Words.of("import.choose"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            for (File file : chooser.getSelectedFiles()) {
                take(file.toPath());
            }
        }
    }

    /** Files on the clipboard are looked at like files that were dropped; text goes into the area, where it can be read and changed. */
    private void paste() {
        type(true);
        try {
            Clipboard clipboard = getToolkit().getSystemClipboard();
            if (clipboard.isDataFlavorAvailable(DataFlavor.javaFileListFlavor)) {
                for (Object file : (List<?>) clipboard.getData(DataFlavor.javaFileListFlavor)) {
                    take(((File) file).toPath());
                }
            } else if (table.getText().isBlank() && clipboard.isDataFlavorAvailable(DataFlavor.stringFlavor)) {
                table.setText((String) clipboard.getData(DataFlavor.stringFlavor));
            }
        } catch (HeadlessException | IllegalStateException | UnsupportedFlavorException | IOException nothingToPaste) {
            table.requestFocusInWindow();
        }
    }

    private void type(boolean open) {
        typing.setVisible(open);
        if (open) {
            table.requestFocusInWindow();
        }
        revalidate();
    }

    private void complain(String words) {
        complaint.setText(words.isEmpty() ? " " : Words.lines(words));
        complaint.setVisible(!words.isEmpty());
        revalidate();
    }

    private void readTable() {
        Path test = folder();
        String text = table.getText();
        pasting.ask(working -> {
            try {
                return PastedTable.read(test, text, OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS));
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }, ended -> {
            complain("");
            ended.tell(read -> {
                table.setText("");
                type(false);
                read.export().ifPresent(this::take);
                if (!read.noted().isEmpty()) {
                    say(Words.of("import.noted", String.join(", ", read.noted())));
                    taken.run();
                }
            }, fault -> complain(FaultWords.of(fault)));
        });
    }

    /** Looks at the files as they are to be read now. */
    private void look() {
        stop();
        if (files.isEmpty()) {
            clear("");
            return;
        }
        Path test = folder();
        List<Path> all = List.copyOf(files);
        ImportPulls.Reading reading = incoming.reading();
        Map<Path, PullId> places = incoming.places();
        say(Words.of("import.looking", all.size()));
        working(true);
        job = Optional.of(Job.start(watch -> {
            try {
                return IncomingPulls.of(test, all, places, reading, watch);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }, SwingUtilities::invokeLater, this::reached, ended -> {
            working(false);
            looked = Optional.empty();
            say("");
            ended.tell(found -> {
                looked = Optional.of(found);
                incoming.show(test, found);
                long problems = found.files().stream().filter(file -> file.problem().isPresent()).count();
                say(problems == 0 ? "" : Words.of(problems == 1 ? "import.problem" : "import.problems", problems));
                take.setEnabled(problems == 0);
            }, fault -> say(FaultWords.of(fault)));
            offer(true);
        }));
    }

    private void takeAll() {
        PreparedTake prepared = new PreparedTake(looked.orElseThrow());
        working(true);
        say(Words.of("import.taking"));
        job = Optional.of(Job.start(prepared::take, SwingUtilities::invokeLater, this::reached, ended -> {
            working(false);
            ended.tell(pulls -> {
                clear(Words.of(pulls.size() == 1 ? "import.taken.one" : "import.taken", pulls.size()));
                taken.run();
            }, fault -> say(FaultWords.of(fault)));
        }));
    }

    /** What is taken beside the window's thread. */
    private record PreparedTake(IncomingPulls incoming) {
        List<ImportPulls.Taken> take(Progress watch) {
            try {
                return incoming.prepared().take(OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS), watch);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }

    private void reached(double share) {
        progress.setValue((int) Math.round(100 * share));
    }

    private void stop() {
        job.ifPresent(Job::cancel);
        job = Optional.empty();
        working(false);
        say("");
    }

    private void clear(String words) {
        files.clear();
        looked = Optional.empty();
        incoming.clear();
        stop();
        offer(false);
        say(words);
    }

    private void offer(boolean any) {
        incoming.setVisible(any && looked.isPresent());
        take.setVisible(any && looked.isPresent());
        acts.setVisible(any);
        revalidate();
        repaint();
    }

    private void working(boolean busy) {
        progress.setVisible(busy);
        cancel.setVisible(busy);
        progress.setValue(0);
        take.setEnabled(!busy);
        revalidate();
    }

    private void say(String words) {
        said.setText(words);
        said.setVisible(!words.isEmpty());
    }
}
