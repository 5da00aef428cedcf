package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.click;
import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.find;
import static fairpull.ui.frame.Seat.frame;
import static fairpull.ui.frame.Seat.got;
import static fairpull.ui.frame.Seat.said;
import static fairpull.ui.frame.Seat.type;
import static fairpull.ui.frame.Seat.within;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Unsaved;
import fairpull.app.usecase.judging.KeepReport.Kind;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.planning.LooksTyping;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.running.RunDay;
import fairpull.app.usecase.running.SoFar;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day that is under way is judged nowhere in the window, but at a planned look and once it is ended. */
class EarlyFindingTest {
    private static final OffsetDateTime MORNING = OffsetDateTime.of(2026, 5, 9, 8, 40, 0, 0, ZoneOffset.UTC);
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");

    @TempDir
    private Path folder;
    private Path kept;
    private OpenTest test;

    /** A test whose first installs came in. */
    private void open(Plan plan, String... installs) throws IOException {
        kept = folder.resolve("kept");
        KeepTest.create(kept, plan);
        KeepTest.seal(kept, MORNING.minusHours(1));
        OffsetDateTime at = MORNING;
        for (String install : installs) {
            for (int pull = 1; pull <= plan.sequence().installs().findFirst().orElseThrow().countedPulls(); pull++) {
                at = at.plusMinutes(4);
                ImportPulls.run(new ImportPulls.Request(kept, List.of(EXPORTS.resolve(install + "-" + pull + ".csv")), Optional.empty(),
                        OptionalInt.empty(), false, new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false,
                        Optional.empty()), Optional.of(at)), MORNING);
            }
        }
        Seat seat = new Seat(folder.resolve("home"));
        var document = KeepTest.open(kept);
        done(() -> seat.windows.begin(Optional.of(document), Unsaved.none(), List.of()));
        test = seat.only();
    }

    private static Plan plan() throws IOException {
        return KeepTest.open(Path.of("plans/electric-pump")).plan();
    }

    private List<String> texts() {
        return got(() -> within(test.pane()).filter(JTextComponent.class::isInstance).map(part -> ((JTextComponent) part).getText()).toList());
    }

    private Stream<String> names() {
        return got(() -> within(test.pane()).map(part -> String.valueOf(part.getName())).toList()).stream();
    }

    private void nothingIsTold() {
        assertThat(names()).noneMatch(name -> name.equals("finding.verdict") || name.equals("report"));
        // whether the car came back to A may be told at any time, on the page Run
        assertThat(texts()).noneMatch(text -> text.contains("% interval") && !text.startsWith("Back at A") || text.contains("p ="));
    }

    @Test
    void nothingIsJudgedOrWrittenWhileTheDayIsUnderWayUntilItIsEndedWithAReason() throws IOException {
        open(plan(), "A1", "B1", "A2");
        done(() -> test.pane().finding());
        nothingIsTold();
        assertThat(texts()).anyMatch(text -> text.startsWith("The day is under way: "));

        frame(test).chosen = Optional.of(folder.resolve("one.html"));
        done(() -> test.actions().reports().ask(Kind.HTML));
        assertThat(folder.resolve("one.html")).doesNotExist();
        assertThat(said(test)).contains("The day is under way");

        click(test, "finding.end");
        type(test, "finding.reason.field", "the clutch slips");
        assertThat(names()).contains("finding.verdict", "report");
        assertThat(texts()).anyMatch(text -> text.contains("the clutch slips"));

        RunDay.of(kept).undo(MORNING.plusHours(3));
        done(() -> test.pane().finding());
        nothingIsTold();
    }

    @Test
    void aPlannedLookIsOfferedWhereItIsDueAndTold() throws IOException {
        Plan plain = plan();
        Plan looking = plain.withLooks(LooksTyping.parse("3", plain, Looks.Spending.OBRIEN_FLEMING));
        open(looking, "A1", "B1", "A2");
        done(() -> test.pane().finding());
        nothingIsTold();

        assertThat(SoFar.of(kept).said()).contains("The look planned after A2 can be taken now; no verdict before it.");
        click(test, "finding.look");
        assertThat(names()).contains("finding.verdict");
        assertThat(RunDay.of(kept).log().looks()).hasSize(1);
        assertThat(SoFar.of(kept).said()).contains("No verdict before the end, after A3.");
    }

    @Test
    void atAnyOtherPlaceNoLookIsOffered() throws IOException {
        Plan plain = plan();
        open(plain.withLooks(LooksTyping.parse("3", plain, Looks.Spending.OBRIEN_FLEMING)), "A1", "B1");
        done(() -> test.pane().finding());
        nothingIsTold();
        assertThat(got(() -> within(test.pane()).filter(AbstractButton.class::isInstance)
                .map(part -> String.valueOf(part.getName())).toList())).contains("finding.run").doesNotContain("finding.look");
        assertThat(texts()).anyMatch(text -> text.contains("No verdict before the planned look, after A2."));
        assertThat(find(test, "finding.run", AbstractButton.class).isEnabled()).isTrue();
    }
}
