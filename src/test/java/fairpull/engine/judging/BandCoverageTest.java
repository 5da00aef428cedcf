package fairpull.engine.judging;


import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.RelativeScatter;
import fairpull.engine.stats.Deviates;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often the band of an unchanged car holds zero at every speed at once, where 95 % is asked for. */
@Tag("slow")
class BandCoverageTest {
    private static final int CAMPAIGNS = Integer.getInteger("campaigns", 400);
    private static final int SPEEDS = 40;
    private static final int PULLS = 5;

    @ParameterizedTest
    @CsvSource({"ABA", "ABBA", "ABABA"})
    void theBandHoldsForAllSpeedsAtOnce(String order) {
        for (double[] lengths : new double[][] {{15, 15}, {2, 2}}) {
            Curves curves = new Curves(SPEEDS, lengths[0], lengths[1]);
            for (double ratio : new double[] {0.5, 2}) {
                for (double df : Boolean.getBoolean("own") ? new double[] {0} : new double[] {4, 20}) {
                    System.out.println(String.format(Locale.ROOT, "%s refit length %2.0f pull length %2.0f s_r/s_p %.1f record %2.0f: %s",
                            order, lengths[0], lengths[1], ratio, df, coverage(curves, order, ratio, df)));
                }
            }
        }
    }

    private static String coverage(Curves curves, String order, double ratio, double recordDf) {
        Deviates deviates = new Deviates(20261125);
        int held = 0;
        int one = 0;
        double c = 0;
        double nu = 0;
        for (int campaign = 0; campaign < CAMPAIGNS; campaign++) {
            double recorded = ratio;
            Optional<RelativeScatter> record = Optional.empty();
            if (recordDf > 0) {
                // the truth is drawn from what the record leaves open
                recorded = ratio;
                record = Optional.of(new RelativeScatter(ratio / Curves.LEVEL, recordDf));
            }
            double truth = recordDf > 0 ? recorded * Math.sqrt(recordDf / deviates.chiSquare(recordDf)) : ratio;
            CurveTable table = curves.campaign(order, PULLS, truth, 1, deviates);
            CurveFinding finding = CurveJudge.judge(table, new CurveQuestion(JudgeSettings.plain(), true, Optional.empty(), record,
                    500, campaign)).orElseThrow();
            held += finding.points().stream().allMatch(point -> point.band().holds(0)) ? 1 : 0;
            one += finding.points().get(SPEEDS / 2).own().holds(0) ? 1 : 0;
            c += finding.criticalValue();
            nu += finding.degreesOfFreedom();
        }
        return String.format(Locale.ROOT, "%.1f %% (one speed %.1f), c %.2f nu %.2f", 100.0 * held / CAMPAIGNS, 100.0 * one / CAMPAIGNS, c / CAMPAIGNS, nu / CAMPAIGNS);
    }
}
