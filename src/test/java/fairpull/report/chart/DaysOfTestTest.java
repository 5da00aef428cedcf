package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullSeen;
import fairpull.report.Examples;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DaysOfTestTest {
    @Test
    void withoutClockTimesThePlanStands() {
        Day day = DaysOfTest.of(Examples.cannotBeJudged(), Examples.POWER.name()).get(0);

        assertThat(day.clockOfZero()).isEmpty();
        assertThat(day.blocks().get(0).marks()).extracting(Day.Mark::minutes).containsExactly(0.0, 5.0, 10.0, 15.0);
        assertThat(day.blocks().get(1).marks()).extracting(Day.Mark::minutes).containsExactly(50.0, 55.0, 60.0, 65.0);
    }

    @Test
    void theClockIsThatOfTheDay() {
        Day day = DaysOfTest.of(Examples.undecided(), Examples.POWER.name()).get(0);

        assertThat(day.clockOfZero()).hasValue(9 * 60 + 4);
        assertThat(day.blocks().get(0).marks().get(1).minutes()).isEqualTo(5.2);
    }

    @Test
    void aPullWithoutTimeStandsBetweenItsNeighbours() {
        Judgement judgement = Examples.undecided();
        List<PullSeen> pulls = new ArrayList<>(judgement.pulls());
        PullSeen seen = pulls.get(2);
        pulls.set(2, new PullSeen(seen.pull(), seen.fate(), "", Optional.empty(), Double.NaN, Map.of(), Map.of()));
        Judgement gap = new Judgement(judgement.plan(), judgement.seal(), judgement.deciding(), judgement.withExcluded(),
                judgement.secondary(), judgement.claims(), pulls, judgement.amendments(), judgement.notices());

        Day day = DaysOfTest.of(gap, Examples.POWER.name()).get(0);

        assertThat(day.blocks().get(0).marks().get(2).minutes()).isCloseTo(10.4, within(1e-9));
        assertThat(day.blocks().get(0).marks().get(2).value()).isEmpty();
    }

    @Test
    void sessionsKeepTheirNamesAndInstalls() {
        List<Day> days = DaysOfTest.of(Examples.threeSessions(), Examples.POWER.name());

        assertThat(days).extracting(Day::name).containsExactly("Tuesday", "Wednesday", "Thursday");
        assertThat(days.get(1).blocks()).extracting(Day.Block::label).containsExactly("B2", "A3", "B3");
        for (Day day : days) {
            for (int place = 1; place < day.blocks().size(); place++) {
                assertThat(day.blocks().get(place).start()).isGreaterThanOrEqualTo(day.blocks().get(place - 1).end());
            }
        }
    }
}
