package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import fairpull.domain.finding.Checks.LeaveOneOut;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.finding.Verdict.CannotBeJudged;
import fairpull.domain.finding.Verdict.Gain;
import fairpull.domain.finding.Verdict.Loss;
import fairpull.domain.finding.Verdict.NoDifferenceThatMatters;
import fairpull.domain.finding.Verdict.Undecided;
import fairpull.domain.finding.Verdict.WhyNotJudged;
import fairpull.domain.finding.Verdict.WhyUndecided;
import fairpull.domain.finding.Worthwhile;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.StudentT;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class JudgeTest {
    private static final JudgeSettings PLAIN = JudgeSettings.plain();
    private static final Optional<ScatterRecord> NONE = Optional.empty();

    private static Optional<ScatterRecord> record(double standardDeviation, double degreesOfFreedom) {
        return Optional.of(new ScatterRecord(standardDeviation, degreesOfFreedom));
    }

    /** Student's sleep data, ten patients as sessions of one A and one B: t 4.0621, 9 df, p 0.002833 (help page of t.test in R, from memory). */
    @Test
    void sleepDataArePaired() {
        double[] a = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
        double[] b = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
        Tables tables = new Tables();
        for (int i = 0; i < 10; i++) {
            tables.install("patient " + i, Part.A, a[i]).install("patient " + i, Part.B, b[i]);
        }
        Finding finding = Judge.judge(tables.table(), PLAIN);
        Estimate estimate = finding.estimate().orElseThrow();
        assertThat(estimate.t()).isCloseTo(4.0621, offset(5e-5));
        assertThat(estimate.degreesOfFreedom()).isEqualTo(9);
        assertThat(estimate.pValue()).isCloseTo(0.002833, offset(5e-7));
        assertThat(finding.interval().orElseThrow().low()).isCloseTo(0.7001142, offset(5e-8));
        assertThat(finding.interval().orElseThrow().high()).isCloseTo(2.4598858, offset(5e-8));
        assertThat(finding.installMeansTest().orElseThrow().pValue()).isCloseTo(estimate.pValue(), offset(1e-12));
    }

    /** Lakens (2017), Equivalence tests, Social Psychological and Personality Science 8, 355–362: t(97.78) = −1.90, p 0.030. */
    @Test
    void equivalenceAsPublished() {
        double difference = 4.785714 - 4.656863;
        double standardError = Math.sqrt(1.089725 * 1.089725 / 49 + 1.189497 * 1.189497 / 51);
        double margin = 0.4929019 * Math.sqrt((1.089725 * 1.089725 + 1.189497 * 1.189497) / 2);
        TStatement statement = new TStatement(difference, standardError, 97.7830647);
        assertThat(statement.equivalence(margin).pValue()).isCloseTo(0.0301231334, offset(5e-9));
    }

    @Test
    void onePullPerInstallIsTheRegressionOnInstallMeans() {
        Finding finding = Judge.judge(new Tables().install("1", Part.A, 400).install("1", Part.B, 405).install("1", Part.A, 401)
                .install("1", Part.B, 404.5).install("1", Part.A, 400.7).table(), PLAIN);
        assertThat(finding.estimate()).isEqualTo(finding.installMeansTest());
        assertThat(finding.estimate().orElseThrow().degreesOfFreedom()).isEqualTo(3);
        assertThat(finding.scatter()).as("the two scatters cannot be told apart").isEmpty();
        assertThat(finding.verdict()).isEqualTo(new Gain());
        assertThat(finding.returnCheck()).isEmpty();
    }

    @Test
    void identicalPullsLeaveTheInstallMeans() {
        PullTable table = new Tables().install("1", Part.A, 400, 400, 400).install("1", Part.B, 405, 405).install("1", Part.A, 401, 401)
                .install("1", Part.B, 404.5, 404.5).install("1", Part.A, 400.7).table();
        Finding own = Judge.judge(table, PLAIN);
        assertThat(own.estimate()).isEqualTo(own.installMeansTest());
        assertThat(codes(own)).contains(Code.PULLS_IDENTICAL);
        assertThat(own.outliers()).isEmpty();
        // with a record: s² = (residual squares + ν·s₀²)/(df + ν), a conjugate update
        Finding withRecord = Judge.judge(table, PLAIN.withRecords(NONE, record(0.5, 4)));
        double residualSquares = Math.pow(own.installMeansTest().orElseThrow().standardError(), 2) / (1 / 3.0 + 1 / 2.0) * 3;
        assertThat(withRecord.scatter().orElseThrow().refitVariance()).isCloseTo((residualSquares + 4 * 0.25) / 7, offset(1e-12));
        assertThat(withRecord.estimate().orElseThrow().degreesOfFreedom()).isEqualTo(7);
        // were refit scatter known, the interval would be change ± 1.96·s·√(1/3 + 1/2)
        assertThat(own.tippingScatter().orElseThrow()).isCloseTo(
                own.estimate().orElseThrow().change() / (1.959963984540054 * Math.sqrt(1 / 3.0 + 1 / 2.0)), offset(1e-12));
    }

    @Test
    void noScatterAtAll() {
        Finding finding = Judge.judge(new Tables().install("1", Part.A, 400, 400).install("1", Part.B, 403, 403)
                .install("1", Part.A, 400, 400).table(), PLAIN);
        assertThat(finding.verdict()).isEqualTo(new Gain());
        assertThat(finding.estimate().orElseThrow().pValue()).isLessThan(1e-20);
        Finding same = Judge.judge(new Tables().install("1", Part.A, 400, 400).install("1", Part.B, 400, 400)
                .install("1", Part.A, 400, 400).table(), PLAIN);
        assertThat(same.estimate().orElseThrow().pValue()).isEqualTo(1);
        assertThat(same.tippingScatter()).isEmpty();
    }

    @Test
    void abWithoutReturnNeedsARecord() {
        PullTable table = Tables.drawn("AB", 5, 4, 0.3, 1);
        Finding own = Judge.judge(table, PLAIN.withWorthwhileGain(1).drawn(true));
        assertThat(own.verdict()).isEqualTo(new CannotBeJudged(WhyNotJudged.TOO_FEW_INSTALLS));
        assertThat(own.estimate()).isEmpty();
        assertThat(own.interval()).isEmpty();
        assertThat(own.equivalence()).isEmpty();
        assertThat(own.worthwhile()).isEmpty();
        assertThat(own.randomisation()).isEmpty();
        assertThat(own.leaveOnePullOut()).isEmpty();
        assertThat(own.tippingScatter()).isPresent();
        assertThat(own.installs()).hasSize(2);
        assertThat(codes(own)).contains(Code.NO_RETURN_TO_A);
        Finding withRecord = Judge.judge(table, PLAIN.withRecords(NONE, record(0.3, 8)));
        assertThat(withRecord.verdict()).isEqualTo(new Gain());
        assertThat(codes(withRecord)).contains(Code.NO_RETURN_TO_A);
        assertThat(codes(Judge.judge(Tables.drawn("ABA", 5, 4, 0.3, 1), PLAIN))).doesNotContain(Code.NO_RETURN_TO_A);
    }

    @Test
    void twoSessionsInOppositeOrdersReturn() {
        Tables there = new Tables().install("1", Part.A, 1, 2).install("1", Part.B, 2, 3);
        assertThat(codes(Judge.judge(there.install("2", Part.B, 3, 2).install("2", Part.A, 1, 2).table(), PLAIN)))
                .doesNotContain(Code.NO_RETURN_TO_A);
        Tables again = new Tables().install("1", Part.A, 1, 2).install("1", Part.B, 2, 3);
        assertThat(codes(Judge.judge(again.install("2", Part.A, 3, 2).install("2", Part.B, 1, 2).table(), PLAIN)))
                .contains(Code.NO_RETURN_TO_A);
    }

    @Test
    void singlePullsWithARecordOfRefitAloneSayNothingOfPulls() {
        Finding finding = Judge.judge(new Tables().install("1", Part.A, 1).install("1", Part.B, 2).table(),
                PLAIN.withRecords(NONE, record(0.5, 4)));
        assertThat(finding.verdict()).isEqualTo(new CannotBeJudged(WhyNotJudged.TOO_FEW_PULLS));
        Finding both = Judge.judge(new Tables().install("1", Part.A, 1).install("1", Part.B, 2).table(),
                PLAIN.withRecords(record(0.1, 4), record(0.1, 4)));
        assertThat(both.verdict()).isEqualTo(new Gain());
    }

    @Test
    void bothScattersKnownIsTheNormalDistribution() {
        PullTable table = Tables.drawn("ABA", 4, 1, 0, 3);
        Finding finding = Judge.judge(table, PLAIN.withRecords(record(1, Double.POSITIVE_INFINITY), record(0.5, Double.POSITIVE_INFINITY)));
        Estimate estimate = finding.estimate().orElseThrow();
        assertThat(estimate.degreesOfFreedom()).isInfinite();
        assertThat(estimate.standardError()).isCloseTo(Math.sqrt((0.25 + 1 / 4.0) * 1.5), offset(1e-12));
        assertThat(finding.interval().orElseThrow().high() - estimate.change()).isCloseTo(1.959963984540054 * estimate.standardError(),
                offset(1e-12));
        assertThat(codes(finding)).contains(Code.SCATTER_TAKEN_AS_KNOWN);
    }

    /** At the tipping scatter, taken as known, the interval ends at 0. */
    @Test
    void intervalEndsAtZeroAtTheTippingScatter() {
        for (long seed = 0; seed < 20; seed++) {
            PullTable table = Tables.drawn("ABBA", 5, 3, 0.4, seed);
            double tipping = Judge.judge(table, PLAIN).tippingScatter().orElseThrow();
            Finding finding = Judge.judge(table, PLAIN.withRecords(NONE, record(tipping, Double.POSITIVE_INFINITY)));
            assertThat(finding.interval().orElseThrow().low()).isCloseTo(0, offset(1e-9));
            JudgeSettings oneSided = PLAIN.looking(Sides.ONE, Better.MORE);
            double near = Judge.judge(table, oneSided).tippingScatter().orElseThrow();
            assertThat(near).isGreaterThan(tipping);
            assertThat(Judge.judge(table, oneSided.withRecords(NONE, record(near, Double.POSITIVE_INFINITY))).interval().orElseThrow().low())
                    .isCloseTo(0, offset(1e-9));
            assertThat(Judge.judge(table, PLAIN.looking(Sides.ONE, Better.LESS)).tippingScatter()).isEmpty();
        }
    }

    @Test
    void lessCanBeBetter() {
        PullTable table = Tables.drawn("ABABA", 5, -4, 0.3, 5);
        assertThat(Judge.judge(table, PLAIN).verdict()).isEqualTo(new Loss());
        assertThat(Judge.judge(table, PLAIN.looking(Sides.TWO, Better.LESS)).verdict()).isEqualTo(new Gain());
        assertThat(Judge.judge(table, PLAIN.looking(Sides.TWO, Better.LESS).withWorthwhileGain(1)).worthwhile()).contains(Worthwhile.YES);
        assertThat(Judge.judge(table, PLAIN.withWorthwhileGain(1)).worthwhile()).contains(Worthwhile.NO);
    }

    @Test
    void oneSidedHasNoFarEnd() {
        PullTable table = Tables.drawn("ABABA", 5, 4, 0.3, 5);
        Finding two = Judge.judge(table, PLAIN);
        Finding one = Judge.judge(table, PLAIN.looking(Sides.ONE, Better.MORE).withWorthwhileGain(30));
        Estimate estimate = one.estimate().orElseThrow();
        assertThat(one.interval().orElseThrow().high()).isInfinite();
        assertThat(one.interval().orElseThrow().level()).isEqualTo(0.95);
        assertThat(one.interval().orElseThrow().low()).isCloseTo(
                estimate.change() - StudentT.upperQuantile(0.05, estimate.degreesOfFreedom()) * estimate.standardError(), offset(1e-12));
        assertThat(estimate.pValue()).isCloseTo(two.estimate().orElseThrow().pValue() / 2, offset(1e-15));
        assertThat(one.worthwhile()).as("no far end, so never shown to fall short").contains(Worthwhile.OPEN);
        Finding other = Judge.judge(table, PLAIN.looking(Sides.ONE, Better.LESS));
        assertThat(other.interval().orElseThrow().low()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(other.estimate().orElseThrow().pValue()).isCloseTo(1 - estimate.pValue(), offset(1e-12));
        assertThat(other.verdict()).isEqualTo(new Undecided(WhyUndecided.INTERVAL_TOO_WIDE));
    }

    @Test
    void noDifferenceThatMatters() {
        PullTable table = Tables.drawn("ABABABAB", 8, 0, 0.1, 11);
        assertThat(Judge.judge(table, PLAIN.withWorthwhileGain(2)).verdict()).isEqualTo(new NoDifferenceThatMatters());
        assertThat(Judge.judge(table, PLAIN.withWorthwhileGain(2)).worthwhile()).contains(Worthwhile.NO);
        assertThat(Judge.judge(table, PLAIN).verdict()).isEqualTo(new Undecided(WhyUndecided.INTERVAL_TOO_WIDE));
        assertThat(Judge.judge(table, PLAIN).worthwhile()).isEmpty();
    }

    /** Unequal pulls: what the mixed model says stands only if the install means say it too. */
    @Test
    void unequalPullsNeedTheInstallMeansToAgree() {
        int disagreeing = 0;
        for (long seed = 0; seed < 400; seed++) {
            PullTable table = unequal(seed);
            Finding finding = Judge.judge(table, PLAIN.withWorthwhileGain(1.5));
            boolean mixed = !finding.interval().orElseThrow().holds(0);
            boolean means = !finding.installMeansInterval().orElseThrow().holds(0);
            if (mixed && !means) {
                disagreeing++;
                assertThat(finding.verdict()).isEqualTo(new Undecided(WhyUndecided.INSTALL_MEANS_DISAGREE));
                assertThat(finding.worthwhile()).contains(Worthwhile.OPEN);
            }
            if (mixed && means) {
                assertThat(finding.verdict()).isIn(new Gain(), new Loss());
            }
            assertThat(codes(finding)).contains(Code.UNEQUAL_PULLS);
        }
        assertThat(disagreeing).as("cases that try the rule").isPositive();
    }

    private static PullTable unequal(long seed) {
        PullTable full = Tables.drawn("ABA", 10, 2.5, 1.5, seed);
        return without(full, row -> row.part() == Part.B && Integer.parseInt(row.pull()) > 2);
    }

    private static PullTable without(PullTable table, Predicate<PullRow> leftOut) {
        return new PullTable(table.unit(), table.covariateNames(), table.rows().stream().filter(leftOut.negate()).toList());
    }

    /** Leaving one out says what judging the table without it says. */
    @Test
    void leaveOneOutIsJudgingWithoutIt() {
        PullTable table = Tables.drawn("ABABA", 4, 1.6, 0.4, 17);
        Finding whole = Judge.judge(table, PLAIN.withDrift(Drift.LINEAR));
        List<Double> changes = new ArrayList<>();
        List<String> changing = new ArrayList<>();
        for (PullRow row : table.rows()) {
            Finding finding = Judge.judge(without(table, other -> other == row), PLAIN.withDrift(Drift.LINEAR));
            changes.add(finding.estimate().orElseThrow().change());
            if (!VerdictRule.sameKind(whole.verdict(), finding.verdict())) {
                changing.add(row.install() + " " + row.pull());
            }
        }
        LeaveOneOut found = whole.leaveOnePullOut().orElseThrow();
        assertThat(found.low()).isCloseTo(changes.stream().mapToDouble(v -> v).min().orElseThrow(), offset(1e-9));
        assertThat(found.high()).isCloseTo(changes.stream().mapToDouble(v -> v).max().orElseThrow(), offset(1e-9));
        assertThat(found.changing()).isEqualTo(changing);
    }

    @Test
    void leavingOutTheOnlyInstallOfAPartIsPassedOver() {
        Finding finding = Judge.judge(Tables.drawn("ABA", 5, 20, 0.1, 2), PLAIN.withRecords(NONE, record(0.2, 10)));
        assertThat(finding.verdict()).isEqualTo(new Gain());
        assertThat(finding.leaveOneInstallOut().orElseThrow().changing()).isEmpty();
        assertThat(Judge.judge(Tables.drawn("ABA", 5, 20, 0.1, 2), PLAIN).leaveOneInstallOut()).isEmpty();
    }

    @Test
    void oneInstallDecides() {
        PullTable table = new Tables().install("1", Part.A, 400, 400.1).install("1", Part.B, 401, 401.2).install("1", Part.A, 400.2, 400.1)
                .install("1", Part.B, 401.1, 401).install("1", Part.A, 404, 404.1).table();
        Finding finding = Judge.judge(table, PLAIN);
        assertThat(finding.verdict()).isEqualTo(new Undecided(WhyUndecided.INTERVAL_TOO_WIDE));
        assertThat(finding.notices()).contains(Notice.naming(Code.ONE_INSTALL_DECIDES, List.of("A5")));
    }

    @Test
    void returnCheckAddsRefitScatterFromTheRecord() {
        PullTable table = new Tables().install("1", Part.A, 400, 401, 402).install("1", Part.B, 405, 404, 406)
                .install("1", Part.A, 404, 405, 406).table();
        var own = Judge.judge(table, PLAIN).returnCheck().orElseThrow();
        assertThat(own.difference()).isCloseTo(4, offset(1e-12));
        assertThat(own.withRefit()).isEqualTo(own.pullOnly());
        assertThat(own.byRecord()).isFalse();
        // pull variance 1 on 6 df; 2/3 for the difference, 2·0.25 for refitting on 10 df, Satterthwaite
        Finding finding = Judge.judge(table, PLAIN.withRecords(NONE, record(0.5, 10)));
        double variance = 2 / 3.0 + 0.5;
        double df = variance * variance / (4 / 9.0 / 6 + 0.25 / 10);
        var check = finding.returnCheck().orElseThrow();
        assertThat(check.withRefit().high()).isCloseTo(4 + StudentT.upperQuantile(0.025, df) * Math.sqrt(variance), offset(1e-12));
        assertThat(check.cameBack()).isFalse();
        assertThat(codes(finding)).contains(Code.DID_NOT_COME_BACK);
        assertThat(codes(Judge.judge(table, PLAIN))).as("information only without a record").doesNotContain(Code.DID_NOT_COME_BACK);
    }

    @Test
    void recordThatIsTooSmallIsNoticed() {
        PullTable table = Tables.drawn("ABABABA", 5, 0, 5, 4);
        assertThat(codes(Judge.judge(table, PLAIN.withRecords(NONE, record(0.3, 30))))).contains(Code.RECORD_TOO_SMALL);
        assertThat(codes(Judge.judge(table, PLAIN.withRecords(NONE, record(5, 30))))).doesNotContain(Code.RECORD_TOO_SMALL);
    }

    @Test
    void driftIsASlopeAnHour() {
        Tables tables = new Tables();
        double minutes = 0;
        double[][] noise = {{.1, -.2, .15}, {-.1, .05, .2}, {0, .1, -.15}, {.2, -.1, .05}};
        for (int i = 0; i < 4; i++) {
            double[] values = new double[3];
            for (int k = 0; k < 3; k++) {
                values[k] = 400 + (i % 2 == 1 ? 2 : 0) + 0.05 * minutes + noise[i][k];
                minutes += 5;
            }
            minutes += 20;
            tables.install("1", i % 2 == 1 ? Part.B : Part.A, values);
        }
        Finding finding = Judge.judge(tables.table(), PLAIN.withDrift(Drift.LINEAR));
        assertThat(finding.drift().orElseThrow().perHour()).isCloseTo(3, offset(3 * finding.drift().get().standardError()));
        assertThat(finding.drift().get().standardError()).isBetween(0.01, 0.5);
        assertThat(Judge.judge(tables.table(), PLAIN).drift()).isEmpty();
    }

    @Test
    void outlierIsNamedAndKept() {
        PullTable table = new Tables().install("1", Part.A, 400, 400.5, 399.6, 400.2).install("1", Part.B, 403, 403.4, 395, 402.8)
                .install("1", Part.A, 400.1, 399.9, 400.4, 400).table();
        Finding finding = Judge.judge(table, PLAIN);
        assertThat(finding.outliers()).hasSize(1);
        assertThat(finding.outliers().get(0).install()).isEqualTo("B2");
        assertThat(finding.outliers().get(0).pull()).isEqualTo("3");
        assertThat(finding.outliers().get(0).deviation()).isCloseTo(395 - 401.05, offset(1e-9));
        assertThat(finding.installs().get(1).pulls()).isEqualTo(4);
        assertThat(finding.notices()).contains(Notice.naming(Code.OUTLIERS, List.of("B2 3")));
    }

    @Test
    void changeThatCannotBeToldApartIsRefused() {
        PullTable sessionsAreParts = new Tables().install("1", Part.A, 1, 2).install("1", Part.A, 2, 1).install("2", Part.B, 3, 2)
                .install("2", Part.B, 3, 4).table();
        assertThatThrownBy(() -> Judge.judge(sessionsAreParts, PLAIN)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cannot be told apart");
        PullTable table = Tables.drawn("ABA", 3, 1, 0, 1);
        PullTable collinear = new PullTable("hp", List.of("air"), table.rows().stream().map(row -> new PullRow(row.session(), row.install(),
                row.part(), row.pull(), row.minutes(), row.value(), List.of(row.part() == Part.B ? 30.0 : 20.0))).toList());
        assertThatThrownBy(() -> Judge.judge(collinear, PLAIN.withCovariates(List.of("air"))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Judge.judge(table, PLAIN.withCovariates(List.of("air")))).hasMessageContaining("no covariate air");
    }

    @Test
    void constantCovariateChangesNothing() {
        PullTable table = Tables.drawn("ABABA", 3, 1, 0.5, 1);
        PullTable constant = new PullTable("hp", List.of("air"), table.rows().stream().map(row -> new PullRow(row.session(), row.install(),
                row.part(), row.pull(), row.minutes(), row.value(), List.of(20.0))).toList());
        assertThat(Judge.judge(constant, PLAIN.withCovariates(List.of("air"))).estimate().orElseThrow().change())
                .isCloseTo(Judge.judge(table, PLAIN).estimate().orElseThrow().change(), offset(1e-10));
    }

    @Test
    void driftWithoutMinutesIsRefused() {
        PullTable table = Tables.drawn("ABA", 3, 1, 0, 1);
        PullTable timeless = new PullTable("hp", List.of(), table.rows().stream().map(row -> new PullRow(row.session(), row.install(),
                row.part(), row.pull(), Double.NaN, row.value(), List.of())).toList());
        assertThatThrownBy(() -> Judge.judge(timeless, PLAIN.withDrift(Drift.LINEAR))).isInstanceOf(IllegalArgumentException.class);
        assertThat(Judge.judge(timeless, PLAIN).estimate()).isPresent();
    }

    /** A record of pull scatter alone: install degrees of freedom are still needed, and the plain standard error is used. */
    @Test
    void recordOfPullScatterAloneDoesNotReplaceInstalls() {
        JudgeSettings pullRecord = PLAIN.withRecords(record(1, 40), NONE);
        assertThat(Judge.judge(Tables.drawn("AB", 5, 4, 0.3, 1), pullRecord).verdict())
                .isEqualTo(new CannotBeJudged(WhyNotJudged.TOO_FEW_INSTALLS));
        PullTable table = Tables.drawn("ABABA", 5, 1, 2, 8);
        Estimate own = Judge.judge(table, PLAIN).estimate().orElseThrow();
        Estimate recorded = Judge.judge(table, pullRecord).estimate().orElseThrow();
        // equal pulls, much refit scatter: the install means decide, whatever is known of pulls
        assertThat(recorded.change()).isCloseTo(own.change(), offset(1e-9));
        assertThat(recorded.standardError()).isCloseTo(own.standardError(), offset(1e-6));
        assertThat(recorded.degreesOfFreedom()).isCloseTo(3, offset(0.01));
    }

    /** 500 installs of five pulls: equal pulls, so the install means give the answer. */
    @Test
    void manyInstalls() {
        PullTable table = Tables.drawn("AB".repeat(250), 5, 0.3, 0.6, 23);
        ModelTable model = ModelTable.of(table, PLAIN);
        CoreFit fit = CoreFit.of(model, PLAIN);
        TStatement means = fit.installMeans().orElseThrow();
        TStatement change = fit.change().orElseThrow();
        assertThat(change.change()).isCloseTo(means.change(), offset(1e-10));
        assertThat(change.standardError()).isCloseTo(means.standardError(), offset(1e-10));
        assertThat(change.degreesOfFreedom()).isCloseTo(498, offset(1e-6));
    }

    private static List<Code> codes(Finding finding) {
        return finding.notices().stream().map(Notice::code).toList();
    }
}
