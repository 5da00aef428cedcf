package fairpull.ui.page.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.NotePull;
import fairpull.app.usecase.running.RunDay;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.form.ChartView;
import fairpull.ui.frame.TestPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole day through the page: exports dropped into the watched folder, an abort, a gate overridden, a restart in the middle. */
class RunPageTest {
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");
    private static final OffsetDateTime MORNING = OffsetDateTime.of(2026, 5, 9, 8, 40, 0, 0, ZoneOffset.UTC);

    @TempDir
    private Path home;

    private final Hands clock = new Hands();
    private Path folder;
    private Path rig;
    private TestPane pane;
    private RunPage page;
    private int files;
    private final List<Double> tones = new CopyOnWriteArrayList<>();

    /** A clock that goes when it is told to. */
    private static final class Hands extends Clock {
        private Instant now = MORNING.toInstant();
        private ZoneId zone = ZoneOffset.UTC;

        void pass(double seconds) {
            now = now.plus(Duration.ofMillis(Math.round(seconds * 1000)));
        }

        @Override
        public ZoneId getZone() {
            return zone;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private void start() throws IOException {
        Document document = KeepTest.open(folder);
        Settings settings = Settings.in(home.resolve("settings"));
        settings.keep(javax.swing.SwingUtilities::invokeLater);
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            pane = new TestPane(document, settings, desk -> {
                page = new RunPage(desk, clock, 20, tones::add);
                return List.of(page);
            });
            OffScreen.laidOut(pane, 1280, 800);
            pane.go(page);
        });
        Waiting.forQuiet();
    }

    private void kill() {
        Waiting.onWindowThread(pane::removeNotify);
    }

    private static Stream<Component> within(Container container) {
        return Stream.of(container.getComponents()).flatMap(child -> Stream.concat(Stream.of(child),
                child instanceof Container inner ? within(inner) : Stream.empty()));
    }

    private <C> C find(String name, Class<C> kind) {
        return within(pane).filter(kind::isInstance).filter(one -> name.equals(one.getName())).map(kind::cast).findFirst().orElseThrow();
    }

    private void press(String button) {
        Waiting.onWindowThread(() -> {
            AbstractButton found = find(button, AbstractButton.class);
            assertThat(found.isEnabled()).as(button + " at " + text("run.head")).isTrue();
            found.doClick();
        });
        Waiting.forQuiet();
    }

    private void type(String field, String words) {
        Waiting.onWindowThread(() -> {
            JTextField found = find(field, JTextField.class);
            found.setText(words);
            found.postActionEvent();
        });
        Waiting.forQuiet();
    }

    private String text(String label) {
        return find(label, JLabel.class).getText();
    }

    private void export(PullId pull) throws IOException {
        Path half = rig.resolve("run" + ++files + ".csv");
        byte[] whole = Files.readAllBytes(EXPORTS.resolve(pull + ".csv"));
        Files.write(half, java.util.Arrays.copyOf(whole, whole.length / 2));
        Files.write(half, whole);
        Waiting.until(() -> find("run.watch.news", JTextArea.class).getText().contains(half.getFileName() + " is now pull " + pull + "."));
        Waiting.forQuiet();
    }

    private void pulls(Install install, int from) throws IOException {
        for (int number = from; number <= install.countedPulls(); number++) {
            PullId pull = new PullId(install.label(), false, number);
            assertThat(text("run.head")).isEqualTo("Pull " + number + " on " + install.label());
            press("run.done");
            export(pull);
            clock.pass(240);
        }
    }

    private void warmUps(Install install) {
        for (int number = 1; number <= install.warmUpPulls(); number++) {
            assertThat(text("run.head")).isEqualTo("Warm-up " + number + " on " + install.label());
            press("run.done");
            clock.pass(240);
        }
    }

    private void swap() {
        press("run.swap");
        assertThat(text("run.head")).startsWith("Swapping to");
        clock.pass(480);
        press("run.swap");
    }

