package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigKey;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.report.Examples;
import fairpull.report.Findings;
import fairpull.report.wording.Numbers;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text of a chart is cut or runs into another, whatever the size of the test. */
class LayoutTest {
    private static final String LONG_UNIT = "a very long unit of a kind that nobody has met before but somebody may type in";

    @ParameterizedTest
    @ValueSource(strings = {"AB", "ABA", "ABBA", "ABABA", "ABABAB", "ABABABA", "ABBAABBA", "ABABABABA", "ABA|BAB", "ABA|BAB|AB"})
    void daysOfAnySizeAreLegible(String letters) {
        for (int pulls = 1; pulls <= 12; pulls++) {
            for (int warmUps = 0; warmUps <= 3; warmUps++) {
                for (String unit : new String[] {"hp", LONG_UNIT}) {
                    drawings(Examples.of(letters, pulls, warmUps, Unit.asTyped(unit))).forEach(LayoutTest::assertLegible);
                }
            }
        }
    }

    @Test
    void everyInstallAndItsMeanAreNamed() {
        List<Drawing> drawings = drawings(Examples.of("ABABABABA", 12, 3, Unit.asTyped("hp")));

        for (String label : new String[] {"A1", "B1", "A2", "B2", "A3", "B3", "A4", "B4", "A5"}) {
            assertThat(words(drawings.get(0))).extracting(Shape.Words::text).contains(label);
        }
        assertThat(words(drawings.get(0))).filteredOn(words -> words.type() == Shape.Type.STRONG).hasSize(18);
    }

    @Test
    void examplesAreLegible() {
        Examples.all().values().forEach(judgement -> drawings(judgement).forEach(LayoutTest::assertLegible));
    }

    @Test
    void intervalsOfAnySizeAreLegible() {
        Random random = new Random(20260314);
        for (int round = 0; round < 2000; round++) {
            double change = random.nextGaussian() * Math.pow(10, random.nextInt(9) - 4);
            double half = Math.abs(random.nextGaussian()) * Math.pow(10, random.nextInt(9) - 4) + 1e-6;
            OptionalDouble gain = random.nextInt(4) == 0 ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.pow(10, random.nextInt(9) - 4));
            double low = random.nextInt(6) == 0 ? Double.NEGATIVE_INFINITY : change - half;
            double high = random.nextInt(6) == 0 && Double.isFinite(low) ? Double.POSITIVE_INFINITY : change + half;
            Finding finding = Findings.inUnit(Findings.around(change, low, high, gain), random.nextBoolean() ? "hp" : "lbf·ft per gallon");
            assertLegible(IntervalChart.of(finding).orElseThrow());
            TippingScale.of(finding).ifPresent(chart -> assertLegible(chart));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-6, 4.2e-3, 1, 13.337, 1e6, -1e6, 1e9})
    void valuesOfAnySizeAreLegible(double level) {
        for (double scatter : new double[] {0, 1e-9, 1e-4, 0.3}) {
            double spread = scatter * Math.max(Math.abs(level), 1e-6);
            List<Day.Mark> marks = IntStream.range(0, 3).mapToObj(place -> new Day.Mark(
                    new PullId("A1", false, place + 1), Fate.USED, place * 5, OptionalDouble.of(level + place * spread))).toList();
            Day day = new Day("", List.of(new Day.Block("A1", Part.A, -2, 12, marks)), OptionalDouble.empty());
            ValueAxis axis = ValueAxis.of("any", List.of(day), Numbers.resolving(spread, "hp"), "hp");

            Drawing drawing = DayStrip.draw(day, axis);

            assertLegible(drawing);
            assertThat(words(drawing)).hasSizeGreaterThan(5);
        }
    }

    @Test
    void tippingScaleIsLegibleWhereverTheRigStands() {
        for (Finding finding : List.of(Findings.gain(List.of()), Findings.undecided("hp"), Findings.cannotBeJudged(List.of()),
                Findings.quickerOneSided())) {
            assertLegible(TippingScale.of(finding).orElseThrow());
        }
        assertThat(TippingScale.of(Findings.noDifference(List.of()))).isEmpty();
    }

    @Test
    void rigChartsOfAnySizeAreLegible() {
        Random random = new Random(20260602);
        for (int points = 2; points <= 80; points++) {
            for (double spread : new double[] {1e-9, 1e-4, 0.006, 0.3}) {
                int perSession = 1 + random.nextInt(4);
                List<RigEvidence.Point> means = IntStream.range(0, points).mapToObj(place -> new RigEvidence.Point("a session of no date "
                        + place / perSession, "A1", 1 + spread * random.nextGaussian(), random.nextInt(9) == 0)).toList();
                double sigma = random.nextInt(5) == 0 ? 0 : spread * random.nextDouble();
                RigEvidence.Chart chart = new RigEvidence.Chart(means, 1, sigma, 1 - 3 * sigma, 1 + 3 * sigma, Optional.empty());
                RigEvidence.Change change = new RigEvidence.Change(means.get(points / 2).session(), 0.01, 1, 1.01, points);
                RigKey key = new RigKey("any", new Definition.Peak(Quantity.POWER), "", Correction.NONE, OptionalDouble.empty(), true);

                assertLegible(RigChart.draw(new RigEvidence(key, List.of(), List.of(), Optional.of(chart), Optional.of(change))).orElseThrow());
            }
        }
    }

    private static List<Drawing> drawings(Judgement judgement) {
        List<Day> days = DaysOfTest.of(judgement, Examples.POWER.name());
        ValueAxis axis = ValueAxis.of(Examples.POWER.name(), days, Numbers.of(judgement.deciding()), judgement.deciding().unit());
        return days.stream().map(day -> DayStrip.draw(day, axis)).toList();
    }

    private static List<Shape.Words> words(Drawing drawing) {
        return drawing.shapes().stream().filter(Shape.Words.class::isInstance).map(Shape.Words.class::cast).toList();
    }

    private static void assertLegible(Chart chart) {
        for (double width : new double[] {Chart.NARROWEST, 577, Drawing.WIDTH}) {
            assertThat(chart.wide(width).width()).isEqualTo(width);
            assertLegible(chart.wide(width));
        }
    }

    static void assertLegible(Drawing drawing) {
        List<Shape.Words> words = words(drawing);
        for (int one = 0; one < words.size(); one++) {
            Bounds bounds = words.get(one).bounds();
            assertThat(bounds.x()).as("left of “%s”", words.get(one).text()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(bounds.right()).as("right of “%s”", words.get(one).text()).isLessThanOrEqualTo(drawing.width() + 1e-9);
            assertThat(bounds.y()).as("top of “%s”", words.get(one).text()).isGreaterThanOrEqualTo(0);
            assertThat(bounds.bottom()).as("bottom of “%s”", words.get(one).text()).isLessThanOrEqualTo(drawing.height());
            for (int other = one + 1; other < words.size(); other++) {
                assertThat(bounds.overlaps(words.get(other).bounds()))
                        .as("“%s” runs into “%s”", words.get(one).text(), words.get(other).text()).isFalse();
            }
        }
    }
}
