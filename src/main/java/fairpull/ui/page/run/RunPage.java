package fairpull.ui.page.run;

import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.JudgeFolder;
import fairpull.app.usecase.RunDay;
import fairpull.app.usecase.RunFace;
import fairpull.app.usecase.SoFar;
import fairpull.app.usecase.TakeExport;
import fairpull.domain.InputException;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.NextAction;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/**
 * The day as it is run. What is done goes into the log at once; the page holds nothing that would be missed after a kill. The time
 * between two ticks does no more than compare a few words.
 */
public final class RunPage implements Page {
    private static final int TICK_MS = 250;
    private static final int POLL_MS = 1000;
    private static final int STRIP_EVERY_S = 10;
    private static final double DUE_HZ = 880;
    private static final double LATE_HZ = 440;

    private final Desk desk;
    private final Clock clock;
    private final JPanel view;
    private final NextCard next = new NextCard();
    private final ReasonBar reason = new ReasonBar();
    private final SoFarCard soFarCard = new SoFarCard();
    private final GatesCard gates;
    private final ActsCard acts;
    private final WatchCard watch;
    private final Lane lane = new Lane(this::complain);
    private final Latest<SoFar> gathering = new Latest<>(SwingUtilities::invokeLater);
    private final Latest<Optional<String>> cutting = new Latest<>(SwingUtilities::invokeLater);
    private Optional<RunDay> day = Optional.empty();
    private Optional<SoFar> soFar = Optional.empty();
    private String sign = "";
    private OffsetDateTime stripAt = OffsetDateTime.MIN;

    /** The page on a desk, by the system's clock. */
    public RunPage(Desk desk) {
        this(desk, FastClock.ofSystem(), POLL_MS);
    }

    /** The page by another clock, looking at the watched folder every so many milliseconds. */
    public RunPage(Desk desk, Clock clock, int pollMs) {
        this.desk = desk;
        this.clock = clock;
        gates = new GatesCard((condition, typed) -> act((one, now) -> one.read(condition, typed, now)));
        acts = new ActsCard(desk, this);
        watch = new WatchCard(lane, pollMs, this::take, this::remember);
        view = new Ticking(new Timer(TICK_MS, event -> tick()), watch::end);
        view.setLayout(new MigLayout("insets 0, gap 16 12, fillx, wrap 2, hidemode 3", "[grow, fill][280!, fill]"));
        view.setOpaque(false);
        view.setName("run");
        view.add(reason, "spanx, growx");
        view.add(next, "grow, wmin 0");
        view.add(soFarCard, "grow, wmin 0");
        view.add(gates, "grow, wmin 0");
        view.add(acts, "grow, wmin 0");
        view.add(watch, "spanx, growx, wmin 0");
        view.add(Prose.small(RunFace.caution()), "spanx, growx, wmin 0");
        acts.bindKeys(view);
        desk.settings().listen(this::redraw);
    }

    private void complain(Throwable fault) {
        desk.words().accept(FaultWords.of(fault));
    }

    /** {@return why a day cannot be run yet} */
    public static Optional<String> whyNotYet(Document document) {
        return document.isSealed() ? Optional.empty() : Optional.of(Words.of("run.notYet"));
    }

