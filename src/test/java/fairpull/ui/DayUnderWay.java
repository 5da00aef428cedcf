package fairpull.ui;

import fairpull.app.document.Settings;
import fairpull.app.usecase.KeepTest;
import fairpull.app.usecase.RunDay;
import fairpull.app.usecase.TakeExport;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Plan;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.run.RunPage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

/** The invented day in its middle: A1 is run, B1 has three of its pulls, the fourth is next. */
final class DayUnderWay {
    private static final OffsetDateTime MORNING = OffsetDateTime.of(2026, 5, 9, 9, 0, 0, 0, ZoneOffset.UTC);
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");

    private final Path folder;
    private OffsetDateTime now = MORNING;

    private DayUnderWay(Path folder) {
        this.folder = folder;
    }

    /** {@return the window's content on that day} */
    static TestPane pane(Path folder, Settings settings) throws IOException {
        DayUnderWay day = new DayUnderWay(folder);
        day.run();
        Clock still = Clock.fixed(day.now.minusSeconds(160).toInstant(), ZoneOffset.UTC);
        return new TestPane(KeepTest.open(folder), settings, desk -> List.of(new RunPage(desk, still, 1000)));
    }

    private void run() throws IOException {
        Plan plan = KeepTest.open(Path.of("plans/electric-pump")).plan();
        KeepTest.create(folder, plan);
        KeepTest.seal(folder, MORNING.minusHours(12));
        pulls("A1", 5);
        RunDay.of(folder).swap(now);
        now = now.plusMinutes(8);
        RunDay.of(folder).swap(now);
        pulls("B1", 3);
        RunDay.of(folder).read(Condition.INTAKE_AIR, "22.4 C", now);
        RunDay.of(folder).read(Condition.COOLANT, "99 C", now);
    }

    private void pulls(String install, int counted) throws IOException {
        int warmUps = KeepTest.open(folder).plan().sequence().installs().filter(one -> one.label().equals(install)).findFirst()
                .orElseThrow().warmUpPulls();
        for (int pull = 1; pull <= warmUps + counted; pull++) {
            RunDay.of(folder).pullDone(now);
            if (pull > warmUps) {
                TakeExport.take(folder, EXPORTS.resolve(install + "-" + (pull - warmUps) + ".csv"), now);
            }
            now = now.plusSeconds(240);
        }
    }
}
