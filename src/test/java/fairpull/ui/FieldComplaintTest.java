package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.SequenceEdits;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be understood stays in its field, with the reason beneath it; the plan keeps what it held. */
class FieldComplaintTest {
    private static final List<String> NONSENSE = List.of("?", "twelve", "-3 km", "1.2.3 … 9", "9 … 1 K", "± ", "1e999 hp", "NaN", "25:99",
            "<html><b>3</b>");
    private static final Map<String, List<String>> ENTRIES = Map.of(
            "page.question", List.of("question.measure", "measure.further", "question.expected", "question.worthwhile", "gain.powerWanted",
                    "gain.errorRate", "gain.claims"),
            "page.rig", List.of("rig.sweepRate", "rig.tyres", "scatter.pull", "scatter.refit"),
            "page.sequence", List.of("sequence.letters", "sequence.pulls", "sequence.warmUps", "sequence.interval", "sequence.swap",
                    "sequence.setUp", "sequence.start", "sequence.end", "days.hours", "days.installs"),
            "page.limits", List.of("gate.intake-air", "gate.coolant", "gate.oil", "gate.gearbox", "gate.barometer", "gate.humidity",
                    "gate.tyre-pressure"));

    @TempDir
    private Path home;

    private Hand fresh() {
        return Hand.on(Document.unsaved(StartingPlan.in(UnitSystem.METRIC)), home);
    }

    @Test
    void nonsenseStaysInItsFieldWithTheReasonBeneathItAndThePlanAsItWas() {
        Hand hand = fresh();
        Plan before = hand.document().plan();
        new TreeMap<>(ENTRIES).forEach((page, entries) -> {
            hand.go(page);
            for (String entry : entries) {
                for (String nonsense : NONSENSE) {
                    hand.type(entry, nonsense);
                    assertThat(hand.text(entry)).as(entry).isEqualTo(nonsense);
                    assertThat(hand.complaint(entry)).as("%s: %s", entry, nonsense).isNotBlank().doesNotContain("Exception", "null");
                    assertThat(hand.isPage(entry)).as("%s: %s is shown as it is", entry, nonsense).isFalse();
                    assertThat(hand.document().plan()).as("%s: %s", entry, nonsense).isEqualTo(before);
                }
            }
        });
        assertThat(hand.document().undoLabel()).isEmpty();
    }

    @Test
    void whatIsWrongOutlivesOtherEditsUndoAndAWalkThroughThePages() {
        Hand hand = fresh();
        hand.type("question.worthwhile", "three");
        hand.type("question.title", "Another title");
        hand.go("page.rig");
        hand.type("rig.gear", "3");
        hand.undoAll();
        hand.redoAll();
        hand.go("page.question");
        assertThat(hand.text("question.worthwhile")).isEqualTo("three");
        assertThat(hand.complaint("question.worthwhile")).isNotBlank();
        hand.type("question.worthwhile", "3 hp");
        assertThat(hand.complaint("question.worthwhile")).isEmpty();
        assertThat(hand.document().plan().question().worthwhileGainSi()).isPresent();
    }

    @Test
    void aSensorNeedsANameAndAnUncertaintyWithItsUnit() {
        Hand hand = fresh();
        hand.go("page.rig");
        for (String text : List.of("intake air", "1 K", "intake air 1", "intake air 1 parsec", "barometer 0.5 hPa; ?")) {
            hand.type("rig.sensors", text);
            assertThat(hand.complaint("rig.sensors")).as(text).contains("its name and uncertainty");
            assertThat(hand.text("rig.sensors")).isEqualTo(text);
        }
        assertThat(hand.document().plan().rig().sensors()).isEmpty();
    }

    @Test
    void namesThatMustNotBeEmptyAreAskedFor() {
        Hand hand = fresh();
        for (String entry : List.of("question.title", "question.partA", "question.partB")) {
            hand.type(entry, "  ");
            assertThat(hand.complaint(entry)).as(entry).isNotBlank();
        }
        assertThat(hand.document().plan().title()).isEqualTo("Untitled test");
    }

    @Test
    void whatIsUnderstoodIsTakenWhileItIsTypedAndNotOnlyInTheEnd() {
        Hand hand = fresh();
        var field = hand.find("question.title", javax.swing.JTextField.class);
        Waiting.onWindowThread(() -> field.setText("Typed without Enter"));
        Waiting.until(() -> hand.document().plan().title().equals("Typed without Enter"));
    }

    @Test
    void whatIsTypedOfTheAirAndTheHeatStaysInItsField() {
        Hand hand = fresh();
        hand.go("page.limits");
        Map<String, String> typed = new TreeMap<>(Map.of("air.temperature", "30C", "air.pressure", "29.5 inHg", "air.humidity", "45",
                "heat.timeConstant", "6 min", "heat.rise", "6 K", "heat.ambient", "22 °C"));
        typed.forEach(hand::type);
        hand.go("page.question");
        hand.go("page.limits");
        typed.forEach((entry, text) -> assertThat(hand.text(entry)).as(entry).isEqualTo(text));
        Waiting.until(() -> !hand.find("air.decision", javax.swing.JTextArea.class).getText().isBlank());
        assertThat(hand.find("air.decision", javax.swing.JTextArea.class).getText()).doesNotContain("expected percent");
    }

    @Test
    void anAmountKeepsItsOwnUnitWhileItMeansWhatThePlanHolds() {
        Hand hand = fresh();
        hand.type("question.expected", "190 hp");
        hand.type("question.worthwhile", "1.5 %");
        hand.go("page.rig");
        hand.go("page.question");
        assertThat(hand.text("question.expected")).isEqualTo("190 hp");
        assertThat(hand.text("question.worthwhile")).isEqualTo("1.5 %");
        hand.type("question.expected", "200 hp");
        assertThat(hand.text("question.worthwhile")).as("1.5 % of 190 hp is no longer 1.5 %").isEqualTo("2.12524\u202fkW");
    }

    @Test
    void aNumberOfPullsForAllInstallsLeavesTheOtherNumberAlone() {
        Hand hand = fresh();
        hand.go("page.sequence");
        Waiting.onWindowThread(() -> hand.document().edit(SequenceEdits.pulls("A1", 7, 2)));
        assertThat(hand.text("sequence.pulls")).as("numbers that differ are no number").isEmpty();
        hand.type("sequence.warmUps", "3");
        assertThat(hand.document().plan().sequence().installs().map(Install::countedPulls)).startsWith(7, 5).doesNotContain(3);
        hand.type("sequence.pulls", "6");
        assertThat(hand.document().plan().sequence().installs()).allMatch(install -> install.countedPulls() == 6
                && install.warmUpPulls() == 3);
    }

    @Test
    void anEditThatCannotBeIsSaidUnderTheStrip() {
        Hand hand = fresh();
        hand.go("page.sequence");
        hand.type("sequence.letters", "ABA");
        hand.drag("B1", "B1");
        hand.strip("DELETE");
        assertThat(hand.find("message", javax.swing.JLabel.class).getText()).contains("only install of part B");
        assertThat(hand.document().plan().sequence().letters()).isEqualTo("ABA");
    }
}
