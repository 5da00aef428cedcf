package fairpull.app.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.unit.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DocumentTest {
    private static Document fresh() {
        return Document.unsaved(StartingPlan.in(UnitSystem.METRIC));
    }

    @Test
    void whateverIsEditedUndoLeadsBackAndRedoForth() {
        for (long seed = 1; seed <= 40; seed++) {
            Document document = fresh();
            SplittableRandom random = new SplittableRandom(seed);
            List<Plan> states = new ArrayList<>(List.of(document.plan()));
            for (int step = 0; step < 60; step++) {
                Plan before = document.plan();
                try {
                    document.edit(anyEdit(document.plan(), random));
                    document.settle();
                } catch (IllegalArgumentException refused) {
                    assertThat(document.plan()).as("a refused edit changes nothing: %s", refused.getMessage()).isEqualTo(before);
                }
                if (!document.plan().equals(before)) {
                    states.add(document.plan());
                }
            }
            assertThat(states.size()).isGreaterThan(20);
            for (int back = states.size() - 1; back > 0; back--) {
                assertThat(document.plan()).isEqualTo(states.get(back));
                document.undo();
            }
            assertThat(document.plan()).isEqualTo(states.get(0));
            assertThat(document.undoLabel()).isEmpty();
            for (int forth = 1; forth < states.size(); forth++) {
                document.redo();
                assertThat(document.plan()).isEqualTo(states.get(forth));
            }
            assertThat(document.redoLabel()).isEmpty();
        }
    }

    private static Edit anyEdit(Plan plan, SplittableRandom random) {
        List<Install> installs = plan.sequence().installs().toList();
        String label = installs.get(random.nextInt(installs.size())).label();
        return switch (random.nextInt(9)) {
            case 0 -> QuestionEdits.title("test " + random.nextInt(100));
            case 1 -> QuestionEdits.worthwhile(OptionalDouble.of(1 + random.nextInt(5000)));
            case 2 -> SequenceEdits.addAfter(label);
            case 3 -> SequenceEdits.remove(label);
            case 4 -> SequenceEdits.move(label, random.nextInt(-2, 3));
            case 5 -> SequenceEdits.otherPart(label);
            case 6 -> SequenceEdits.pulls(label, 1 + random.nextInt(9), random.nextInt(4));
            case 7 -> RigEdits.gear("gear " + random.nextInt(5));
            default -> SequenceEdits.addSession();
        };
    }

    @Test
    void typingInOneFieldIsUndoneAtOnceUntilItIsSettled() {
        Document document = fresh();
        String before = document.plan().title();
        for (String typed : List.of("P", "Pu", "Pump")) {
            document.edit(QuestionEdits.title(typed));
        }
        document.settle();
        document.edit(QuestionEdits.title("Pump test"));
        document.undo();
        assertThat(document.plan().title()).isEqualTo("Pump");
        document.undo();
        assertThat(document.plan().title()).isEqualTo(before);
    }

    @Test
    void typingThatEndsWhereItBeganLeavesNoTrace() {
        Document document = fresh();
        String before = document.plan().title();
        document.edit(QuestionEdits.title("x"));
        document.edit(QuestionEdits.title(before));
        assertThat(document.undoLabel()).isEmpty();
        assertThat(document.isUntouched()).isTrue();
    }

    @Test
    void installsAreLabelledAnewInTheOrderInWhichTheyAreRun() {
        Document document = fresh();
        document.edit(SequenceEdits.move("B1", -1));
        assertThat(document.plan().sequence().letters()).isEqualTo("BAABA");
        assertThat(document.plan().sequence().installs().map(Install::label)).containsExactly("B1", "A1", "A2", "B2", "A3");
    }

    @Test
    void anInstallMovesToAnotherDay() {
        Document document = Document.unsaved(StartingPlan.in(UnitSystem.METRIC));
        document.edit(SequenceEdits.take("days", StartingPlan.reordered(document.plan().sequence(), "ABA|BAB", OptionalLong.empty())));
        document.edit(SequenceEdits.moveTo("A1", 1, 2));
        assertThat(document.plan().sequence().letters()).isEqualTo("BA|BAAB");
        document.edit(SequenceEdits.moveTo("B1", 1, 0));
        document.edit(SequenceEdits.moveTo("A1", 1, 5));
        assertThat(document.plan().sequence().letters()).as("a day without installs is none").isEqualTo("BBAABA");
    }

    @Test
    void theOnlyInstallOfAPartStays() {
        Document document = fresh();
        document.edit(SequenceEdits.remove("B2"));
        assertThatThrownBy(() -> document.edit(SequenceEdits.remove("B1"))).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("only install of part B");
        assertThat(document.plan().sequence().installs().filter(install -> install.part() == Part.B)).hasSize(1);
    }

    @Test
    void anOrderChangedByHandIsNoLongerDrawn() {
        Document document = fresh();
        document.edit(SequenceEdits.take("draw", StartingPlan.reordered(document.plan().sequence(), "ABABA", OptionalLong.of(7))));
        assertThat(document.plan().sequence().origin()).isEqualTo(Sequence.Origin.DRAWN);
        document.edit(SequenceEdits.addAfter(document.plan().sequence().installs().findFirst().orElseThrow().label()));
        assertThat(document.plan().sequence().origin()).isEqualTo(Sequence.Origin.CHOSEN);
        assertThat(document.plan().sequence().seed()).isEmpty();
    }

    @Test
    void aSealedPlanIsNotEdited() {
        Document document = fresh();
        document.sealedAs("0000-0000-00");
        assertThatThrownBy(() -> document.edit(QuestionEdits.title("other"))).isInstanceOf(IllegalStateException.class);
        assertThat(document.undoLabel()).isEmpty();
    }

    @Test
    void whatIsEditedWhileTheSealIsBeingWrittenIsNotShownAsSealed() {
        Document document = fresh();
        Plan written = document.plan();
        document.savedTo(Path.of("test"), written);
        document.edit(QuestionEdits.title("typed a moment too late"));
        document.sealedAs("0000-0000-00");
        assertThat(document.plan()).isEqualTo(written);
        assertThat(document.isChanged()).isFalse();
    }

    @Test
    void anAmendmentOpensASealedPlanAndBeginsUndoAnew() {
        Document document = fresh();
        document.edit(QuestionEdits.title("before the seal"));
        document.savedTo(Path.of("test"), document.plan());
        document.sealedAs("0000-0000-00");
        Plan sealed = document.plan();
        document.beginAmendment();
        assertThat(document.undoLabel()).as("nothing before the amendment is undone").isEmpty();
        document.edit(QuestionEdits.title("amended"));
        assertThat(document.undoLabel()).contains("title");
        document.dropAmendment();
        assertThat(document.plan()).isEqualTo(sealed);
        assertThat(document.isFixed()).isTrue();
        document.beginAmendment();
        document.edit(QuestionEdits.title("amended"));
        document.amendedTo(document.plan());
        assertThat(document.isFixed()).isTrue();
        assertThat(document.isChanged()).isFalse();
        assertThat(document.undoLabel()).isEmpty();
    }
}
