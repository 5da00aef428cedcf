package fairpull.app.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.document.QuestionEdits;
import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import fairpull.domain.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Claims as they are typed into the window, and shown again. */
class ClaimTypingTest {
    private static Plan plan(String measure, String... further) {
        Plan plan = StartingPlan.in(UnitSystem.US);
        PlanTyping typing = PlanTyping.in(plan);
        List<Measure> others = List.of(further).stream().map(typing::measure).toList();
        return plan.with(plan.question().measuredBy(typing.measure(measure), others));
    }

    private static Plan claiming(Plan plan, String text) {
        return plan.with(plan.question().claiming(PlanTyping.in(plan).claims(text)));
    }

    @Test
    void aClaimAtASpeedIsReadAndShownAgain() {
        Plan plan = plan("mean power 3000-6500 rpm in hp");
        for (String typed : List.of("5 hp at 4000 rpm; 3 hp", "at least 5 hp @ 4000; 3 hp")) {
            Plan claiming = claiming(plan, typed);
            Claim first = claiming.question().claims().get(0);
            assertThat(first.speedRadPerS().orElseThrow()).isCloseTo(Units.RPM.toSi(4000), within(1e-9));
            assertThat(first.words()).isEqualTo("at least 5 hp at 4000 rpm");
            assertThat(claiming.question().claims().get(1).speedRadPerS()).isEmpty();
            String shown = PlanTyping.in(claiming).claims();
            assertThat(shown.replaceAll("\\h", " ")).isEqualTo("5 hp at 4000 rpm; 3 hp");
            assertThat(PlanTyping.in(claiming).claims(shown)).isEqualTo(claiming.question().claims());
        }
    }

    @Test
    void aMeasureThatNamesNoSpeedsIsRefusedWhileAClaimNamesOneAndSaysWhatToDo() {
        Plan claiming = claiming(plan("mean power 3000-6500 rpm in hp"), "5 hp at 4000 rpm");
        Measure other = plan("typed best power in hp").question().deciding();
        assertThatThrownBy(() -> QuestionEdits.deciding(other).change().apply(claiming)).hasMessageContaining("take the claim out first");
    }

    @Test
    void whereThereIsNoCurveItIsSaidWhatToDo() {
        PlanTyping typing = PlanTyping.in(plan("typed trap speed in mph"));
        assertThatThrownBy(() -> typing.claims("2 mph at 4000 rpm"))
                .isInstanceOfSatisfying(UsageException.class, said -> assertThat(said.problem())
                .startsWith("“2 mph at 4000 rpm” is about one engine speed").contains("decide by one that has", "or leave the speed away"));
        assertThatThrownBy(() -> typing.claims("2 mph at noon"))
                .isInstanceOfSatisfying(UsageException.class, said -> assertThat(said.problem())
                .contains("expected an engine speed", "noon"));
    }

    @Test
    void whatIsClaimedOfAFurtherMeasureStays() {
        Plan plan = plan("mean power 3000-6500 rpm in hp", "peak torque in N·m");
        Claim other = new Claim("twenty more at the peak", "peak torque", 20);
        Plan claiming = claiming(plan.with(plan.question().claiming(List.of(other))), "5 hp");
        assertThat(claiming.question().claims()).extracting(Claim::measure).containsExactly("mean power 3000-6500 rpm", "peak torque");
        assertThat(claiming.question().claims()).contains(other);
    }
}
