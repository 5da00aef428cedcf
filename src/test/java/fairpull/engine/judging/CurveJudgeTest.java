package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.ClaimStanding.Standing;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveFinding.RecordUse;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.RelativeScatter;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Sides;
import fairpull.domain.pull.Samples;
import fairpull.engine.stats.Deviates;
import fairpull.engine.stats.StudentT;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The difference curve against the judge of single measures, and against what must hold. */
class CurveJudgeTest {
    private static final int SPEEDS = 30;
    private static final RelativeScatter RECORD = new RelativeScatter(0.01, 6);

    @Test
    void everySpeedIsJudgedAsItsColumnAlone() {
        CurveTable table = new Curves(SPEEDS, 8, 4).campaign("ABABA", 4, 1, 1, new Deviates(3));
        CurveFinding finding = judge(table, JudgeSettings.plain(), Optional.empty());

        assertThat(finding.points()).hasSize(SPEEDS);
        assertThat(finding.recordUsed()).isEqualTo(RecordUse.OWN_DATA);
        for (int place = 0; place < SPEEDS; place++) {
            assertSame(finding.points().get(place), Judge.judge(column(table, place), JudgeSettings.plain()));
        }
    }

    @Test
    void aRecordIsAShareOfTheLevelAtEachSpeed() {
        CurveTable table = new Curves(SPEEDS, 8, 4).campaign("ABA", 3, 1, 1, new Deviates(4));
        CurveFinding finding = judge(table, JudgeSettings.plain(), Optional.of(RECORD));

        assertThat(finding.recordUsed()).isEqualTo(RecordUse.BAND_FIGURE);
        CurvePoint point = finding.points().get(11);
        assertSame(point, Judge.judge(column(table, 11), JudgeSettings.plain().withRecords(Optional.empty(),
                Optional.of(new ScatterRecord(0.01 * point.meanA(), 6)))));
    }

    @Test
    void aRecordOfEachSpeedIsSaidAndUsed() {
        CurveTable table = new Curves(SPEEDS, 8, 4).campaign("ABA", 3, 1, 1, new Deviates(4));
        Samples shares = Samples.of(IntStream.range(0, SPEEDS).mapToDouble(place -> 0.005 + 0.001 * place).toArray());
        CurveFinding finding = judge(table, JudgeSettings.plain(), Optional.of(new RelativeScatter(0.01, Optional.of(shares), 6)));

        assertThat(finding.recordUsed()).isEqualTo(RecordUse.EACH_SPEED);
        CurvePoint point = finding.points().get(20);
        assertSame(point, Judge.judge(column(table, 20), JudgeSettings.plain().withRecords(Optional.empty(),
                Optional.of(new ScatterRecord(0.025 * point.meanA(), 6)))));
    }

    /** Where all speeds move together there is nothing to pick from: the band is the interval of one speed. */
    @Test
    void aConstantCurveNeedsNoMoreThanStudentsT() {
        CurveTable one = new Curves(2, 50, 50).campaign("ABBA", 4, 1, 1, new Deviates(5));
        CurveTable flat = mapped(one, SPEEDS, row -> place -> row.values().at(0));
        CurveFinding finding = judge(flat, JudgeSettings.plain(), Optional.empty());

        assertThat(finding.criticalValue()).isCloseTo(StudentT.upperQuantile(0.025, finding.degreesOfFreedom()), within(1e-6));
        assertThat(finding.points()).allSatisfy(point -> assertThat(point.band().high()).isCloseTo(point.own().high(), within(1e-6)));
    }

    @Test
    void theBandContainsEveryIntervalAndStaysWithinBonferroni() {
        for (int seed = 0; seed < 10; seed++) {
            CurveFinding finding = judge(new Curves(SPEEDS, 8, 2).campaign("ABABA", 3, 1, 1, new Deviates(seed)), JudgeSettings.plain(),
                    Optional.empty());
            assertThat(finding.criticalValue()).isBetween(StudentT.upperQuantile(0.025, finding.degreesOfFreedom()),
                    StudentT.upperQuantile(0.025 / SPEEDS, finding.degreesOfFreedom()));
            assertThat(finding.points()).allSatisfy(point -> {
                assertThat(point.band().low()).isLessThanOrEqualTo(point.own().low());
                assertThat(point.band().high()).isGreaterThanOrEqualTo(point.own().high());
            });
        }
    }