    private void begin() throws IOException {
        folder = home.resolve("run");
        rig = Files.createDirectories(home.resolve("rig"));
        KeepTest.create(folder, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(folder, MORNING.minusHours(12));
        start();
        page.watch(rig);
        Waiting.forQuiet();
    }

    /** What the log says of the day, without what was taken back and the taking back itself. */
    private List<LogEntry> standing() throws IOException {
        return RunDay.of(folder).log().standing().stream().map(LogRecord::entry)
                .filter(entry -> !(entry instanceof LogEntry.TakenBack)).toList();
    }

    /** Something done on the page, which one press takes back; then done again. */
    private void undone(Class<? extends LogEntry> kind, Act act) throws IOException {
        List<LogEntry> before = standing();
        String head = text("run.head");
        act.act();
        assertThat(standing()).as(kind.getSimpleName()).hasSizeGreaterThan(before.size());
        assertThat(standing().get(before.size())).isInstanceOf(kind);
        press("run.undo");
        assertThat(standing()).as("one press takes back " + kind.getSimpleName()).isEqualTo(before);
        assertThat(text("run.head")).isEqualTo(head);
        clock.pass(1);
        act.act();
        clock.pass(1);
    }

    private interface Act {
        void act() throws IOException;
    }

    @Test
    void everyKindOfEntryIsTakenBackByOnePress() throws IOException {
        begin();
        assertThat(find("run.undo", AbstractButton.class).isEnabled()).isFalse();
        undone(LogEntry.PullRun.class, () -> press("run.done"));
        press("run.done");
        undone(LogEntry.PullAborted.class, () -> {
            press("run.abort");
            type("run.reason.field", "wheel slip");
        });
        undone(LogEntry.ConditionsNoted.class, () -> type("run.gate.intake-air", "21 C"));
        type("run.gate.coolant", "90 C");
        press("run.done");
        clock.pass(10);
        undone(LogEntry.PullTaken.class, () -> export(new PullId("A1", false, 1)));
        assertThat(RunDay.of(folder).log().conditionsAt(new PullId("A1", false, 1))).isNotEmpty();
        type("run.gate.intake-air", "35 C");
        type("run.gate.coolant", "99 C");
        undone(LogEntry.GateOverridden.class, () -> {
            press("run.go");
            type("run.reason.field", "no time");
        });
        assertThat(text("run.gate.coolant.standing")).contains("goes on: no time");
        undone(LogEntry.Swap.class, () -> press("run.swap"));
        clock.pass(480);
        undone(LogEntry.Swap.class, () -> press("run.swap"));
        assertThat(text("run.head")).isEqualTo("Warm-up 1 on B1");
        assertThat(RunDay.of(folder).log().takenBack()).as("seven acts, one of which wrote two entries").hasSize(8);
        kill();
    }

    @Test
    void aToneSoundsAtTheEndOfTheCountDownAndOneWhenItIsLateUnlessSoundIsOff() throws IOException {
        begin();
        press("run.done");
        clock.pass(239);
        Waiting.until(() -> text("run.clock").equals("0:01"));
        assertThat(tones).isEmpty();
        clock.pass(1);
        Waiting.until(() -> !tones.isEmpty());
        assertThat(text("run.sign")).isEqualTo("▶ now");
        clock.pass(61);
        Waiting.until(() -> tones.size() == 2);
        assertThat(tones).containsExactly(Tones.DUE_HZ, Tones.LATE_HZ);
        assertThat(text("run.sign")).isEqualTo("■ late");
        press("run.sound");
        press("run.done");
        clock.pass(240);
        Waiting.until(() -> text("run.sign").equals("▶ now"));
        assertThat(tones).hasSize(2);
        kill();
    }

    @Test
    void aPullChosenOnTheStripIsToldAndMarkedAndADotChoosesOne() throws IOException {
        begin();
        Install first = KeepTest.open(folder).plan().sequence().installs().findFirst().orElseThrow();
        warmUps(first);
        pulls(first, 1);
        Waiting.onWindowThread(() -> pane.strip().choose(new PullId("A1", false, 2)));
        assertThat(find("run.chosen", JTextArea.class).getText()).startsWith("A1-2: started ").contains("hp");
        ChartView chart = find("run.chart", ChartView.class);
        Waiting.onWindowThread(() -> {
            OffScreen.laidOut(pane, 1280, 800);
            chart.getActionMap().get("HOME").actionPerformed(null);
            chart.getActionMap().get("ENTER").actionPerformed(null);
        });
        assertThat(pane.strip().chosenPull()).contains(new PullId("A1", false, 1));
        kill();
    }

    @Test
    void aReadingThatIsNotUnderstoodIsRefusedBesideItsFieldAndWhatIsTypedStays() throws IOException {
        begin();
        type("run.gate.intake-air", "warm");
        assertThat(text("run.gate.intake-air.standing")).contains("warm");
        assertThat(find("run.gate.intake-air", JTextField.class).getText()).isEqualTo("warm");
        assertThat(standing()).noneMatch(LogEntry.ConditionsNoted.class::isInstance);
        Waiting.onWindowThread(() -> find("run.gate.coolant", JTextField.class).setText("8"));
        type("run.gate.intake-air", "21 C");
        assertThat(find("run.gate.coolant", JTextField.class).getText()).as("half typed while another is written").isEqualTo("8");
        kill();
    }

    @Test
    void whatBecameOfAFileStandsFirstAndWhatToDoBeneathItInView() throws IOException {
        begin();
        assertThat(find("run.watch.state", JTextArea.class).getText().lines().toList()).hasSize(2)
                .first().asString().isEqualTo("Watching " + Path.of("…", home.getFileName().toString(), "rig"));
        assertThat(find("run.watch.state", JTextArea.class).getToolTipText()).contains(rig.toString());
        Files.copy(EXPORTS.resolve("A1-1.csv"), rig.resolve("A1-1.csv"));
        Waiting.until(() -> find("run.watch.news", JTextArea.class).getText().startsWith("A1-1.csv is now pull A1-1."));
        Files.writeString(rig.resolve("notes of the rig that are no export.csv"), "one,two\nthree,four\n");
        Waiting.until(() -> find("run.watch.news", JTextArea.class).getText().contains("was not taken"));
        List<String> news = find("run.watch.news", JTextArea.class).getText().lines().toList();
        assertThat(news.get(0)).isEqualTo("notes of the rig that are no export.csv was not taken.");
        assertThat(news).hasSizeGreaterThan(1).allMatch(line -> line.endsWith(".")).noneMatch(line -> line.contains("csv: "));
        assertThat(find("run.watch.earlier", JTextArea.class).getText()).isEqualTo("A1-1.csv is now pull A1-1.");
        Waiting.onWindowThread(() -> {
            OffScreen.laidOut(pane, 1280, 800);
            for (String name : List.of("run.watch.state", "run.watch.news", "run.watch.earlier")) {
                Component text = find(name, JTextArea.class);
                Rectangle at = SwingUtilities.convertRectangle(text.getParent(), text.getBounds(), pane);
                assertThat(at.y + at.height).as(name).isLessThanOrEqualTo(800);
                assertThat(text.getHeight()).as(name).isGreaterThanOrEqualTo(text.getPreferredSize().height);
            }
        });
        kill();
    }

    @Test
    void aDayKeepsItsClockWhereTheComputerIsInAnotherZone() throws IOException {
        begin();
        warmUps(KeepTest.open(folder).plan().sequence().installs().findFirst().orElseThrow());
        press("run.done");
        clock.pass(30);
        String head = text("run.head");
        String window = find("run.window", JTextArea.class).getText();
        assertThat(window).matches("earliest 0[89]:\\d\\d, latest 0[89]:\\d\\d");
        kill();
        clock.zone = ZoneId.of("Pacific/Auckland");
        start();
        assertThat(text("run.head")).isEqualTo(head);
        assertThat(find("run.window", JTextArea.class).getText()).startsWith(window + "\nby the day’s clock (UTC); this computer shows 2");
        press("run.done");
        assertThat(RunDay.of(folder).log().records()).extracting(record -> record.at().getOffset())
                .containsOnly(ZoneOffset.UTC);
        kill();
    }

    @Test
    void whatTheRigExportedBetweenAKillAndTheNextStartIsTaken() throws IOException {
        begin();
        Install first = KeepTest.open(folder).plan().sequence().installs().findFirst().orElseThrow();
        warmUps(first);
        press("run.done");
        export(new PullId("A1", false, 1));
        clock.pass(240);
        press("run.done");
        kill();
        Files.copy(EXPORTS.resolve("A1-2.csv"), rig.resolve("while dead.csv"));
        start();
        Waiting.until(() -> find("run.watch.news", JTextArea.class).getText().contains("while dead.csv is now pull A1-2."));
        assertThat(find("run.watch.news", JTextArea.class).getText()).as("what it knows already is no news").doesNotContain("same bytes");
        kill();
    }

    @Test
    void aWindowThatClosesWhileItsFolderIsReadForTheFirstTimeTakesNothingMore() throws IOException {
        begin();
        Waiting.onWindowThread(() -> {
            page.watch(rig);
            pane.removeNotify();
        });
        Waiting.forQuiet();
        // nobody looks at the folder of a window that is gone
        Waiting.until(() -> Waiting.threads().noneMatch("fairpull-watch"::equals));
    }

    @Test
    void aWholeDayEndsInTheFindingThatTheCommandLineGives() throws IOException {
        Plan plan = KeepTest.open(Path.of("plans/electric-pump")).plan();
        folder = home.resolve("run");
        rig = Files.createDirectories(home.resolve("rig"));
        Files.copy(EXPORTS.resolve("A1-1.csv"), rig.resolve("from yesterday.csv"));
        KeepTest.create(folder, plan);
        KeepTest.seal(folder, MORNING.minusHours(12));
        start();
        page.watch(rig);
        Waiting.forQuiet();
        List<Install> installs = plan.sequence().installs().toList();

        warmUps(installs.get(0));
        pulls(installs.get(0), 1);
        assertThat(find("run.watch.state", JTextArea.class).getText()).contains("not taken: 1");
        assertThat(within(pane)).anyMatch(one -> "run.chart".equals(one.getName()));
        swap();
        warmUps(installs.get(1));
        press("run.blind");
        assertThat(within(pane)).noneMatch(one -> "run.chart".equals(one.getName()));
        press("run.abort");
        type("run.reason.field", "wheel slip");
        clock.pass(240);
        type("run.gate.intake-air", "35 C");
        assertThat(text("run.gate.intake-air.standing")).contains("too high");
        press("run.go");
        type("run.reason.field", "no time to cool down");
        pulls(installs.get(1), 1);
        Files.copy(EXPORTS.resolve("B1-2.csv"), rig.resolve("again.csv"));
        Waiting.until(() -> find("run.watch.news", JTextArea.class).getText().contains("same bytes as pull B1-2"));
        swap();

        String before = text("run.head");
        kill();
        start();
        assertThat(text("run.head")).isEqualTo(before);
        Waiting.until(() -> find("run.watch.state", JTextArea.class).getText().startsWith("Watching"));
        assertThat(find("run.blind", AbstractButton.class).isSelected()).as("blind eyes stay blind over a restart").isTrue();
        assertThat(within(pane)).noneMatch(one -> "run.chart".equals(one.getName()));

        for (Install install : installs.subList(2, installs.size())) {
            warmUps(install);
            pulls(install, 1);
            if (install != installs.get(installs.size() - 1)) {
                swap();
            }
        }
        assertThat(text("run.head")).isEqualTo("The day is done");
        Waiting.until(() -> within(pane).anyMatch(one -> "run.chart".equals(one.getName())));
        String verdict = FindingView.of(folder).sections().stream().filter(section -> section.kind().equals("verdict")).findFirst()
                .orElseThrow().heading();
        Waiting.until(() -> find("run.verdict", JTextArea.class).getText().contains(verdict));
        assertThat(within(pane).filter(JTextArea.class::isInstance).map(area -> ((JTextArea) area).getText()))
                .noneMatch(words -> words.contains("No verdict"));
        kill();

        RunDay day = RunDay.of(folder);
        assertThat(day.log().repeated().keySet()).containsExactly(new PullId("B1", false, 1));
        assertThat(day.log().gatesOverridden().keySet()).containsExactly(new PullId("B1", false, 1));
        assertThat(JudgeFolder.judge(folder).deciding()).isEqualTo(JudgeFolder.judge(byCommandLine(plan, day)).deciding());
    }

    private Path byCommandLine(Plan plan, RunDay day) throws IOException {
        Path other = home.resolve("imported");
        KeepTest.create(other, plan);
        KeepTest.seal(other, MORNING.minusHours(12));
        for (Map.Entry<PullId, LogEntry.PullRun> run : day.log().run().entrySet()) {
            if (!run.getKey().warmUp()) {
                ImportPulls.run(new ImportPulls.Request(other, List.of(EXPORTS.resolve(run.getKey() + ".csv")), Optional.empty(),
                        OptionalInt.empty(), false, new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false,
                        Optional.empty()), Optional.of(run.getValue().startedAt())), MORNING);
            } else {
                NotePull.note(other, List.of(new NotePull.Note(run.getKey(), Optional.of(run.getValue().startedAt()), Map.of(), Map.of(),
                        Optional.empty(), Optional.empty(), Map.of(), Optional.empty())), MORNING);
            }
        }
        return other;
    }
}