    @Override
    public String key() {
        return "page.run";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public Optional<String> notYet(Document document) {
        return whyNotYet(document);
    }

    @Override
    public void show() {
        desk.document().folder().filter(folder -> desk.document().isSealed()).ifPresent(folder -> {
            lane.ask(() -> RunDay.of(folder), this::become);
            if (!watch.isWatching()) {
                desk.settings().find(setting("watch")).filter(kept -> !kept.isEmpty()).map(Path::of).ifPresent(watch::watch);
            }
        });
    }

    /** An export that is dropped on the page is taken as one that appeared in the watched folder. */
    @Override
    public boolean take(Path file) {
        OffsetDateTime now = now();
        folder().ifPresent(folder -> lane.ask(() -> TakeExport.take(folder, file, now), taken -> {
            watch.tell(Words.of("run.watch.taken", taken.file(), taken.pull()) + String.join("", taken.doubts().stream()
                    .map(doubt -> " " + doubt + ".").toList()));
            show();
        }, fault -> {
            boolean unsettled = fault instanceof InputException unusable && unusable.getMessage().contains("column");
            watch.tell(Words.of("run.watch.refused", file.getFileName(), FaultWords.of(fault))
                    + (unsettled ? " " + Words.of("run.watch.settle") : ""));
        }));
        return folder().isPresent();
    }

    /** Watches a folder, as choosing it does. */
    public void watch(Path folder) {
        watch.watch(folder);
    }

    private void remember(Optional<Path> watched) {
        keep("watch", watched.map(Path::toString).orElse(""));
    }

    /** Keeps a setting of this test, so that a restart finds it. */
    void keep(String name, String value) {
        desk.settings().set(setting(name), value);
    }

    /** {@return the name of a setting of this test} */
    String setting(String name) {
        return "run." + name + ":" + folder().map(folder -> folder.toAbsolutePath().normalize().toString()).orElse("");
    }

    private Optional<Path> folder() {
        return desk.document().folder();
    }

    /** Something that is done on the day at a moment. */
    interface Act {
        RunDay on(RunDay day, OffsetDateTime now) throws IOException;
    }

    /** Does something; the moment is that of the key, however long the disk takes. */
    void act(Act act) {
        OffsetDateTime now = now();
        folder().ifPresent(folder -> lane.ask(() -> act.on(RunDay.of(folder), now), done -> {
            desk.words().accept("");
            become(done);
        }));
    }

    /** Asks why, then does something with the answer. */
    void ask(String key, Function<String, Act> answered) {
        reason.ask(key, why -> act(answered.apply(why)));
    }

    /** Takes the planned look. */
    void look() {
        OffsetDateTime now = now();
        folder().ifPresent(folder -> lane.ask(() -> {
            JudgeFolder.look(folder, now);
            return RunDay.of(folder);
        }, looked -> {
            become(looked);
            desk.words().accept(Words.of("run.look.done"));
        }));
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.MILLIS);
    }

    private void become(RunDay read) {
        boolean same = day.equals(Optional.of(read));
        day = Optional.of(read);
        redraw();
        if (same) {
            return;
        }
        OffsetDateTime now = now();
        gathering.ask(Job.onDisk(() -> SoFar.of(read.folder())), ended -> ended.tell(found -> {
            soFar = Optional.of(found);
            redraw();
        }, this::complain));
        cutting.ask(progress -> read.cut(now), ended -> ended.tell(cut -> next.warn(cut.orElse("")), this::complain));
    }

    private boolean blind() {
        boolean done = day.map(read -> read.next(now()).kind() == NextAction.Kind.DONE).orElse(false);
        return acts.isBlind() && !done;
    }

    private void redraw() {
        day.ifPresent(read -> {
            NextAction action = read.next(now());
            gates.show(read.gates(action), !read.plan().gates().isEmpty(), desk.settings().units());
            acts.show(read, action);
            soFar.ifPresent(found -> soFarCard.show(found, blind()));
            stripAt = OffsetDateTime.MIN;
            tick();
        });
    }

    private void tick() {
        day.ifPresent(read -> {
            OffsetDateTime now = now();
            RunFace face = RunFace.of(read, now, blind());
            next.show(face);
            sound(face.sign());
            if (stripAt.plusSeconds(STRIP_EVERY_S).isBefore(now)) {
                stripAt = now;
                strip(read, now);
            }
        });
    }

    private void sound(String shown) {
        boolean changed = !shown.equals(sign) && !sign.isEmpty() && !shown.isEmpty();
        sign = shown;
        if (changed && acts.isLoud() && !shown.startsWith("‖")) {
            Beep.play(shown.startsWith("▶") ? DUE_HZ : LATE_HZ);
        }
    }

    private void strip(RunDay read, OffsetDateTime now) {
        Map<PullId, Double> values = new HashMap<>();
        if (!blind()) {
            soFar.ifPresent(found -> found.values().values().forEach(values::putAll));
        }
        Set<PullId> driven = read.driven();
        desk.strip().run(StripOfDay.of(read, now, driven, values));
    }
}