    @Test
    void rangesOfGainAndLossAreThoseOfTheBand() {
        CurveTable nothing = new Curves(SPEEDS, 8, 8).campaign("ABABABA", 4, 0.2, 0.2, new Deviates(6));
        CurveFinding finding = judge(changed(nothing, place -> place < 8 ? 9 : place >= 20 && place < 26 ? -9 : 0), JudgeSettings.plain(),
                Optional.of(RECORD));

        assertThat(finding.gains()).containsExactly(range(finding, 0, 7));
        assertThat(finding.losses()).containsExactly(range(finding, 20, 25));
        assertThat(finding.shareShown()).isEqualTo(8.0 / SPEEDS);
        assertThat(finding.transientGain()).isEmpty();
    }

    @Test
    void aGainOnlyNearTheStartIsPointedOut() {
        CurveTable nothing = new Curves(SPEEDS, 8, 8).campaign("ABABABA", 4, 0.2, 0.2, new Deviates(6));
        CurveFinding early = judge(changed(nothing, place -> place < 4 ? 9 : 0), JudgeSettings.plain(), Optional.of(RECORD));
        CurveFinding twice = judge(changed(nothing, place -> place < 4 || place > 25 ? 9 : 0), JudgeSettings.plain(), Optional.of(RECORD));

        assertThat(early.transientGain()).contains(range(early, 0, 3));
        assertThat(twice.transientGain()).isEmpty();
    }

    @Test
    void lessCanBeBetter() {
        CurveTable nothing = new Curves(SPEEDS, 8, 8).campaign("ABABABA", 4, 0.2, 0.2, new Deviates(6));
        CurveFinding finding = judge(changed(nothing, place -> place < 10 ? -9 : 0),
                JudgeSettings.plain().looking(Sides.ONE, Better.LESS), Optional.of(RECORD));

        assertThat(finding.gains()).containsExactly(range(finding, 0, 9));
        assertThat(finding.losses()).isEmpty();
        assertThat(finding.points().get(0).band().low()).isNegative().isInfinite();
        assertThat(finding.criticalValue()).isGreaterThan(StudentT.upperQuantile(0.05, finding.degreesOfFreedom()));
    }

    @Test
    void aSpeedIsJudgedByThePullsThatCoverIt() {
        CurveTable whole = new Curves(SPEEDS, 8, 4).campaign("ABABA", 4, 1, 1, new Deviates(8));
        CurveTable gaps = mapped(whole, SPEEDS, row -> place -> place < 5 && row.part() == Part.B
                || place >= 25 && row.pull().equals("2") ? Double.NaN : row.values().at((int) place));
        CurveFinding finding = judge(gaps, JudgeSettings.plain(), Optional.empty());

        assertThat(finding.points()).hasSize(SPEEDS - 5);
        assertSame(finding.points().get(SPEEDS - 6), Judge.judge(column(gaps, SPEEDS - 1), JudgeSettings.plain()));
        assertThat(finding.points().get(0).speedRadPerS()).isEqualTo(gaps.grid().at(5));
    }

    @Test
    void withoutSpareInstallsOrARecordNothingIsJudged() {
        assertThat(CurveJudge.judge(new Curves(SPEEDS, 8, 4).campaign("AB", 4, 1, 1, new Deviates(8)),
                new CurveQuestion(JudgeSettings.plain(), true, Optional.empty(), Optional.empty()))).isEmpty();
    }

