package fairpull.ui.page.run;

import fairpull.app.task.FolderWatch;
import fairpull.app.task.Job;
import fairpull.app.task.Polling;
import fairpull.app.usecase.running.TakeExport;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Insets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The folder to which the rig exports, and what became of each file that appeared in it. */
final class WatchCard extends Card {
    /** So many earlier files are named beside the last one. */
    private static final int MOST_EARLIER = 2;

    private final Lane lane;
    private final int everyMs;
    private final Consumer<Path> found;
    private final Consumer<Optional<FolderWatch>> chosen;
    private final Prose state = new Prose("", Role.INK, Look.Type.SMALL).asWritten();
    private final Prose news = new Prose("", Role.INK, Look.Type.SMALL).asWritten();
    private final Prose earlier = new Prose("", Role.SOFT, Look.Type.SMALL).asWritten();
    private final List<String> heads = new ArrayList<>();
    private final JButton stop = Buttons.of("run.watch.stop", this::stop);
    private Optional<Polling> polling = Optional.empty();
    private Optional<Object> wanted = Optional.empty();

    /** A card that tells of complete files, and of the folder that was chosen. */
    WatchCard(Lane lane, int everyMs, Consumer<Path> found, Consumer<Optional<FolderWatch>> chosen) {
        super(Words.of("run.watch.head"), new MigLayout("insets 10 16 10 16, gap 8 4, fillx, wrap 2, hidemode 3",
                "[grow, fill, sg][grow, fill, sg]"));
        this.lane = lane;
        this.everyMs = everyMs;
        this.found = found;
        this.chosen = chosen;
        setName("run.watch");
        state.setName("run.watch.state");
        news.setName("run.watch.news");
        earlier.setName("run.watch.earlier");
        news.setVisible(false);
        earlier.setVisible(false);
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
        add(earlier, "spanx, growx, wmin 0");
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
        state.setToolTipText(Words.tip(folder.toString()));
        lane.ask(beginning, watch -> {
            if (isWanted(wish)) {
                polling = Optional.of(Polling.start(watch, everyMs, SwingUtilities::invokeLater, files -> files.forEach(found),
                        trouble -> state.setText(trouble.isEmpty() ? on(watch) : Words.of("run.watch.lost", brief(folder)))));
                state.setText(on(watch));
                stop.setEnabled(true);
                begun.accept(watch);
            }
        }, gone -> {
            if (isWanted(wish)) {
                end();
                state.setText(Words.of("run.watch.gone", brief(folder)));
            }
        });
    }

    private boolean isWanted(Object wish) {
        return wanted.filter(wish::equals).isPresent();
    }

    private static String on(FolderWatch watch) {
        return Words.of(watch.already() == 0 ? "run.watch.on" : "run.watch.on.some", brief(watch.folder()), watch.already());
    }

    /** The end of a path, which tells folders apart; all of it stands in the tip. */
    private static String brief(Path folder) {
        int names = folder.getNameCount();
        return names <= 2 ? folder.toString() : Path.of("…").resolve(folder.subpath(names - 2, names)).toString();
    }

    private void stop() {
        end();
        state.setText(Words.of("run.watch.none"));
        state.setToolTipText(null);
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

    /**
     * Tells of a file: what became of it, and beneath what to know or do of it; of earlier ones only what became of them. Names of files
     * are no figures, and stay as they are.
     */
    void tell(String head, List<String> beneath) {
        news.setText(Stream.concat(Stream.of(head), beneath.stream().map(LocalNumbers::shown)).collect(Collectors.joining("\n")));
        earlier.setText(String.join("\n", heads));
        heads.add(0, head);
        heads.subList(Math.min(heads.size(), MOST_EARLIER), heads.size()).clear();
        news.setVisible(true);
        earlier.setVisible(!earlier.getText().isEmpty());
        revalidate();
    }
}
