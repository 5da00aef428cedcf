package fairpull.ui.page.run;

import fairpull.app.document.Document;
import fairpull.app.task.FolderWatch;
import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.judging.NotYetOver;
import fairpull.app.usecase.running.RunDay;
import fairpull.app.usecase.running.RunFace;
import fairpull.app.usecase.running.SoFar;
import fairpull.app.usecase.running.TakeExport;
import fairpull.domain.InputException;
import fairpull.domain.plan.Condition;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.NextAction;
import fairpull.report.chart.Role;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.form.Teller;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * The day as it is run. What is done goes into the log at once; the page holds nothing that would be missed after a kill. The time
 * between two ticks does no more than compare a few words.
 */
public final class RunPage implements Page {
    private static final int TICK_MS = 250;
    private static final int POLL_MS = 1000;
    private static final int STRIP_EVERY_S = 10;
    private static final int CUT_EVERY_S = 60;
    private static final String WATCH = "watch";
    private static final String WATCH_SINCE = "watchSince";
    private static final String REFUSED = "watchRefused";
    private static final int MOST_REFUSED = 100;

    private final Desk desk;
    private final Clock clock;
    private final JPanel view;
    private final DoubleConsumer tone;
    private final Tones tones = new Tones();
    private final NextCard next;
    private final SoFarCard soFarCard;
    private final Prose cautions = new Prose("", Role.INK, Look.Type.SMALL);
    private final GatesCard gates;
    private final ActsCard acts;
    private final WatchCard watch;
    private final Lane lane = new Lane(this::complain);
    private final Latest<SoFar> gathering = new Latest<>(SwingUtilities::invokeLater);
    private final Latest<Optional<String>> cutting = new Latest<>(SwingUtilities::invokeLater);
    private Optional<RunDay> day = Optional.empty();
    private Optional<SoFar> soFar = Optional.empty();
    private OffsetDateTime stripAt = OffsetDateTime.MIN;
    private OffsetDateTime cutAt = OffsetDateTime.MIN;

    /** The page on a desk, by the system's clock. */
    public RunPage(Desk desk) {
        this(desk, FastClock.ofSystem(), POLL_MS, Beep::play);
    }

