package fairpull.ui.page.run;

import fairpull.app.task.FolderWatch;
import fairpull.app.task.Job;
import fairpull.app.task.Polling;
import fairpull.app.usecase.TakeExport;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Insets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The folder to which the rig exports, and what became of each file that appeared in it. */
final class WatchCard extends Card {
    private static final int MOST_LINES = 3;

    private final Lane lane;
    private final int everyMs;
    private final Consumer<Path> found;
    private final Consumer<Optional<FolderWatch>> chosen;
    private final Prose state = new Prose("", Role.INK, Look.Type.SMALL);
    private final Prose news = new Prose("", Role.INK, Look.Type.SMALL);
    private final JButton stop = Buttons.of("run.watch.stop", this::stop);
    private Optional<Polling> polling = Optional.empty();
    private Optional<Object> wanted = Optional.empty();

    /** A card that tells of complete files, and of the folder that was chosen. */
    WatchCard(Lane lane, int everyMs, Consumer<Path> found, Consumer<Optional<FolderWatch>> chosen) {
        super(Words.of("run.watch.head"), new MigLayout("insets 10 16 10 16, gap 8 4, fillx, wrap 2", "[grow, fill, sg][grow, fill, sg]"));
        this.lane = lane;
        this.everyMs = everyMs;
        this.found = found;
        this.chosen = chosen;
        setName("run.watch");
        state.setName("run.watch.state");
        news.setName("run.watch.news");
        state.setText(Words.of("run.watch.none"));
        stop.setEnabled(false);
        add(state, "spanx, growx, wmin 0");
        JButton choose = Buttons.of("run.watch.choose", this::choose);
        for (JButton button : List.of(choose, stop)) {
            button.setMargin(new Insets(2, 4, 2, 4));
            DayKeys.leaveFocus(button);
            add(button, "growx, wmin 0");
        }
        add(news, "spanx, growx, wmin 0");
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(Words.of("run.watch.head"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            watch(chooser.getSelectedFile().toPath());
        }
    }

    /** Watches a folder from now on. */
    void watch(Path folder) {
        begin(folder, () -> FolderWatch.of(folder), watch -> chosen.accept(Optional.of(watch)));
    }

    /** Goes on watching after a restart: what came meanwhile is taken, unless {@code test} knows it or it was refused before. */
    void resume(Path folder, Instant since, Path test, List<String> refused) {
        begin(folder, () -> FolderWatch.resumed(folder, since, TakeExport.known(test, refused)), watch -> { });
    }

    /** Reading a folder for the first time takes a while; a watch that was ended or begun anew meanwhile must not begin after all. */
    private void begin(Path folder, Job.OnDisk<FolderWatch> beginning, Consumer<FolderWatch> begun) {
        end();
        Object wish = new Object();
        wanted = Optional.of(wish);
        lane.ask(beginning, watch -> {
            if (isWanted(wish)) {
                polling = Optional.of(Polling.start(watch, everyMs, SwingUtilities::invokeLater, files -> files.forEach(found),
                        trouble -> state.setText(trouble.isEmpty() ? on(watch) : Words.of("run.watch.lost", trouble))));
                state.setText(on(watch));
                stop.setEnabled(true);
                begun.accept(watch);
            }
        }, gone -> {
            if (isWanted(wish)) {
                end();
                state.setText(Words.of("run.watch.lost", folder));
            }
        });
    }

    private boolean isWanted(Object wish) {
        return wanted.filter(wish::equals).isPresent();
    }

    private static String on(FolderWatch watch) {
        return Words.of("run.watch.on", watch.folder(), watch.already());
    }

    private void stop() {
        end();
        state.setText(Words.of("run.watch.none"));
        stop.setEnabled(false);
        chosen.accept(Optional.empty());
    }

    /** Stops looking. */
    void end() {
        polling.ifPresent(Polling::stop);
        polling = Optional.empty();
        wanted = Optional.empty();
    }

    /** {@return whether a folder is watched, or is about to be} */
    boolean isWatching() {
        return wanted.isPresent();
    }

    /** Adds a line of news above the older ones. */
    void tell(String words) {
        List<String> lines = news.getText().lines().limit(MOST_LINES - 1L).toList();
        news.setText(words + (lines.isEmpty() ? "" : "\n" + String.join("\n", lines)));
        revalidate();
    }
}
