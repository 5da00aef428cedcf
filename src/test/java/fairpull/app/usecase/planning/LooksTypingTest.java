package fairpull.app.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.domain.search.Costs;
import fairpull.domain.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class LooksTypingTest {
    private static Plan ordered(String letters) {
        Plan plan = StartingPlan.in(UnitSystem.METRIC);
        return plan.with(StartingPlan.reordered(plan.sequence(), letters, OptionalLong.empty()));
    }

    @Test
    void looksAreOfferedWhereTheDayIsBackAtA() {
        assertThat(LooksTyping.everywhere(ordered("ABABA"), Looks.Spending.POCOCK).afterInstalls()).containsExactly(3, 5);
        assertThat(LooksTyping.everywhere(ordered("ABA|BAB"), Looks.Spending.POCOCK).afterInstalls()).containsExactly(3, 5, 6);
        assertThatThrownBy(() -> LooksTyping.everywhere(ordered("ABA"), Looks.Spending.POCOCK)).isInstanceOf(UsageException.class);
    }

    @Test
    void theEndIsUnderstoodAndTextReadsBack() {
        Plan plan = ordered("ABABABA");
        Optional<Looks> looks = LooksTyping.parse("3; 5", plan, Looks.Spending.OBRIEN_FLEMING);
        assertThat(looks.orElseThrow().afterInstalls()).isEqualTo(List.of(3, 5, 7));
        assertThat(LooksTyping.parse(LooksTyping.text(looks), plan, Looks.Spending.OBRIEN_FLEMING)).isEqualTo(looks);
        assertThat(LooksTyping.parse(" ", plan, Looks.Spending.POCOCK)).isEmpty();
        assertThatThrownBy(() -> LooksTyping.parse("4", plan, Looks.Spending.POCOCK)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("back at A");
    }

    /** The day is 3 h 22 min with 35 pulls and 4 swaps, as its own check says. */
    @Test
    void theCostStandsInTheOutlook() throws IOException {
        Plan plan = KeepTest.open(Path.of("plans/electric-pump")).plan();
        assertThat(Outlook.of(plan).rows()).extracting(Outlook.Row::name).doesNotContain("Cost");
        assertThat(Outlook.of(plan, new Costs(120, 2, 10, 25)).rows()).contains(new Outlook.Row("Cost", "539"));
    }
}
