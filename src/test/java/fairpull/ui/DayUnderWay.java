package fairpull.ui;

import fairpull.app.document.Settings;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.running.RunDay;
import fairpull.app.usecase.running.TakeExport;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.ui.frame.Pages;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.Page;
import fairpull.ui.page.run.RunPage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The invented day while it is run, and when it is done. */
final class DayUnderWay {
    private static final OffsetDateTime MORNING = OffsetDateTime.of(2026, 5, 9, 9, 0, 0, 0, ZoneOffset.UTC);
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");

    /** Where the day stands. */
    enum State {
        /** A1 is run, B1 has three of its pulls, the fourth is next. */
        WAITING,
        /** The fourth was aborted, a gate is overridden, it is late, and the day no longer fits. */
        LATE,
        /** As waiting, with a gate on everything that can be read. */
        MANY_GATES,
        /** The part is being changed. */
        SWAPPING,
        /** Back at A, with A2 run. */
        BACK,
        /** All is done. */
        OVER
    }

    private final Path folder;
    private OffsetDateTime now = MORNING;
    private OffsetDateTime shown = MORNING;

    private DayUnderWay(Path folder) {
        this.folder = folder;
    }

    /** {@return the window's content on that day, with the page Run in view} */
    static TestPane pane(Path folder, Settings settings, State state) throws IOException {
        DayUnderWay day = new DayUnderWay(folder);
        day.run(state);
        Clock still = Clock.fixed(day.shown.toInstant(), ZoneOffset.UTC);
        TestPane pane = new TestPane(KeepTest.open(folder), settings, desk -> Pages.of(desk).stream()
                .map(page -> page.key().equals("page.run") ? new RunPage(desk, still, 1000, hertz -> { }) : page).toList());
        pane.go(run(pane));
        return pane;
    }

    private static Page run(TestPane pane) {
        return pane.pages().stream().filter(page -> page.key().equals("page.run")).findFirst().orElseThrow();
    }

    private void run(State state) throws IOException {
        Plan plan = KeepTest.open(Path.of("plans/electric-pump")).plan();
        if (state == State.LATE) {
            plan = plan.resequenced(plan.sequence().withLabelled(plan.sequence().sessions().stream()
                    .map(session -> session.with(new Hours(LocalTime.of(9, 0), Optional.of(LocalTime.of(11, 50)), List.of()))).toList()));
        }
        if (state == State.MANY_GATES) {
            plan = plan.withGates(Arrays.stream(Condition.values()).map(condition -> new Gate(condition, new Gate.NearReference(2))).toList());
        }
        KeepTest.create(folder, plan);
        KeepTest.seal(folder, MORNING.minusHours(12));
        List<Install> installs = plan.sequence().installs().toList();
        pulls(installs.get(0), 5);
        swap();
        switch (state) {
            case WAITING, MANY_GATES -> {
                pulls(installs.get(1), 3);
                gates("22.4 C", "99 C");
                shown = now.minusSeconds(160);
            }
            case LATE -> {
                pulls(installs.get(1), 3);
                RunDay.of(folder).aborted("wheel slip at 4200 rpm", now);
                now = now.plusMinutes(6);
                gates("26.4 C", "99 C");
                RunDay.of(folder).goOn("no time to cool down", now);
                shown = now;
            }
            case SWAPPING -> {
                pulls(installs.get(1), 5);
                RunDay.of(folder).swap(now);
                shown = now.plusSeconds(200);
            }
            case BACK -> back(installs, 3);
            case OVER -> back(installs, installs.size());
        }
    }

    private void back(List<Install> installs, int count) throws IOException {
        for (int place = 1; place < count; place++) {
            pulls(installs.get(place), 5);
            if (place + 1 < installs.size()) {
                swap();
            }
        }
        shown = now.minusSeconds(100);
    }

    private void gates(String intake, String coolant) throws IOException {
        RunDay.of(folder).read(Condition.INTAKE_AIR, intake, now);
        RunDay.of(folder).read(Condition.COOLANT, coolant, now);
    }

    private void swap() throws IOException {
        RunDay.of(folder).swap(now);
        now = now.plusMinutes(8);
        RunDay.of(folder).swap(now);
    }

    private void pulls(Install install, int counted) throws IOException {
        for (int pull = 1; pull <= install.warmUpPulls() + counted; pull++) {
            RunDay.of(folder).pullDone(now);
            if (pull > install.warmUpPulls()) {
                TakeExport.take(folder, EXPORTS.resolve(install.label() + "-" + (pull - install.warmUpPulls()) + ".csv"), now);
            }
            now = now.plusSeconds(240);
        }
    }
}
