package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.domain.audit.PublicationDraft;
import fairpull.ui.Waiting;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A kill takes nothing away that was typed in the window of an audit a second before: a process that is really killed, and one after it. */
class KilledAuditTest {
    @TempDir
    private Path folder;

    private Path home() {
        return folder.resolve("home");
    }

    private void typedAndKilledASecondLater(String publication, String... fields) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"), AuditTypedThenIdle.class.getName(),
                home().toString(), publication));
        command.addAll(List.of(fields));
        Path said = folder.resolve("said.txt");
        Process program = new ProcessBuilder(command).redirectError(said.toFile()).start();
        try (BufferedReader out = program.inputReader()) {
            assertThat(out.readLine()).as(() -> read(said)).isEqualTo(AuditTypedThenIdle.TYPED);
            TimeUnit.SECONDS.sleep(1);
        } finally {
            program.destroyForcibly().waitFor();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            return unreadable.toString();
        }
    }

    private Seat startedAgain() throws IOException {
        Seat seat = new Seat(home());
        seat.settings.set("started", "yes");
        Unsaved found = Unsaved.in(seat.settings);
        done(() -> seat.windows.begin(Optional.empty(), found, List.of()));
        return seat;
    }

    private Stream<String> kept() {
        File[] files = home().resolve("recovery").toFile().listFiles();
        return files == null ? Stream.empty() : Stream.of(files).map(File::getName);
    }

    @Test
    void halfAPublicationIsShownAtTheNextStartAndStaysSafeUntilItIsGivenUp() throws IOException, InterruptedException {
        typedAndKilledASecondLater("", "audit.title", "An intake, invented", "audit.figure.before.0", "184.2 hp", "audit.claim.words.0",
                "more power");
        String before = kept().findFirst().orElseThrow();
        Seat seat = startedAgain();
        OpenAudit audit = got(seat.windows::audits).get(0);
        PublicationDraft draft = audit.document().draft();
        assertThat(draft.title()).isEqualTo("An intake, invented");
        assertThat(draft.figures()).singleElement().satisfies(figure -> {
            assertThat(figure.before().orElseThrow().words()).isEqualTo("184.2 hp");
            assertThat(figure.after()).isEmpty();
        });
        assertThat(draft.claims()).singleElement().satisfies(claim -> assertThat(claim.words()).isEqualTo("more power"));
        assertThat(audit.document().isChanged()).isTrue();
        assertThat(audit.document().isUntouched()).isFalse();
        assertThat(got(seat.windows::open)).as("nothing else is opened").isEmpty();
        Waiting.until(() -> kept().noneMatch(before::equals));
        assertThat(kept()).as("it is still safe").hasSize(2);
        done(audit::end);
        Waiting.until(() -> kept().findAny().isEmpty());
    }

    @Test
    void editsOfAFileAreShownAsEditsOfThatFileAndAreNoLongerOfferedOnceTheyAreInIt() throws IOException, InterruptedException {
        Path file = folder.resolve("silent.json");
        Files.copy(Path.of("demo-data/published/silent.json"), file);
        typedAndKilledASecondLater(file.toString(), "audit.title", "Typed before the kill");
        AuditDocument found = Unsaved.in(Settings.in(home())).audits().get(0).document();
        assertThat(found.file()).contains(file.toAbsolutePath());
        assertThat(found.draft().title()).isEqualTo("Typed before the kill");
        assertThat(found.draft()).isEqualTo(KeepAudit.open(file).draft().titled("Typed before the kill"));
        AuditSeat seat = new AuditSeat(startedAgain());
        assertThat(seat.said()).contains("not saved");
        done(() -> seat.audit.actions().save());
        Waiting.until(() -> kept().findAny().isEmpty());
        assertThat(KeepAudit.open(file).draft().title()).isEqualTo("Typed before the kill");
        assertThat(Unsaved.in(Settings.in(home())).isEmpty()).isTrue();
    }
}
