package fairpull.app.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.task.CancelledException;
import fairpull.app.task.Progress;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.running.DayFound;
import fairpull.app.usecase.shelf.ListedTest.State;
import fairpull.domain.finding.Judgement;
import fairpull.ui.CopiedTest;
import fairpull.ui.InventedTests;
import fairpull.ui.InventedTests.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a list says of tests is what judging each says; what is broken in one takes nothing from the others. */
class ListTestsTest {
    private static final Path PANEL = Path.of("plans/panel-filter");

    @TempDir
    private Path folder;

    private Map<String, ListedTest> list(ListTests listing) throws IOException {
        List<ListedTest> told = Collections.synchronizedList(new ArrayList<>());
        listing.list(ListTests.find(folder, Progress.none()), told::add, Progress.none());
        return told.stream().collect(Collectors.toMap(test -> folder.relativize(test.folder()).toString(), Function.identity()));
    }

    @Test
    void aTestThatIsOverHasTheFiguresOfItsJudgement() throws IOException {
        CopiedTest.of(PANEL, Files.createDirectories(folder.resolve("a/deep")).resolve("panel"));
        CopiedTest.of(Path.of("plans/electric-pump"), folder.resolve("pump"));
        Map<String, ListedTest> tests = list(new ListTests());

        assertThat(tests).containsOnlyKeys(Path.of("a/deep/panel").toString(), "pump");
        for (ListedTest test : tests.values()) {
            Judgement judged = JudgeFolder.judge(test.folder());
            ListedTest.Outcome outcome = test.outcome().orElseThrow();
            assertThat(JudgeFolder.withoutCurve(test.folder())).usingRecursiveComparison().ignoringFields("curve")
                    .withEqualsForType(Double::equals, Double.class).isEqualTo(judged);
            assertThat(test.state()).isEqualTo(State.COMPLETE);
            assertThat(DayFound.of(test.folder())).isPresent();
            assertThat(outcome.verdict()).isEqualTo(judged.deciding().verdict().words());
            assertThat(outcome.inGains()).isEqualTo(judged.deciding().estimate().orElseThrow().change()
                    / judged.deciding().settings().worthwhileGain().orElseThrow());
            assertThat(outcome.alarm()).isEmpty();
            assertThat(test.title()).isEqualTo(judged.plan().title());
        }
        // as `fairpull judge plans/panel-filter` prints them
        ListedTest panel = tests.get(Path.of("a/deep/panel").toString());
        assertThat(panel.outcome().orElseThrow().change().replace('\u202f', ' ')).isEqualTo("+1.1 kW");
        assertThat(panel.outcome().orElseThrow().interval().replace('\u202f', ' ')).isEqualTo("95 %: −1.0 … +3.1 kW");
        assertThat(InventedTests.run("judge", panel.folder())).contains("1.1", "3.1");
        assertThat(panel.date().orElseThrow().toLocalDate()).hasToString("2026-05-16");
    }

    @Test
    void beforeTheLastPullNoVerdictIsTold() throws IOException {
        InventedTests.make(folder, 1, Kind.PLANNED);
        InventedTests.make(folder, 2, Kind.SEALED);
        InventedTests.make(folder, 3, Kind.UNDER_WAY);
        InventedTests.make(folder, 4, Kind.COMPLETE);
        List<ListedTest> tests = list(new ListTests()).values().stream().sorted((one, other) -> one.folder().compareTo(other.folder()))
                .toList();

        assertThat(tests).extracting(ListedTest::stateWords).containsExactly("planned, not sealed", "sealed", "under way, 7 of 15 pulls",
                "complete");
        assertThat(tests).extracting(test -> test.outcome().isPresent()).containsExactly(false, false, false, true);
        assertThat(ListedTest.count(tests)).isEqualTo("4 tests: 1 complete, 1 under way, 2 still ahead.");
    }

