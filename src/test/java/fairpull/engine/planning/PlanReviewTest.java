package fairpull.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.plan.Sides;
import fairpull.report.Examples;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether an order leans, against what the fit that judges makes of a drift of one slope in every session. */
class PlanReviewTest {
    @ParameterizedTest
    @CsvSource({"ABABABABAB|BABABABABA, false", "ABAB|BABA, false", "ABAB|ABAB, true", "ABAB|ABBA, true", "ABABA, false", "ABBA, false",
        "ABAB, true", "AABAB|BABAA, false"})
    void anOrderLeansWhereAStraightDriftPassesForAChange(String order, boolean leans) {
        SizeQuestion fit = new SizeQuestion(order, 4, 0, 1, 0, 0.5, 5, 1, 0.8, 0.05, Sides.TWO, Drift.NONE, new SizeQuestion.Clock(5, 20, 30));

        assertThat(PlanReview.review(plan(order)).stream().anyMatch(notice -> notice.code() == Code.PLAN_ORDER_LEANS)).isEqualTo(leans);
        assertThat(DriftLeft.of(fit).linear() != 0).isEqualTo(leans);
    }

    @Test
    void whichPartStandsLaterIsSaid() {
        assertThat(leanOf("ABAB")).containsExactly(1.0);
        assertThat(leanOf("BABA")).containsExactly(-1.0);
    }

    private static List<Double> leanOf(String order) {
        return PlanReview.review(plan(order)).stream().filter(notice -> notice.code() == Code.PLAN_ORDER_LEANS)
                .flatMap(notice -> notice.figures().stream()).toList();
    }

    private static Plan plan(String order) {
        List<Session> sessions = new ArrayList<>();
        int[] numbers = new int[Part.values().length];
        for (String letters : order.split("\\|")) {
            List<Install> installs = new ArrayList<>();
            for (String letter : letters.split("")) {
                Part part = Part.valueOf(letter);
                installs.add(new Install(letter + ++numbers[part.ordinal()], part, 4, 1, true));
            }
            sessions.add(new Session("day " + (sessions.size() + 1), installs, Optional.empty()));
        }
        Plan like = Examples.gain().plan();
        Sequence sequence = new Sequence(sessions, like.sequence().origin(), like.sequence().seed(), 300, 1200, 1800);
        return new Plan(like.title(), like.remark(), like.question(), new Analysis(Drift.NONE, List.of()), like.rig(), sequence, like.gates(), like.checklist());
    }
}
