package fairpull.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.SequenceEdits;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DayRemediesTest {
    private static Plan ending(int hour) {
        Hours hours = new Hours(LocalTime.of(9, 0), Optional.of(LocalTime.of(hour, 0)), List.of());
        return SequenceEdits.hours(0, Optional.of(hours)).change().apply(StartingPlan.in(UnitSystem.METRIC));
    }

    @Test
    void aPlanThatFitsNeedsNone() {
        assertThat(DayRemedies.of(ending(17)).said()).isEmpty();
    }

    @Test
    void everyChangeThatIsOfferedMakesThePlanFit() {
        Plan late = ending(12);
        DayRemedies remedies = DayRemedies.of(late);
        assertThat(remedies.said().get(0)).contains("does not fit");
        assertThat(remedies.changes()).hasSizeGreaterThan(2);
        assertThat(remedies.changes()).allSatisfy(change -> assertThat(DayRemedies.of(late.resequenced(change.sequence())).said()).isEmpty());
    }
}