    @Test
    void meanAndAreaAreOneStatementAndThePeakIsAnother() {
        CurveTable table = changed(new Curves(SPEEDS, 8, 4).campaign("ABABA", 4, 1, 1, new Deviates(9)), place -> 5);
        CurveFinding finding = judge(table, JudgeSettings.plain(), Optional.empty());
        double width = 50 * (SPEEDS - 1);

        assertThat(finding.figures()).hasSize(3);
        assertThat(finding.figures().get(2).estimate().change()).isCloseTo(width * finding.figures().get(1).estimate().change(),
                within(1e-6));
        assertThat(finding.figures().get(2).unit()).isEqualTo("hp·rpm");
        double[] peaks = table.rows().stream().mapToDouble(row -> row.values().stream().max().orElseThrow()).toArray();
        assertThat(finding.figures().get(0).estimate()).isEqualTo(Judge.judge(column(table, peaks), JudgeSettings.plain())
                .estimate().orElseThrow());
    }

    @Test
    void aSpeedNamedBeforeTheDayUsesItsIntervalAndOnePickedAfterTheBand() {
        CurveTable table = changed(new Curves(SPEEDS, 8, 4).campaign("ABABABA", 4, 0.5, 0.5, new Deviates(10)), place -> 3);
        CurveFinding finding = judge(table, JudgeSettings.plain(), Optional.empty());
        CurvePoint point = finding.points().get(12);
        Claim claim = new Claim("so much", "power", 1, OptionalDouble.of(point.speedRadPerS()));
        double between = (point.own().low() + point.band().low()) / 2;

        assertThat(standing(claim, between, finding, true)).isEqualTo(Standing.SHOWN);
        assertThat(standing(claim, between, finding, false)).isEqualTo(Standing.OPEN);
        assertThat(standing(claim, point.band().high() + 1, finding, false)).isEqualTo(Standing.CONTRADICTED);
        Claim outside = new Claim("so much", "power", 1, OptionalDouble.of(finding.curves().grid().lastRadPerS() * 1.2));
        assertThat(standing(outside, between, finding, true)).isEqualTo(Standing.NOT_JUDGED);
    }

    private static Standing standing(Claim claim, double atLeast, CurveFinding finding, boolean before) {
        ClaimStanding standing = ClaimCheck.atSpeed(claim, atLeast, Optional.of(finding), Better.MORE, before);
        return standing.standing();
    }

    private static CurveFinding judge(CurveTable table, JudgeSettings settings, Optional<RelativeScatter> record) {
        return CurveJudge.judge(table, new CurveQuestion(settings, true, Optional.empty(), record)).orElseThrow();
    }

    private static void assertSame(CurvePoint point, Finding alone) {
        assertThat(point.estimate()).isEqualTo(alone.estimate().orElseThrow());
        assertThat(point.own()).isEqualTo(alone.interval().orElseThrow());
    }

    private static SpeedRange range(CurveFinding finding, int from, int to) {
        return new SpeedRange(finding.curves().grid().at(from), finding.curves().grid().at(to));
    }

    private static PullTable column(CurveTable table, int place) {
        return column(table, table.rows().stream().mapToDouble(row -> row.values().at(place)).toArray());
    }

    private static PullTable column(CurveTable table, double[] values) {
        return new PullTable("hp", List.of(), IntStream.range(0, values.length).filter(k -> Double.isFinite(values[k])).mapToObj(k -> {
            CurveRow row = table.rows().get(k);
            return new PullRow(row.session(), row.install(), row.part(), row.pull(), row.minutes(), values[k], row.covariates());
        }).toList());
    }

    private static CurveTable changed(CurveTable table, DoubleUnaryOperator gain) {
        return mapped(table, table.grid().size(), row -> place -> row.values().at((int) place)
                + (row.part() == Part.B ? gain.applyAsDouble(place) : 0));
    }

    private interface ValueAt {
        DoubleUnaryOperator of(CurveRow row);
    }

    private static CurveTable mapped(CurveTable table, int speeds, ValueAt value) {
        return Curves.table(table.rows().stream().map(row -> new CurveRow(row.session(), row.install(), row.part(), row.pull(),
                row.minutes(), Samples.of(IntStream.range(0, speeds).mapToDouble(place -> value.of(row).applyAsDouble(place)).toArray()),
                row.covariates())).toList(), speeds);
    }
}
