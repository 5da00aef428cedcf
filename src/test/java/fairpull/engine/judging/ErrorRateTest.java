package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.finding.Verdict;
import fairpull.domain.finding.Verdict.Gain;
import fairpull.domain.finding.Verdict.Loss;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the judge announces a change where there is none, by simulation with fixed seeds. Own data: never above 5 %, whatever the
 * ratio of the scatters, unequal pulls included. With a record that is an estimate of the true refit scatter: 5 to 7 % with few degrees
 * of freedom, close to 5 % with many. Bounds are three Monte Carlo standard errors wide.
 */
class ErrorRateTest {
    private static final double ERROR_RATE = 0.05;
    private static final double[] RATIOS = {0, 0.5, 1, 2};
    private static final List<Day> DAYS = List.of(new Day("ABA", 5, 5, 5), new Day("ABBA", 5, 5, 5, 5), new Day("ABABA", 3, 3, 3, 3, 3),
            new Day("ABA", 5, 3, 5), new Day("ABA", 10, 2, 10), new Day("ABABA", 10, 2, 10, 2, 10));

    @Test
    void ownData() {
        neverAboveTheErrorRate(1_000);
    }

    @Test
    @Tag("slow")
    void ownDataAtLength() {
        neverAboveTheErrorRate(40_000);
    }

    private static void neverAboveTheErrorRate(int campaigns) {
        for (Day day : DAYS) {
            for (double ratio : RATIOS) {
                for (Drift drift : day.order().equals("ABABA") ? List.of(Drift.NONE, Drift.LINEAR) : List.of(Drift.NONE)) {
                    double rate = rate(day, ratio, 0, drift, campaigns);
                    assertThat(rate).as(day + " refit/pull " + ratio + " drift " + drift)
                            .isLessThanOrEqualTo(ERROR_RATE + 3 * standardError(ERROR_RATE, campaigns));
                }
            }
        }
    }

    @Test
    void withARecord() {
        closeToTheErrorRate(1_000);
    }

    @Test
    @Tag("slow")
    void withARecordAtLength() {
        closeToTheErrorRate(40_000);
    }

    private static void closeToTheErrorRate(int campaigns) {
        for (Day day : List.of(DAYS.get(0), DAYS.get(2), DAYS.get(4))) {
            for (double ratio : new double[] {0.5, 1}) {
                for (double df : new double[] {4, 20}) {
                    double highest = df < 10 ? 0.07 : 0.055;
                    double rate = rate(day, ratio, df, Drift.NONE, campaigns);
                    assertThat(rate).as(day + " refit/pull " + ratio + " record df " + df)
                            .isBetween(0.03 - 3 * standardError(0.03, campaigns), highest + 3 * standardError(highest, campaigns));
                }
            }
        }
    }

    private static double standardError(double rate, int campaigns) {
        return Math.sqrt(rate * (1 - rate) / campaigns);
    }

    /** Share of campaigns without any change in which one is announced; each has its own record, of {@code df} degrees of freedom. */
    private static double rate(Day day, double ratio, double df, Drift drift, int campaigns) {
        Random random = new Random(day.hashCode() + Math.round(1000 * ratio) + Math.round(df));
        int announced = 0;
        for (int campaign = 0; campaign < campaigns; campaign++) {
            JudgeSettings settings = JudgeSettings.plain().withDrift(drift);
            if (df > 0) {
                settings = settings.withRecords(Optional.empty(), Optional.of(new ScatterRecord(estimate(ratio, df, random), df)));
            }
            ModelTable table = ModelTable.of(day.draw(ratio, random), settings);
            Verdict verdict = VerdictRule.of(CoreFit.of(table, settings), settings, table.equalPulls());
            announced += verdict.equals(new Gain()) || verdict.equals(new Loss()) ? 1 : 0;
        }
        return (double) announced / campaigns;
    }

    private static double estimate(double truth, double df, Random random) {
        double sum = 0;
        for (int i = 0; i < df; i++) {
            double z = random.nextGaussian();
            sum += z * z;
        }
        return truth * Math.sqrt(sum / df);
    }

    private record Day(String order, List<Integer> pulls) {
        Day(String order, Integer... pulls) {
            this(order, List.of(pulls));
        }

        PullTable draw(double refitScatter, Random random) {
            List<PullRow> rows = new ArrayList<>();
            double minutes = 0;
            for (int i = 0; i < order.length(); i++) {
                double refit = refitScatter * random.nextGaussian();
                for (int pull = 1; pull <= pulls.get(i); pull++) {
                    rows.add(new PullRow("1", "I" + i, Part.valueOf(order.substring(i, i + 1)), "" + pull, minutes,
                            400 + refit + random.nextGaussian(), List.of()));
                    minutes += 5;
                }
                minutes += 20;
            }
            return new PullTable("hp", List.of(), rows);
        }
    }
}
