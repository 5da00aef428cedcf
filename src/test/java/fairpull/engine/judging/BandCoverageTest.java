package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.RelativeScatter;
import fairpull.engine.stats.Deviates;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How often the band of an unchanged car holds zero at all of 40 speeds at once, five pulls an install, where 95 % is asked for. Wanted
 * are 94 to 99.5 %. With a record its truth is drawn from what it leaves open. Each line printed is a line of the table in DEVELOPERS.md;
 * {@code -Dcampaigns=…} asks for more than the test needs.
 */
@Tag("slow")
class BandCoverageTest {
    private static final int CAMPAIGNS = Integer.getInteger("campaigns", 400);
    private static final int SPEEDS = 40;
    private static final int PULLS = 5;
    private static final double LEAST = 0.94;
    private static final double MOST = 0.995;
    /** Where the test at one speed holds as often as this, it is the single test that gives more than it promises. */
    private static final double ONE_SPEED_CONSERVATIVE = 0.97;

    private record Coverage(double band, double oneSpeed, double critical) {
    }

    static Stream<Arguments> campaigns() {
        List<Arguments> all = new ArrayList<>();
        for (String order : List.of("ABA", "ABBA", "ABABA")) {
            for (double length : new double[] {15, 2}) {
                for (double ratio : new double[] {0.5, 2}) {
                    for (double df : new double[] {0, 4, 20}) {
                        all.add(Arguments.of(order, length, ratio, df));
                    }
                }
            }
        }
        return all.stream();
    }

    @ParameterizedTest(name = "{0}, correlation over {1} speeds, refit scatter {2} of pull scatter, record of {3}")
    @MethodSource("campaigns")
    void theBandHoldsForAllSpeedsAtOnce(String order, double length, double ratio, double recordDf) {
        Coverage found = coverage(order, length, ratio, recordDf);
        System.out.println(String.format(Locale.ROOT, "| %s | %s | %.1f | %s | %.1f | %.1f | %.2f |", order, length > 5 ? "smooth" : "rough",
                ratio, recordDf == 0 ? "own data" : String.format(Locale.ROOT, "%.0f", recordDf), 100 * found.band(),
                100 * found.oneSpeed(), found.critical()));

        // so many campaigns leave this much open, at three standard errors
        double open = 3 * Math.sqrt(LEAST * (1 - LEAST) / CAMPAIGNS);
        assertThat(found.band()).isGreaterThan(LEAST - open);
        assertThat(found.band() <= MOST || found.oneSpeed() > ONE_SPEED_CONSERVATIVE - open).isTrue();
    }

    private static Coverage coverage(String order, double length, double ratio, double recordDf) {
        Curves curves = new Curves(SPEEDS, length, length);
        Deviates deviates = new Deviates(20261125);
        Optional<RelativeScatter> record = recordDf == 0 ? Optional.empty()
                : Optional.of(new RelativeScatter(ratio / Curves.LEVEL, recordDf));
        int band = 0;
        int one = 0;
        double critical = 0;
        for (int campaign = 0; campaign < CAMPAIGNS; campaign++) {
            double truth = recordDf == 0 ? ratio : ratio * Math.sqrt(recordDf / deviates.chiSquare(recordDf));
            CurveTable table = curves.campaign(order, PULLS, truth, 1, deviates);
            CurveFinding finding = CurveJudge.judge(table, new CurveQuestion(JudgeSettings.plain(), true, Optional.empty(), record,
                    500, campaign)).orElseThrow();
            band += finding.points().stream().allMatch(point -> point.band().holds(0)) ? 1 : 0;
            one += finding.points().get(SPEEDS / 2).own().holds(0) ? 1 : 0;
            critical += finding.criticalValue() / CAMPAIGNS;
        }
        return new Coverage((double) band / CAMPAIGNS, (double) one / CAMPAIGNS, critical);
    }
}