    /** The page by another clock, looking at the watched folder every so many milliseconds; {@code tone} sounds so many hertz. */
    public RunPage(Desk desk, Clock clock, int pollMs, DoubleConsumer tone) {
        this.desk = desk;
        this.clock = clock;
        this.tone = tone;
        next = new NextCard(() -> desk.pages().accept("page.finding"));
        soFarCard = new SoFarCard(desk.strip());
        gates = new GatesCard(this::read, () -> acts().focus());
        acts = new ActsCard(desk, this);
        watch = new WatchCard(lane, pollMs, this::take, this::remember);
        view = new Ticking(new Timer(TICK_MS, event -> tick()), watch::end);
        view.setLayout(new BorderLayout());
        view.setOpaque(false);
        view.setName("run");
        cautions.setName("run.cautions");
        cautions.setText(RunFace.cautions(desk.document().plan()));
        view.add(new Board(next, gates, soFarCard, acts, watch, cautions));
        acts.bindKeys(view);
        view.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent pressed) {
                acts.focus();
            }
        });
        desk.settings().listen(this::redraw);
        desk.strip().onChosen(install -> showSoFar());
    }

    private void complain(Throwable fault) {
        if (view.isShowing()) {
            Teller.around(view).say(FaultWords.of(fault));
        } else {
            desk.words().accept(FaultWords.of(fault));
        }
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
                desk.kept(WATCH).map(Path::of).ifPresent(kept -> watch.resume(kept,
                        desk.kept(WATCH_SINCE).map(Instant::parse).orElse(Instant.MAX), folder, refused()));
            }
        });
    }

    /** The day takes the room of the side panel, which says nothing that may be told before a look. */
    @Override
    public boolean isWide() {
        return true;
    }

    /** An export that is dropped on the page is taken as one that appeared in the watched folder. */
    @Override
    public boolean take(Path file) {
        OffsetDateTime now = now();
        folder().ifPresent(folder -> lane.ask(() -> TakeExport.take(folder, file, now), taken -> {
            watch.tell(Words.of("run.watch.taken", taken.file(), taken.pull()), taken.doubts().stream()
                    .filter(doubt -> !desk.isBlind()).map(doubt -> Words.sentence(doubt) + ".").toList());
            show();
        }, fault -> {
            boolean unsettled = fault instanceof InputException unusable && unusable.getMessage().contains("column");
            List<String> said = new ArrayList<>(FaultWords.sentences(fault, file));
            if (unsettled) {
                said.add(Words.of("run.watch.settle"));
            }
            refused(file);
            watch.tell(Words.of("run.watch.refused", file.getFileName()), said);
        }));
        return folder().isPresent();
    }

    /** Watches a folder, as choosing it does. */
    public void watch(Path folder) {
        watch.watch(folder);
    }

    private void remember(Optional<FolderWatch> watched) {
        desk.keep(WATCH, watched.map(watch -> watch.folder().toString()).orElse(""));
        desk.keep(WATCH_SINCE, watched.map(watch -> watch.newest().toString()).orElse(""));
        desk.keep(REFUSED, "");
    }

    /** A file that was refused is not taken for the pull that happens to wait after a restart. */
    private void refused(Path file) {
        lane.ask(() -> TakeExport.hash(file), hash -> desk.keep(REFUSED, Stream.concat(Stream.of(hash), refused().stream())
                .limit(MOST_REFUSED).collect(Collectors.joining(" "))), gone -> { });
    }

    private List<String> refused() {
        return desk.kept(REFUSED).map(kept -> List.of(kept.split(" "))).orElse(List.of());
    }

    private Optional<Path> folder() {
        return desk.document().folder();
    }

    /** Something that is done on the day at a moment. */
    interface Act {
        RunDay on(RunDay day, OffsetDateTime now) throws IOException;
    }

    /** {@return what is done, as long as the next action is still the one in view now} */
    Act meant(Act act) {
        Optional<NextAction> seen = day.map(read -> read.next(now()));
        return (read, now) -> act.on(seen.isPresent() ? read.meaning(seen.get(), now) : read, now);
    }

    /** Does something that happened at a moment: that of the key, however long the disk takes. */
    void act(OffsetDateTime now, Act act) {
        act(now, act, () -> desk.words().accept(""));
    }

    /** The same; {@code then} says something of it once it is done. */
    void act(OffsetDateTime now, Act act, Runnable then) {
        folder().ifPresent(folder -> lane.ask(() -> act.on(RunDay.of(folder), now), done -> {
            then.run();
            become(done);
        }));
    }

    /** {@return the pull that is next; empty where none is} */
    Optional<PullId> nextPull() {
        return day.flatMap(read -> read.next(now()).pull());
    }

    /** Takes the planned look. */
    void look() {
        OffsetDateTime now = now();
        folder().ifPresent(folder -> lane.ask(() -> {
            NotYetOver.look(folder, now);
            return RunDay.of(folder);
        }, looked -> {
            become(looked);
            desk.words().accept(Words.of("run.look.done"));
        }));
    }

    private ActsCard acts() {
        return acts;
    }

    /** A reading that is not understood is refused beside its field. */
    private void read(Condition condition, String typed) {
        OffsetDateTime now = now();
        Act reading = meant((read, at) -> read.read(condition, RunFace.withUnit(condition, typed, desk.settings().units()), at));
        folder().ifPresent(folder -> lane.ask(() -> reading.on(RunDay.of(folder), now), this::become,
                fault -> gates.refuse(condition, FaultWords.of(fault))));
    }

    /** {@return the time on the clock of the day, which may have begun in another zone than the computer is in now} */
    OffsetDateTime now() {
        OffsetDateTime computer = computer();
        return day.map(read -> read.onItsClock(computer)).orElse(computer);
    }

    private OffsetDateTime computer() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.MILLIS);
    }

    private void become(RunDay read) {
        boolean same = day.equals(Optional.of(read));
        day = Optional.of(read);
        if (desk.isBlind() && read.next(now()).kind() == NextAction.Kind.DONE) {
            desk.blind(false);
        }
        redraw();
        if (same) {
            return;
        }
        cutAt = OffsetDateTime.MIN;
        gathering.ask(Job.onDisk(() -> SoFar.of(read.folder())), ended -> ended.tell(found -> {
            soFar = Optional.of(found);
            redraw();
        }, this::complain));
    }

    private void showSoFar() {
        soFar.ifPresent(found -> {
            soFarCard.show(found, desk.isBlind());
            next.found(found.found());
        });
    }

    private void redraw() {
        day.ifPresent(read -> {
            NextAction action = read.next(now());
            gates.show(read.gates(action), !read.plan().gates().isEmpty(), desk.settings().units());
            acts.show(read, action);
            showSoFar();
            stripAt = OffsetDateTime.MIN;
            tick();
        });
    }

    private void tick() {
        day.ifPresent(read -> {
            OffsetDateTime now = now();
            RunFace face = RunFace.of(read, computer(), desk.isBlind());
            next.show(face);
            tones.at(face.next(), now).ifPresent(hertz -> {
                if (acts.isLoud()) {
                    tone.accept(hertz);
                }
            });
            if (cutAt.plusSeconds(CUT_EVERY_S).isBefore(now)) {
                cutAt = now;
                cutting.ask(progress -> read.cut(now), ended -> ended.tell(cut -> next.warn(cut.orElse("")), this::complain));
            }
            if (stripAt.plusSeconds(STRIP_EVERY_S).isBefore(now)) {
                stripAt = now;
                strip(read, now);
            }
        });
    }

    private void strip(RunDay read, OffsetDateTime now) {
        Map<PullId, Double> values = new HashMap<>();
        if (!desk.isBlind()) {
            soFar.ifPresent(found -> found.values().values().forEach(values::putAll));
        }
        Set<PullId> driven = read.driven();
        desk.strip().run(StripOfDay.of(read, now, driven, values));
    }
}