    @Test
    void whatIsBrokenSaysSoInOneLineAndTakesNothingFromTheOthers() throws IOException {
        InventedTests.make(folder, 1, Kind.BROKEN);
        Files.writeString(Files.createDirectories(folder.resolve("empty plan")).resolve("plan.json"), "");
        Files.createDirectories(folder.resolve("a folder/plan.json"));
        Path log = CopiedTest.of(PANEL, folder.resolve("torn")).resolve("log.jsonl");
        Files.writeString(log, "not a log\n", StandardOpenOption.TRUNCATE_EXISTING);
        Path hand = CopiedTest.of(PANEL, folder.resolve("by hand")).resolve("plan.json");
        Files.writeString(hand, Files.readString(hand).replace("panel filter", "<html><b>filter"));
        CopiedTest.of(PANEL, folder.resolve("sound"));
        Map<String, ListedTest> tests = list(new ListTests());

        assertThat(tests).hasSize(6);
        assertThat(tests.values().stream().filter(test -> test.state() == State.UNREADABLE)).hasSize(4).allSatisfy(test -> {
            assertThat(test.trouble()).isNotBlank().doesNotContain("\n", "Exception", "fault of the program");
            assertThat(test.outcome()).isEmpty();
        });
        assertThat(tests.get("by hand").outcome().orElseThrow().alarm()).contains("plan");
        assertThat(tests.get("sound").outcome().orElseThrow().alarm()).isEmpty();
    }

    @Test
    void onlyWhatChangedIsJudgedAgain() throws IOException {
        Path first = InventedTests.make(folder, 1, Kind.COMPLETE);
        Path second = InventedTests.make(folder, 2, Kind.COMPLETE);
        ListTests listing = new ListTests();
        Map<String, ListedTest> before = list(listing);
        InventedTests.run("exclude", second, "A1-1", "--because", "invented");
        Map<String, ListedTest> after = list(listing);

        String kept = first.getFileName().toString();
        assertThat(after.get(kept)).isSameAs(before.get(kept));
        assertThat(after.get(second.getFileName().toString()).outcome()).isNotEqualTo(before.get(second.getFileName().toString()).outcome());
    }

    @Test
    void linksAndWhatIsHiddenAreNotFollowedAndTooMuchIsSaid() throws IOException {
        Path shop = Files.createDirectories(folder.resolve("shop"));
        Path outside = Files.createDirectories(folder.resolve("outside"));
        Files.writeString(Files.createDirectories(outside.resolve("test")).resolve("plan.json"), "{}");
        Files.createSymbolicLink(shop.resolve("link"), outside);
        Files.writeString(Files.createDirectories(shop.resolve(".hidden")).resolve("plan.json"), "{}");
        assertThat(ListTests.find(shop, Progress.none()).tests()).isEmpty();

        Path deep = shop;
        for (int level = 1; level <= ListTests.DEEPEST; level++) {
            deep = deep.resolve("level " + level);
        }
        Files.writeString(Files.createDirectories(deep).resolve("plan.json"), "{}");
        assertThat(ListTests.find(shop, Progress.none())).isEqualTo(new ListTests.Found(List.of(deep), List.of(), false));
        Files.writeString(Files.createDirectories(deep.getParent().resolve("next/below")).resolve("plan.json"), "{}");
        assertThat(ListTests.find(shop, Progress.none())).isEqualTo(new ListTests.Found(List.of(deep), List.of(), true));
    }

    @Test
    void workThatIsStoppedTellsNoMore() throws IOException {
        InventedTests.make(folder, 1, Kind.COMPLETE);
        Progress stopped = new Progress() {
            @Override
            public void reached(int done, int all) {
                throw new AssertionError("nothing is to be done");
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> ListTests.find(folder, stopped)).isInstanceOf(CancelledException.class);
        ListTests.Found found = ListTests.find(folder, Progress.none());
        assertThatThrownBy(() -> new ListTests().list(found, test -> { }, stopped)).isInstanceOf(CancelledException.class);
    }
}
