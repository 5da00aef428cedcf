package fairpull.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class QuestionEditsTest {
    private final Document document = Document.unsaved(StartingPlan.in(UnitSystem.US));

    private void decide(String measure) {
        document.edit(QuestionEdits.deciding(PlanTyping.in(document.plan()).measure(measure)));
    }

    @Test
    void aClaimNamesItsAmountInTheUnitOfTheChangedMeasure() {
        decide("peak power in kW");
        document.edit(QuestionEdits.claims(PlanTyping.in(document.plan()).claims("3 kW")));
        decide("peak power in W");

        assertThat(document.plan().question().claims()).singleElement().satisfies(claim -> {
            assertThat(claim.words().replaceAll("\\h", " ")).isEqualTo("at least 3000 W");
            assertThat(claim.atLeastSi()).isEqualTo(3000);
            assertThat(claim.measure()).isEqualTo("peak power");
        });
    }

    @Test
    void aClaimInASentenceOfItsOwnKeepsItAndItsEngineSpeed() {
        decide("peak power in kW");
        Claim own = new Claim("three kilowatts in the middle", "peak power", 3000, OptionalDouble.of(400));
        document.edit(QuestionEdits.claims(List.of(own)));
        decide("mean power 3000-6500 rpm in W");

        assertThat(document.plan().question().claims()).containsExactly(
                new Claim("three kilowatts in the middle", "mean power 3000-6500 rpm", 3000, OptionalDouble.of(400)));
    }

    @Test
    void theStandardChosenStaysWhenTheMeasureIsTypedAnew() {
        decide("peak power in kW");
        var standard = Correction.values()[1];
        document.edit(QuestionEdits.deciding(PlanTyping.corrected(document.plan().question().deciding(), standard)));
        decide("peak torque in N·m");

        assertThat(document.plan().question().deciding().correction()).isEqualTo(standard);
    }
}
