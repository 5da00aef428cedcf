package fairpull.app.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.HoursEdits;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DayRemediesTest {
    private static Plan ending(int hour) {
        Plan starting = HoursEdits.starts(List.of(Optional.of(LocalTime.of(9, 0)))).change().apply(StartingPlan.in(UnitSystem.METRIC));
        return HoursEdits.ends(List.of(Optional.of(LocalTime.of(hour, 0)))).change().apply(starting);
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
