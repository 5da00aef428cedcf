package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.click;
import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.find;
import static fairpull.ui.frame.Seat.frame;
import static fairpull.ui.frame.Seat.said;
import static fairpull.ui.frame.Seat.type;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Unsaved;
import fairpull.app.usecase.judging.KeepReport.Kind;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.cli.CommandLineProgram;
import fairpull.ui.CopiedTest;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window writes of a finding, held against what the command line writes of the same test. */
class ReportActionsTest {
    @TempDir
    private Path folder;
    private Path kept;
    private Seat seat;
    private OpenTest test;

    @BeforeEach
    void open() throws IOException {
        kept = CopiedTest.of(Path.of("plans/panel-filter"), folder.resolve("panel-filter"));
        seat = new Seat(folder.resolve("home"));
        var document = KeepTest.open(kept);
        done(() -> seat.windows.begin(Optional.of(document), Unsaved.none(), List.of()));
        test = seat.only();
    }

    private static byte[] printed(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLineProgram(new PrintWriter(out, true), new PrintWriter(err, true), Clock.systemUTC())
                .runVerb(Stream.of(words).map(Object::toString).toList());
        assertThat(status).as(err.toString()).isZero();
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void written(Kind kind, Path target) {
        frame(test).chosen = Optional.of(target);
        done(() -> test.actions().reports().ask(kind));
    }

    private static Map<String, byte[]> files(Path place) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(place)) {
            for (Path file : all.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private static void same(Path ours, Path theirs) throws IOException {
        Map<String, byte[]> wanted = files(theirs);
        assertThat(files(ours).keySet()).isEqualTo(wanted.keySet());
        assertThat(files(ours)).allSatisfy((name, bytes) ->
                assertThat(Arrays.mismatch(bytes, wanted.getOrDefault(name, new byte[0]))).as("where %s differs", name).isEqualTo(-1));
    }

    @Test
    void everyFileHasTheBytesOfTheCommandLine() throws IOException {
        Path ours = Files.createDirectories(folder.resolve("ours"));
        Path theirs = Files.createDirectories(folder.resolve("theirs"));
        done(() -> seat.settings.set("report.paper", "a4"));
        written(Kind.HTML, ours.resolve("one.html"));
        assertThat(said(test)).contains("Written", "one.html");
        written(Kind.PDF, ours.resolve("one"));
        written(Kind.JSON, ours.resolve("one.json"));
        written(Kind.CSV, folder.resolve("our tables"));

        printed("report", kept, "--out", theirs.resolve("one.html"), "--pdf", theirs.resolve("one.pdf"), "--csv",
                folder.resolve("their tables"), "--paper", "a4");
        Files.write(theirs.resolve("one.json"), printed("judge", kept, "--json"));
        same(ours, theirs);
        same(folder.resolve("our tables"), folder.resolve("their tables"));
        assertThat(files(ours)).hasSize(3);
        assertThat(files(folder.resolve("our tables"))).containsKeys("pulls.csv", "settings.csv", "difference.csv");
    }

    @Test
    @SuppressWarnings("unchecked")
    void paperAndIdentityAreAsChosenOnThePage() throws IOException {
        done(() -> test.pane().finding());
        done(() -> find(test, "report.paper", JComboBox.class).setSelectedItem("letter"));
        click(test, "report.identity");
        Path ours = Files.createDirectories(folder.resolve("ours"));
        Path theirs = Files.createDirectories(folder.resolve("theirs"));
        frame(test).chosen = Optional.of(ours.resolve("one.html"));
        click(test, "report.html");
        frame(test).chosen = Optional.of(ours.resolve("one.pdf"));
        click(test, "report.pdf");
        frame(test).chosen = Optional.of(folder.resolve("our tables"));
        click(test, "report.csv");

        printed("report", kept, "--out", theirs.resolve("one.html"), "--pdf", theirs.resolve("one.pdf"), "--csv",
                folder.resolve("their tables"), "--paper", "letter", "--without-identity");
        same(ours, theirs);
        same(folder.resolve("our tables"), folder.resolve("their tables"));
        assertThat(Files.readString(ours.resolve("one.html"))).contains("Identity was left out").doesNotContain("panel filter");

        frame(test).chosen = Optional.of(ours.resolve("one.json"));
        click(test, "report.json");
        assertThat(said(test)).contains("Untick");
        assertThat(ours.resolve("one.json")).doesNotExist();
    }

    @Test
    void aFileIsReplacedOnlyWhenThatIsWanted() throws IOException {
        Path file = Files.writeString(folder.resolve("one.html"), "something else");
        written(Kind.HTML, file);
        assertThat(said(test)).contains("there already");
        click(test, "file.keep");
        assertThat(file).hasContent("something else");
        written(Kind.HTML, file);
        click(test, "file.replace");
        assertThat(Files.readString(file)).contains("<html");

        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(tables.resolve("pulls.csv"), "mine");
        written(Kind.CSV, tables);
        assertThat(said(test)).contains("holds pulls.csv already");
        click(test, "file.keep");
        assertThat(files(tables)).hasSize(1);
    }

    @Test
    void nothingIsWrittenWhileThePlanIsAmended() {
        done(() -> test.pane().finding());
        done(test.document()::beginAmendment);
        type(test, "question.title", "another title");
        written(Kind.JSON, folder.resolve("one.json"));
        assertThat(said(test)).contains("being amended");
        assertThat(folder.resolve("one.json")).doesNotExist();
    }

    @Test
    void blindEyesWriteNoFinding() {
        done(() -> seat.settings.set("run.blind:" + kept.toAbsolutePath().normalize(), "on"));
        written(Kind.HTML, folder.resolve("one.html"));
        assertThat(said(test)).contains("run blind");
        assertThat(folder.resolve("one.html")).doesNotExist();
    }

    @Test
    void aTestThatIsNotSealedSaysWhatComesFirst() throws IOException {
        Path open = folder.resolve("open");
        KeepTest.create(open, KeepTest.open(kept).plan());
        var document = KeepTest.open(open);
        done(() -> seat.windows.show(document));
        test = Seat.got(seat.windows::open).get(1);
        written(Kind.HTML, folder.resolve("one.html"));
        assertThat(said(test)).contains("Seal the plan");
        assertThat(folder.resolve("one.html")).doesNotExist();
    }

    @Test
    void aTestThatChangedSinceItWasJudgedIsJudgedAgainFirst() throws IOException {
        done(() -> test.pane().finding());
        frame(test).chosen = Optional.of(folder.resolve("one.json"));
        Files.writeString(kept.resolve("log.jsonl"), "{\"cut", StandardOpenOption.APPEND);
        click(test, "report.json");
        assertThat(said(test)).contains("has changed on disk");
        assertThat(folder.resolve("one.json")).doesNotExist();
        click(test, "report.json");
        assertThat(folder.resolve("one.json")).isNotEmptyFile();
    }

    @Test
    void theTestsOwnFilesAndAPlaceThatIsNoneAreRefusedInWords() throws IOException {
        written(Kind.CSV, kept);
        assertThat(said(test)).contains("belongs to the test itself");
        Path file = Files.writeString(folder.resolve("file"), "");
        written(Kind.HTML, file.resolve("one.html"));
        assertThat(said(test)).contains("file").doesNotContain("Exception", "fault of the program");
    }

    @Test
    void theFolderIsProposedAgain() {
        written(Kind.HTML, folder.resolve("reports").resolve("one.html"));
        written(Kind.PDF, folder.resolve("reports").resolve("one.pdf"));
        assertThat(frame(test).proposed).contains(folder.resolve("reports").resolve("panel-filter.pdf"));
        assertThat(find(test, "page.finding", AbstractButton.class).isSelected()).isTrue();
    }
}
