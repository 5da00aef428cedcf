package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.State;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Oddity;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.Sweeping;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Each question raised by one publication and clear on another, invented throughout; what a unit or a constant decides has its source. */
class QuestionsTest {
    /** One horsepower is 550 lbf·ft/s, so that hp = lbf·ft × rpm ÷ (33 000 ÷ 2π): the numbers are equal at 5252.11 rpm. */
    private static final double HP_MEETS_LBF_FT = 33_000 / (2 * Math.PI);

    @Test
    void figuresOfPowerAndTorqueAtOneSpeedComeToEachOther() {
        Publication sound = publication(Procedure.notDisclosed(), figure("power", "201.4 hp", "217.9 hp", "5500 rpm"),
                figure("torque", "192.3 lb-ft", "208.1 lb-ft", "5500 rpm"));
        Publication off = publication(Procedure.notDisclosed(), figure("power", "201.4 hp", "217.9 hp", "5500 rpm"),
                figure("torque", "192.3 lb-ft", "208.1 N·m", "5500 rpm"));

        assertThat(ask(Code.FIGURES_IDENTITY, sound).state()).isEqualTo(State.CLEAR);
        AuditCheck raised = ask(Code.FIGURES_IDENTITY, off);
        assertThat(raised.found()).singleElement().satisfies(found -> {
            assertThat(found.side()).isEqualTo(AuditCheck.Side.AFTER);
            assertThat(found.symbols()).isEqualTo("N·m → lbf·ft");
            assertThat(found.told(FoundFigure.RATIO)).isCloseTo(1.3558, within(0.001));
        });
        assertThat(ask(Code.FIGURES_IDENTITY, publication(Procedure.notDisclosed(), figure("power", "201.4 hp", "217.9 hp", "5500 rpm"),
                figure("torque", "192.3 lb-ft", "208.1 lb-ft", "4000 rpm"))).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    @Test
    void curvesOfPowerAndTorqueMeetWhereTheirUnitsHaveThemMeet() {
        CurvePair torque = pair("torque", Units.POUND_FOOT, QuestionsTest::torque, rpm -> torque(rpm) * 1.03);
        CurvePair power = pair("power", Units.HORSEPOWER, QuestionsTest::power, rpm -> power(rpm) * 1.03);
        CurvePair shifted = pair("power", Units.HORSEPOWER, rpm -> power(rpm) * 1.1, rpm -> power(rpm) * 1.03);

        assertThat(ask(Code.CURVES_IDENTITY, silent(), power, torque).state()).isEqualTo(State.CLEAR);
        assertThat(ask(Code.CURVES_MEET, silent(), power, torque).state()).isEqualTo(State.CLEAR);
        assertThat(ask(Code.CURVES_IDENTITY, silent(), shifted, torque).found()).singleElement()
                .satisfies(found -> assertThat(found.told(FoundFigure.RATIO)).isCloseTo(1.1, within(0.002)));
        assertThat(ask(Code.CURVES_MEET, silent(), shifted, torque).found()).singleElement().satisfies(found -> {
            assertThat(found.told(FoundFigure.EXPECTED_SPEED)).isCloseTo(HP_MEETS_LBF_FT, within(0.01)).isCloseTo(5252.11, within(0.005));
            assertThat(found.told(FoundFigure.MET_SPEED)).isCloseTo(HP_MEETS_LBF_FT / 1.1, within(10.0));
        });
        assertThat(ask(Code.CURVES_MEET, silent(), power).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    @Test
    void theTextSaysWhatTheCurveShows() {
        CurvePair power = pair("power", Units.HORSEPOWER, QuestionsTest::power, rpm -> power(rpm) * 1.03);
        double peak = IntStream.range(0, 37).mapToDouble(k -> power(2000 + 125 * k)).max().orElseThrow();
        String before = String.format(Locale.ROOT, "%.1f hp", peak);

        assertThat(ask(Code.TEXT_AGAINST_PLOT, publication(Procedure.notDisclosed(), figure("peak power", before,
                String.format(Locale.ROOT, "%.1f hp", 1.03 * peak), "")), power).state()).isEqualTo(State.CLEAR);
        AuditCheck raised = ask(Code.TEXT_AGAINST_PLOT, publication(Procedure.notDisclosed(), figure("peak power", before,
                String.format(Locale.ROOT, "%.1f hp", 1.06 * peak), ""),
                figure("power", "90.0 hp", String.format(Locale.ROOT, "%.1f hp", 1.03 * power(3000)), "3000 rpm")), power);
        assertThat(raised.found()).extracting(Found::about, Found::side).containsExactly(
                tuple("peak power", AuditCheck.Side.AFTER),
                tuple("power", AuditCheck.Side.BEFORE));
        assertThat(ask(Code.TEXT_AGAINST_PLOT, publication(Procedure.notDisclosed(), figure("power", "90.0 hp", "91 hp", "9000 rpm")), power)
                .state()).isEqualTo(State.NOT_APPLICABLE);
    }

    /** Two gears or two rollers: a figure is held against the one that shows it, a curve against the one that it belongs to. */
    @Test
    void ofSeveralCurvesOfAQuantityOneHasToShowIt() {
        CurvePair power = pair("power, 3rd gear", Units.HORSEPOWER, QuestionsTest::power, rpm -> power(rpm) * 1.03);
        CurvePair torque = pair("torque, 3rd gear", Units.POUND_FOOT, QuestionsTest::torque, rpm -> torque(rpm) * 1.03);
        CurvePair otherPower = pair("power, 4th gear", Units.HORSEPOWER, rpm -> 0.9 * power(rpm), rpm -> 0.93 * power(rpm));
        CurvePair otherTorque = pair("torque, 4th gear", Units.POUND_FOOT, rpm -> 0.9 * torque(rpm), rpm -> 0.93 * torque(rpm));
        CurvePair wrongTorque = pair("torque, 5th gear", Units.POUND_FOOT, rpm -> 0.8 * torque(rpm), rpm -> 0.8 * torque(rpm));
        CurvePair wrongPower = pair("power, 5th gear", Units.HORSEPOWER, rpm -> 0.7 * power(rpm), rpm -> 0.7 * power(rpm));
        Publication text = publication(Procedure.notDisclosed(), figure("power", String.format(Locale.ROOT, "%.1f hp", 0.9 * power(4000)),
                String.format(Locale.ROOT, "%.1f hp", 0.93 * power(4000)), "4000 rpm"));
        Publication neither = publication(Procedure.notDisclosed(), figure("power", "10.0 hp",
                String.format(Locale.ROOT, "%.1f hp", 0.93 * power(4000)), "4000 rpm"));

        for (Code code : List.of(Code.CURVES_IDENTITY, Code.CURVES_MEET, Code.TEXT_AGAINST_PLOT)) {
            assertThat(ask(code, text, power, torque, otherPower, otherTorque).state()).as(code.name()).isEqualTo(State.CLEAR);
        }
        assertThat(ask(Code.CURVES_IDENTITY, text, power, torque, wrongPower, wrongTorque).found()).extracting(Found::names)
                .containsOnly(List.of("power, 5th gear", "torque, 5th gear"));
        assertThat(ask(Code.TEXT_AGAINST_PLOT, neither, power, otherPower).found()).extracting(Found::about, Found::side, Found::symbols)
                .containsExactly(tuple("power", AuditCheck.Side.BEFORE, "power, 3rd gear"),
                        tuple("power", AuditCheck.Side.AFTER, "power, 3rd gear"),
                        tuple("power", AuditCheck.Side.BEFORE, "power, 4th gear"));
    }

    /** hp = lbf·ft × rpm ÷ 5252.11: 200 hp and 191 lbf·ft at 5500 rpm belong together, and so do 230 hp and 219.6 lbf·ft. */
    @Test
    void wheelsAndEngineAtOneSpeedDoNotContradictEachOther() {
        Publication.Figure atWheels = figure("power, wheels", "200 hp", "210 hp", "5500 rpm");
        Publication.Figure atEngine = figure("power, engine", "230 hp", "241 hp", "5500 rpm");
        Publication.Figure torqueAtWheels = figure("torque, wheels", "191 lbf·ft", "200.5 lbf·ft", "5500 rpm");
        Publication.Figure torqueAtEngine = figure("torque, engine", "219.6 lbf·ft", "230.1 lbf·ft", "5500 rpm");
        Publication both = publication(Procedure.notDisclosed(), atWheels, atEngine, torqueAtWheels, torqueAtEngine);
        Publication off = publication(Procedure.notDisclosed(), atWheels, torqueAtWheels,
                figure("power", "100 hp", "210 hp", "6000 rpm"), figure("torque, peak", "191 lbf·ft", "183.8 lbf·ft", "6000 rpm"),
                figure("peak", "100 hp", "100 hp", ""));

        assertThat(ask(Code.FIGURES_IDENTITY, both).state()).isEqualTo(State.CLEAR);
        List<AuditCheck> checks = Questions.of(off, List.of());
        assertThat(off.figures()).filteredOn(figure -> Doubted.by(checks, off, figure)).extracting(Publication.Figure::name)
                .containsExactly("power", "torque, peak");
    }

    /** A reading error that covers the difference makes the same text clear. */
    @Test
    void aTracedCurveAllowsForItsReadingError() {
        CurvePair exact = pair("power", Units.HORSEPOWER, QuestionsTest::power, rpm -> power(rpm) + 4);
        CurvePair rough = new CurvePair(exact.published(), traced(exact.before(), 2), traced(exact.after(), 2));
        String printed = String.format(Locale.ROOT, "%.1f hp", power(4000) + 6);
        Publication text = publication(Procedure.notDisclosed(), figure("power", printed, printed, "4000 rpm"));

        assertThat(ask(Code.TEXT_AGAINST_PLOT, text, exact).found()).hasSize(2);
        assertThat(ask(Code.TEXT_AGAINST_PLOT, text, rough).found()).isEmpty();
    }

    @Test
    void copiedStretchesMultiplesAndPlateausShow() {
        double[] before = noisy(1);
        double[] after = noisy(2);
        double[] copied = after.clone();
        System.arraycopy(before, 10, copied, 10, 14);
        double[] multiple = Arrays.stream(before).map(value -> Math.round(10 * value * 1.05) / 10.0).toArray();
        double[] flat = after.clone();
        Arrays.fill(flat, 30, 34, Arrays.stream(after).max().orElseThrow());

        for (Code code : List.of(Code.CURVE_STRETCH_COPIED, Code.CURVE_IS_MULTIPLE, Code.CURVE_PLATEAU)) {
            assertThat(ask(code, silent(), points(before, after)).state()).as(code.name()).isEqualTo(State.CLEAR);
        }
        assertThat(ask(Code.CURVE_STRETCH_COPIED, silent(), points(before, copied)).found()).singleElement()
                .satisfies(found -> assertThat(found.told(FoundFigure.POINTS)).isEqualTo(14));
        assertThat(ask(Code.CURVE_IS_MULTIPLE, silent(), points(before, multiple)).found()).singleElement()
                .satisfies(found -> assertThat(found.told(FoundFigure.FACTOR)).isCloseTo(1.05, within(1e-4)));
        assertThat(ask(Code.CURVE_PLATEAU, silent(), points(before, flat)).found()).singleElement().satisfies(found -> {
            assertThat(found.side()).isEqualTo(AuditCheck.Side.AFTER);
            assertThat(found.told(FoundFigure.POINTS)).isGreaterThanOrEqualTo(4);
        });
    }

    @Test
    void aGainAtTheStartAloneIsTold() {
        CurvePair start = pair("power", Units.HORSEPOWER, QuestionsTest::power, rpm -> power(rpm) * (rpm < 3000 ? 1.06 : 1));
        CurvePair all = pair("power", Units.HORSEPOWER, QuestionsTest::power, rpm -> power(rpm) * 1.06);

        assertThat(ask(Code.GAIN_AT_START_ONLY, silent(), start).found()).singleElement()
                .satisfies(found -> assertThat(found.told(FoundFigure.GAIN_AT_START)).isBetween(0.03, 0.061));
        assertThat(ask(Code.GAIN_AT_START_ONLY, silent(), all).state()).isEqualTo(State.CLEAR);
        assertThat(ask(Code.GAIN_AT_START_ONLY, silent()).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    @Test
    void aCurveThatWasThinnedIsTold() {
        CurvePair whole = pair("power", Units.HORSEPOWER, QuestionsTest::power, QuestionsTest::power);
        CurvePair thinned = new CurvePair(whole.published(), whole.before(), whole.after().thinned(10));

        assertThat(ask(Code.CURVE_THINNED, silent(), whole).state()).isEqualTo(State.CLEAR);
        assertThat(ask(Code.CURVE_THINNED, silent(), thinned).found()).singleElement().satisfies(found -> {
            assertThat(found.side()).isEqualTo(AuditCheck.Side.AFTER);
            assertThat(found.told(FoundFigure.PUBLISHED_POINTS)).isEqualTo(37);
            assertThat(found.told(FoundFigure.POINTS)).isEqualTo(thinned.after().size());
        });
        assertThat(ask(Code.CURVE_THINNED, silent()).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    /** Expected maximum of five standard normal values: 1.16296 (Tippett 1925); pulls scatter by 0.7 % of 200 hp. */
    @Test
    void theBestOfFiveAgainstASinglePullAddsItsExpectedMaximum() {
        Procedure best = quoting(Quote.single(), new Quote(Quote.Kind.BEST, 5));
        Procedure fair = quoting(new Quote(Quote.Kind.BEST, 5), new Quote(Quote.Kind.BEST, 5));
        Publication.Figure figure = figure("power", "200.0 hp", "203.0 hp", "");

        assertThat(ask(Code.PICKED_PULLS, publication(best, figure)).found()).singleElement().satisfies(found ->
                assertThat(found.told(FoundFigure.ADDS)).isCloseTo(1.16296 * 1.4, within(1e-4)));
        assertThat(ask(Code.PICKED_PULLS, publication(fair, figure)).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void aPickedSpeedAsksForMoreTheLongerTheSweepIs() {
        Procedure picked = Procedure.notDisclosed().with(Quoting.NOT_DISCLOSED.withNamedBefore(Optional.of(false)));
        Procedure named = Procedure.notDisclosed().with(Quoting.NOT_DISCLOSED.withNamedBefore(Optional.of(true)));
        CurvePair power = pair("power", Units.HORSEPOWER, QuestionsTest::power, QuestionsTest::power);
        double assumed = critical(ask(Code.PICKED_SPEED, publication(picked)));
        double ofCurve = critical(ask(Code.PICKED_SPEED, publication(picked), power));

        assertThat(ofCurve).isEqualTo(PickedSpeed.criticalValue(4500, PickedSpeed.CORRELATION_LENGTH_RPM)).isGreaterThan(assumed);
        assertThat(ask(Code.PICKED_SPEED, publication(named)).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void whatDiffersInTheProcedureIsTold() {
        Procedure said = Procedure.notDisclosed().with(new Correcting(BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J1349),
                        BeforeAfter.of(Barometer.Kind.SEA_LEVEL, Barometer.Kind.STATION), Printed.parse("1000 m")))
                .with(Sweeping.NOT_DISCLOSED.withSmoothing(BeforeAfter.of("200 rpm", "none")))
                .with(Returning.NOT_DISCLOSED.withOrder(Optional.of(RunOrder.parse("A-B"))));
        Procedure clear = said.with(said.correcting().withBarometers(BeforeAfter.of(Barometer.Kind.STATION, Barometer.Kind.STATION)))
                .with(said.sweeping().withSmoothing(BeforeAfter.of("none", "none")))
                .with(said.returning().withOrder(Optional.of(RunOrder.parse("A/B/B/A"))));

        assertThat(ask(Code.BAROMETERS, publication(said)).found()).singleElement().satisfies(found ->
                assertThat(found.told(FoundFigure.APPARENT_GAIN)).isEqualTo(BarometerMix.apparentGain(Correction.SAE_J1349, 1000)).isBetween(0.10, 0.20));
        assertThat(ask(Code.SMOOTHING, publication(said)).found()).singleElement()
                .satisfies(found -> assertThat(found.symbols()).isEqualTo("200 rpm → none"));
        assertThat(ask(Code.NO_RETURN, publication(said)).state()).isEqualTo(State.RAISED);
        for (Code code : List.of(Code.BAROMETERS, Code.SMOOTHING, Code.NO_RETURN)) {
            assertThat(ask(code, publication(clear)).state()).as(code.name()).isEqualTo(State.CLEAR);
            assertThat(ask(code, silent()).state()).as(code.name()).isEqualTo(State.NOT_APPLICABLE);
        }
    }

    @Test
    void whatHardlyGoesTogetherIsAskedAbout() {
        Publication.Figure figure = figure("power", "200 hp", "203 hp", "7000 rpm");
        Procedure clear = Procedure.notDisclosed().with(Keeping.all()).with(Returning.NOT_DISCLOSED.withOrder(Optional.of(RunOrder.parse("ABA"))))
                .with(Quoting.NOT_DISCLOSED.withQuotes(new Quote(Quote.Kind.MEAN, 4), new Quote(Quote.Kind.MEAN, 4)))
                .with(Sweeping.NOT_DISCLOSED.withSpeeds(Optional.of(new SpeedRange(Units.RPM.toSi(2500), Units.RPM.toSi(7000)))));

        assertThat(odd(clear, figure)).isEmpty();
        assertThat(odd(clear.with(clear.keeping().withDay(Optional.of(Sameness.DIFFERENT))), figure))
                .containsExactly(Oddity.STRAPPED_OVERNIGHT.id(), Oddity.ORDER_OF_ONE_DAY.id());
        assertThat(odd(clear.with(clear.quoting().withQuotes(Quote.single(), new Quote(Quote.Kind.BEST, 1))), figure))
                .containsExactly(Oddity.SINGLE_OF_SEVERAL_INSTALLS.id(), Oddity.BEST_OF_ONE.id());
        assertThat(odd(clear.with(clear.sweeping().withSpeeds(Optional.of(new SpeedRange(Units.RPM.toSi(2500), Units.RPM.toSi(6500))))),
                figure)).containsExactly(Oddity.SPEED_NOT_SWEPT.id());
        assertThat(odd(clear.with(new Correcting(BeforeAfter.of(Correction.NONE, Correction.NONE),
                BeforeAfter.of(Barometer.Kind.STATION, Barometer.Kind.STATION), Optional.empty())), figure))
                .containsExactly(Oddity.BAROMETER_WITHOUT_CORRECTION.id());
        assertThat(ask(Code.ODDITIES, silent()).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    private static List<String> odd(Procedure procedure, Publication.Figure figure) {
        return ask(Code.ODDITIES, publication(procedure, figure)).found().stream().map(Found::symbols).toList();
    }

    @Test
    void everyCodeIsAskedOnce() {
        assertThat(Questions.of(silent(), List.of())).extracting(AuditCheck::code).containsExactly(Code.values());
    }

    private static Procedure quoting(Quote before, Quote after) {
        return Procedure.notDisclosed().with(Quoting.NOT_DISCLOSED.withQuotes(before, after));
    }

    private static double critical(AuditCheck check) {
        return check.found().get(0).told(FoundFigure.CRITICAL_VALUE);
    }

    private static double torque(double rpm) {
        double x = (rpm - 4300) / 2600;
        return 186 * (1 - 0.32 * x * x - 0.05 * x);
    }

    private static double power(double rpm) {
        return torque(rpm) * rpm / HP_MEETS_LBF_FT;
    }

    private static CurvePair pair(String name, Unit unit, DoubleUnaryOperator before, DoubleUnaryOperator after) {
        return new CurvePair(said(name, unit), seen(unit, IntStream.range(0, 37).mapToDouble(k -> tenth(before, 2000 + 125 * k)).toArray()),
                seen(unit, IntStream.range(0, 37).mapToDouble(k -> tenth(after, 2000 + 125 * k)).toArray()));
    }

    private static double tenth(DoubleUnaryOperator curve, double rpm) {
        return Math.round(10 * curve.applyAsDouble(rpm)) / 10.0;
    }

    private static CurvePair points(double[] before, double[] after) {
        return new CurvePair(said("power", Units.HORSEPOWER), seen(Units.HORSEPOWER, before), seen(Units.HORSEPOWER, after));
    }

    private static double[] noisy(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return IntStream.range(0, 37).mapToDouble(k -> tenth(rpm -> power(rpm) + 3 * random.nextDouble(), 2000 + 125 * k)).toArray();
    }

    private static CurveSeen seen(Unit unit, double[] values) {
        Samples none = Samples.of(new double[values.length]);
        return new CurveSeen(unit, Units.RPM, Samples.of(IntStream.range(0, values.length).mapToDouble(k -> Units.RPM.toSi(2000 + 125 * k))
                .toArray()), Samples.of(values).map(unit::toSi), none, none);
    }

    private static CurveSeen traced(CurveSeen exact, double hp) {
        return new CurveSeen(exact.unit(), exact.speedUnit(), exact.speedsRadPerS(), exact.values(), exact.speedErrors(),
                exact.values().map(value -> Units.HORSEPOWER.toSi(hp)));
    }

    private static Publication.Curves said(String name, Unit unit) {
        return new Publication.Curves(name, unit, Units.RPM, new CurveSource.Traced("a.json"), new CurveSource.Traced("b.json"));
    }

    private static Publication.Figure figure(String name, String before, String after, String at) {
        return new Publication.Figure(name, Printed.parse(before).orElseThrow(), Printed.parse(after).orElseThrow(), Better.MORE,
                Printed.parse(at), Optional.empty());
    }

    private static Publication silent() {
        return publication(Procedure.notDisclosed());
    }

    private static Publication publication(Procedure procedure, Publication.Figure... figures) {
        List<Publication.Figure> printed = figures.length > 0 ? List.of(figures) : List.of(figure("power", "200 hp", "203 hp", ""));
        return new Publication("invented", "", "", "a part", printed, List.of(), procedure, List.of());
    }

    private static AuditCheck ask(Code code, Publication publication, CurvePair... curves) {
        return Questions.of(publication, List.of(curves)).stream().filter(check -> check.code() == code).findFirst().orElseThrow();
    }
}
