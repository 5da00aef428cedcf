package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.ClaimStanding.Standing;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.Verdict.Undecided;
import fairpull.domain.finding.Verdict.WhyUndecided;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Sides;
import org.junit.jupiter.api.Test;

class ClaimCheckTest {
    private static final Claim CLAIM = new Claim("at least so much", "power", 1);

    @Test
    void endsDecide() {
        Finding finding = Judge.judge(Tables.drawn("ABABA", 5, 4, 0.3, 5), JudgeSettings.plain());
        double low = finding.interval().orElseThrow().low();
        double high = finding.interval().orElseThrow().high();
        assertThat(standing(low, finding)).isEqualTo(Standing.SHOWN);
        assertThat(standing(Math.nextUp(low), finding)).isEqualTo(Standing.OPEN);
        assertThat(standing(high, finding)).isEqualTo(Standing.OPEN);
        assertThat(standing(Math.nextUp(high), finding)).isEqualTo(Standing.CONTRADICTED);
    }

    @Test
    void endsAreTakenTowardsAGain() {
        Finding finding = Judge.judge(Tables.drawn("ABABA", 5, -4, 0.3, 5), JudgeSettings.plain().looking(Sides.TWO, Better.LESS));
        assertThat(standing(-finding.interval().orElseThrow().high(), finding)).isEqualTo(Standing.SHOWN);
        assertThat(standing(-finding.interval().orElseThrow().low() + 0.01, finding)).isEqualTo(Standing.CONTRADICTED);
        assertThat(standing(3, Judge.judge(Tables.drawn("ABABA", 5, -4, 0.3, 5), JudgeSettings.plain()))).isEqualTo(Standing.CONTRADICTED);
    }

    @Test
    void oneSidedNeverContradicts() {
        for (Better better : Better.values()) {
            Finding finding = Judge.judge(Tables.drawn("ABABA", 5, 4, 0.3, 5), JudgeSettings.plain().looking(Sides.ONE, better));
            assertThat(standing(1000, finding)).isEqualTo(Standing.OPEN);
        }
    }

    @Test
    void withoutIntervalNotJudged() {
        assertThat(standing(1, Judge.judge(Tables.drawn("AB", 5, 4, 0.3, 5), JudgeSettings.plain()))).isEqualTo(Standing.NOT_JUDGED);
    }

    @Test
    void openWhereInstallMeansDisagree() {
        for (long seed = 0; seed < 500; seed++) {
            PullTable full = Tables.drawn("ABA", 10, 2.5, 1.5, seed);
            Finding finding = Judge.judge(new PullTable("hp", full.covariateNames(), full.rows().stream()
                    .filter(row -> row.part() == Part.A || Integer.parseInt(row.pull()) <= 2).toList()), JudgeSettings.plain());
            if (finding.verdict().equals(new Undecided(WhyUndecided.INSTALL_MEANS_DISAGREE))) {
                assertThat(standing(-1000, finding)).isEqualTo(Standing.OPEN);
                return;
            }
        }
        throw new AssertionError("no table tried the rule");
    }

    private static Standing standing(double atLeast, Finding finding) {
        return ClaimCheck.standing(CLAIM, atLeast, finding).standing();
    }
}
