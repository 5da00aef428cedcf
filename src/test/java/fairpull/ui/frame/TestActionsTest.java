package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.click;
import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.find;
import static fairpull.ui.frame.Seat.frame;
import static fairpull.ui.frame.Seat.go;
import static fairpull.ui.frame.Seat.said;
import static fairpull.ui.frame.Seat.type;
import static fairpull.ui.frame.Seat.typing;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Unsaved;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TestActionsTest {
    private static final String GAIN = "question.worthwhile";

    @TempDir
    private Path folder;
    private Path kept;
    private Seat seat;
    private OpenTest test;

    @BeforeEach
    void open() throws IOException {
        kept = folder.resolve("cooler");
        KeepTest.create(kept, StartingPlan.in(UnitSystem.METRIC));
        seat = new Seat(folder.resolve("home"));
        var document = KeepTest.open(kept);
        done(() -> seat.windows.begin(Optional.of(document), Unsaved.none(), List.of()));
        test = seat.only();
    }

    private Plan onDisk() {
        try {
            return KeepTest.open(kept).plan();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private String text(String name) {
        return Seat.got(() -> find(test, name, JTextField.class).getText());
    }

    @Test
    void nothingIsSavedOrSealedWhileAFieldShowsSomethingElseAndThatFieldIsBroughtIntoView() {
        Plan before = onDisk();
        type(test, GAIN, "3 hp");
        type(test, GAIN, "2..5 quarks");
        go(test, "page.rig");
        for (Runnable act : List.<Runnable>of(test.actions()::save, test.actions()::seal, test.actions()::saveNew)) {
            done(() -> test.pane().go(test.pane().pages().get(1)));
            done(act);
            assertThat(said(test)).contains("Nothing is written", "“Worthwhile gain”", ".5 quarks");
            assertThat(find(test, "page.question", AbstractButton.class).isSelected()).isTrue();
            assertThat(onDisk()).isEqualTo(before);
            assertThat(test.document().isSealed()).isFalse();
        }
        type(test, GAIN, "3 hp");
        done(test.actions()::seal);
        click(test, "seal.yes");
        assertThat(test.document().isSealed()).isTrue();
        assertThat(onDisk()).isEqualTo(test.document().plan());
        assertThat(onDisk().question().worthwhileGainSi()).isPresent();
    }

    @Test
    void whatWasNotUnderstoodGoesWithTheAmendmentThatIsDropped() {
        type(test, GAIN, "3 hp");
        done(test.actions()::seal);
        click(test, "seal.yes");
        done(test.document()::beginAmendment);
        type(test, GAIN, "quarks");
        done(test.document()::dropAmendment);
        assertThat(text(GAIN).replaceAll("[\\u00a0\\u202f]", " ")).as("in the unit that was typed or in that of the measure")
                .isIn("3 hp", "2.2371 kW");
        assertThat(find(test, GAIN, JTextField.class).isEnabled()).isFalse();
    }

    @Test
    void anAmendmentIsNotWrittenEitherWhileAFieldShowsSomethingElse() {
        done(test.actions()::seal);
        click(test, "seal.yes");
        Plan sealed = onDisk();
        done(test.document()::beginAmendment);
        type(test, "question.title", "amended");
        type(test, GAIN, "quarks");
        done(() -> find(test, "amend.because", JTextField.class).setText("a mistake"));
        click(test, "amend.write");
        assertThat(said(test)).contains("Nothing is written", "quarks");
        assertThat(onDisk()).isEqualTo(sealed);
    }

    @Test
    void whatACostCannotBeKeepsNoPlanFromBeingSaved() {
        go(test, "page.sequence");
        type(test, "cost.hour", "plenty");
        type(test, "days.hours", "long");
        go(test, "page.question");
        type(test, "question.title", "Saved all the same");
        done(test.actions()::save);
        assertThat(onDisk().title()).isEqualTo("Saved all the same");
    }

    @Test
    void whatIsStillBeingTypedIsTakenBackFirst() {
        type(test, "question.title", "first");
        go(test, "page.rig");
        String gear = test.document().plan().rig().gear();
        typing(test, "rig.gear", "fourth");
        done(test.actions()::undo);
        assertThat(test.document().plan().title()).isEqualTo("first");
        assertThat(test.document().plan().rig().gear()).isEqualTo(gear);
        assertThat(text("rig.gear")).isEqualTo(gear);
        assertThat(test.document().redoLabel()).isPresent();
    }

    @Test
    void whatIsStillBeingTypedIsSaved() {
        typing(test, "question.title", "typed and saved at once");
        done(test.actions()::save);
        assertThat(onDisk().title()).isEqualTo("typed and saved at once");
    }

    @Test
    void whatIsStillBeingTypedKeepsTheWindowOpen() {
        typing(test, "question.title", "typed and closed at once");
        done(test.actions()::close);
        assertThat(frame(test).ended).isFalse();
        assertThat(said(test)).contains("not saved");
        click(test, "close.save");
        assertThat(frame(test).ended).isTrue();
        assertThat(onDisk().title()).isEqualTo("typed and closed at once");
    }

    @Test
    void aSheetThatIsWrittenIsReportedThoughNothingCanShowIt() {
        Path sheet = folder.resolve("sheet.pdf");
        frame(test).chosen = Optional.of(sheet);
        done(test.actions()::sheet);
        assertThat(sheet).isNotEmptyFile();
        assertThat(frame(test).viewed).contains(sheet);
        assertThat(said(test)).startsWith("The run sheet is in " + sheet).contains("open it yourself").doesNotContain("URI");
    }

    @Test
    void aSheetReplacesAnotherFileOnlyWhenThatIsWanted() throws IOException {
        Path sheet = Files.writeString(folder.resolve("sheet.html"), "something else");
        frame(test).chosen = Optional.of(sheet);
        done(test.actions()::sheet);
        assertThat(said(test)).contains("there already");
        click(test, "file.keep");
        assertThat(sheet).hasContent("something else");
        done(test.actions()::sheet);
        click(test, "file.replace");
        assertThat(Files.readString(sheet)).contains("<html");
    }

    @Test
    void aSheetWithoutAnEndingIsRefusedInWords() {
        frame(test).chosen = Optional.of(folder.resolve("sheet"));
        done(test.actions()::sheet);
        assertThat(said(test)).contains(".pdf").doesNotContain("Exception");
    }

    @Test
    void aNewTestIsMadeOfThePlanAndThisOneStaysAsItIs() throws IOException {
        type(test, "question.title", "second day");
        Path other = folder.resolve("second");
        frame(test).chosen = Optional.of(other);
        done(test.actions()::saveNew);
        assertThat(KeepTest.open(other).plan().title()).isEqualTo("second day");
        assertThat(onDisk().title()).isNotEqualTo("second day");
        assertThat(Seat.got(seat.windows::open)).hasSize(2).anyMatch(open -> open.isIn(other));
        assertThat(test.document().isChanged()).isTrue();
    }

    @Test
    void theNoticeGoesByItsSignAndByEscape() {
        done(() -> test.pane().say("something"));
        click(test, "banner.close");
        assertThat(said(test)).isEmpty();
        done(test.actions()::seal);
        done(() -> {
            Banner banner = find(test, "banner", Banner.class);
            Object act = banner.getInputMap(Banner.WHEN_IN_FOCUSED_WINDOW).get(javax.swing.KeyStroke.getKeyStroke("ESCAPE"));
            banner.getActionMap().get(act).actionPerformed(null);
        });
        assertThat(said(test)).isEmpty();
        assertThat(test.document().isSealed()).isFalse();
    }
}
