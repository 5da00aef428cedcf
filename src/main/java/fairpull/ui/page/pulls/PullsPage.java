package fairpull.ui.page.pulls;

import fairpull.app.document.Document;
import fairpull.app.task.Latest;
import fairpull.app.usecase.pulls.PullsView;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.Role;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.HowFar;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The pulls of a test: how they come in, what became of each, and their curves. */
public final class PullsPage implements Page {
    private final Desk desk;
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1, hidemode 3", "[grow, fill]"));
    private final Prose problem = new Prose("", Role.B, Look.Type.BODY);
    private final HowFar reading = new HowFar("pulls.reading");
    private final Chosen chosen;
    private final ImportCard incoming;
    private final OverlayCard overlay;
    private final TableCard table;
    private final Latest<Optional<Loaded>> loading = new Latest<>(SwingUtilities::invokeLater);
    private String stamp = "";

    private record Loaded(String stamp, PullsView view) {
    }

    /** The page on a desk. */
    public PullsPage(Desk desk) {
        this.desk = desk;
        chosen = new Chosen(desk.strip());
        incoming = new ImportCard(desk, this::show);
        overlay = new OverlayCard(chosen);
        table = new TableCard(chosen, this::show);
        problem.setName("pulls.problem");
        problem.setVisible(false);
        overlay.setVisible(false);
        table.setVisible(false);
        view.setOpaque(false);
        view.setName("pulls");
        view.add(incoming, "growx, wmin 0");
        view.add(reading, "growx, wmin 0");
        view.add(problem, "growx, wmin 0");
        view.add(overlay, "growx, wmin 0");
        view.add(table, "growx, wmin 0");
    }

    @Override
    public String key() {
        return "page.pulls";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public Optional<String> notYet(Document document) {
        return notReady(document).or(desk::blinded);
    }

    /** {@return why a test has no page of its pulls yet; known without the page itself} */
    public static Optional<String> notReady(Document document) {
        return document.folder().isEmpty() ? Optional.of(Words.of("pulls.notSaved"))
                : document.isSealed() ? Optional.empty() : Optional.of(Words.of("pulls.notSealed"));
    }

    /** Pulls may have come in from elsewhere meanwhile: what lies on disk is read anew where it has changed. */
    @Override
    public void show() {
        Optional<Path> folder = desk.document().folder();
        if (folder.isEmpty()) {
            return;
        }
        Path test = folder.get();
        String known = stamp;
        reading.begins(Words.of("pulls.reading"));
        loading.ask(progress -> {
            try {
                String now = PullsView.stamp(test);
                return now.equals(known) ? Optional.empty() : Optional.of(new Loaded(now, PullsView.of(test, progress)));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }, reading::reached, ended -> {
            reading.ends();
            ended.tell(loaded -> loaded.ifPresent(one -> shown(test, one)), fault -> say(FaultWords.of(fault)));
        });
    }

    private void shown(Path test, Loaded loaded) {
        say("");
        stamp = loaded.stamp();
        Set<PullId> known = new HashSet<>();
        loaded.view().rows().forEach(row -> known.add(row.pull()));
        chosen.among(known);
        boolean any = loaded.view().rows().stream().anyMatch(row -> !row.values().isEmpty() && row.values().stream()
                .anyMatch(value -> !value.text().isEmpty()));
        overlay.setVisible(any);
        table.setVisible(true);
        table.show(test, loaded.view());
        overlay.load(test);
        view.revalidate();
        view.repaint();
    }

    private void say(String words) {
        problem.setText(words);
        problem.setVisible(!words.isEmpty());
    }

    @Override
    public boolean take(Path file) {
        if (notReady(desk.document()).isPresent()) {
            return false;
        }
        incoming.take(file);
        return true;
    }
}
