package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.find;
import static fairpull.ui.frame.Seat.frame;
import static fairpull.ui.frame.Seat.said;
import static fairpull.ui.frame.Seat.type;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.keeping.OpenedAt;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.app.usecase.running.RunDay;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.Waiting;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WindowsTest {
    private static final String EDITED = "Edited before the kill";

    @TempDir
    private Path folder;
    private Path home;
    private Path kept;

    @BeforeEach
    void keep() throws IOException {
        home = folder.resolve("home");
        kept = folder.resolve("cooler");
        KeepTest.create(kept, StartingPlan.in(UnitSystem.METRIC));
    }

    /** Edits a test and leaves it as a kill would: nothing is ended. The recovery file gets the name of a process that is gone. */
    private void editedAndKilled(Optional<Document> document) throws IOException {
        Seat seat = new Seat(home);
        seat.settings.set("started", "yes");
        done(() -> seat.windows.begin(document, Unsaved.none(), List.of()));
        type(seat.only(), "question.title", EDITED);
        Waiting.until(() -> recovery().anyMatch(file -> holds(file, EDITED)));
        for (Path file : recovery().toList()) {
            Files.move(file.resolveSibling(file.getFileName().toString().replace(".json", ".where")), file.resolveSibling("1-1-1.where"));
            Files.move(file, file.resolveSibling("1-1-1.json"));
        }
    }

    private Stream<Path> recovery() {
        File[] files = home.resolve("recovery").toFile().listFiles((at, name) -> name.endsWith(".json"));
        return files == null ? Stream.empty() : Stream.of(files).map(File::toPath);
    }

    private static boolean holds(Path file, String words) {
        try {
            return Files.readString(file).contains(words);
        } catch (IOException beingReplaced) {
            return false;
        }
    }

    private Seat started(Optional<Path> asked) throws IOException {
        Seat seat = new Seat(home);
        seat.settings.set("started", "yes");
        Unsaved found = Unsaved.in(seat.settings);
        Optional<Document> document = asked.map(test -> {
            try {
                return KeepTest.open(test);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        });
        done(() -> seat.windows.begin(document, found, List.of()));
        return seat;
    }

    @Test
    void editsOfTheTestThatIsOpenedAreShownAndStaySafe() throws IOException {
        editedAndKilled(Optional.of(KeepTest.open(kept)));
        Path sameFolderOtherwise = kept.resolve("..").resolve("cooler");
        OpenTest test = started(Optional.of(sameFolderOtherwise)).only();
        assertThat(test.document().plan().title()).isEqualTo(EDITED);
        assertThat(test.document().isChanged()).isTrue();
        assertThat(said(test)).contains("not saved");
        assertThat(frame(test).front).isPositive();
        Waiting.until(() -> recovery().noneMatch(file -> file.endsWith("1-1-1.json")));
        assertThat(recovery()).as("they are still safe").hasSize(1).allMatch(file -> holds(file, EDITED));
    }

    @Test
    void editsThatNoFolderHoldsAreNotGivenUpUnasked() throws IOException {
        editedAndKilled(Optional.empty());
        Seat seat = started(Optional.empty());
        OpenTest test = seat.only();
        assertThat(test.document().isUntouched()).isFalse();
        assertThat(Titles.window(test.document(), false)).startsWith("•");
        done(test.actions()::close);
        assertThat(frame(test).ended).isFalse();
        assertThat(said(test)).contains("not saved");
        done(() -> test.actions().open(kept));
        assertThat(Seat.got(seat.windows::open)).hasSize(2).contains(test);
    }

    @Test
    void editsThatReachedTheirTestAreNotOffered() throws IOException {
        Document document = KeepTest.open(kept);
        editedAndKilled(Optional.of(document));
        KeepTest.write(kept, document.plan());
        OpenTest test = started(Optional.of(kept)).only();
        assertThat(test.document().isChanged()).isFalse();
        assertThat(said(test)).isEmpty();
        assertThat(recovery()).isEmpty();
    }

    @Test
    void aWindowThatIsClosedLeavesNothingBehind() throws IOException {
        Seat seat = started(Optional.of(kept));
        Seat.go(seat.only(), "page.rig");
        Seat.go(seat.only(), "page.sequence");
        Seat.go(seat.only(), "page.limits");
        int before = listeners(seat.settings);
        assertThat(before).isGreaterThan(5);
        WeakReference<TestPane> pane = new WeakReference<>(seat.only().pane());
        done(() -> {
            // as the frame does that is disposed of
            pane.get().removeNotify();
            seat.windows.open().get(0).end();
        });
        assertThat(listeners(seat.settings)).isZero();
        Waiting.until(() -> {
            System.gc();
            return pane.get() == null;
        });
    }

    private static int listeners(Settings settings) {
        return Seat.got(settings::listeners);
    }

    @Test
    void aDiskThatKeepsNoEditsIsSpokenOfOnce() throws IOException {
        Seat seat = started(Optional.of(kept));
        Files.createDirectories(home);
        Files.writeString(home.resolve("recovery"), "a file where a folder should be");
        OpenTest test = seat.only();
        type(test, "question.title", "not kept");
        Waiting.until(() -> said(test).contains("could not be kept"));
        assertThat(said(test)).doesNotContain("Exception");
        done(() -> test.pane().say(""));
        type(test, "question.title", "not kept either");
        Files.delete(home.resolve("recovery"));
        type(test, "question.title", "kept again");
        Waiting.until(() -> recovery().anyMatch(file -> holds(file, "kept again")));
        assertThat(said(test)).isEmpty();
    }

    /** A window that never ended leaves its day open: the next start goes on with it, on the page Run. */
    @Test
    void aDayUnderWayIsFoundAgainAfterAnEndFromOutside() throws IOException {
        Path test = folder.resolve("day");
        KeepTest.create(test, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(test, OffsetDateTime.parse("2026-05-09T08:00:00Z"));
        var document = KeepTest.open(test);
        Seat seat = new Seat(home);
        done(() -> seat.windows.begin(Optional.of(document), Unsaved.none(), List.of()));
        assertThat(OpenedAt.running(Windows.left(seat.settings))).as("nothing was run yet").isEmpty();
        RunDay.of(test).pullDone(OffsetDateTime.parse("2026-05-09T08:10:00Z"));

        List<Document> running = OpenedAt.running(Windows.left(seat.settings));
        assertThat(running).hasSize(1);
        Seat next = new Seat(home);
        done(() -> next.windows.begin(Optional.empty(), Unsaved.none(), running));
        assertThat(next.only().document().folder()).contains(test);
        assertThat(find(next.only(), "page.run", AbstractButton.class).isSelected()).isTrue();

        done(() -> next.only().actions().close());
        assertThat(Windows.left(next.settings)).isEmpty();
    }
}
