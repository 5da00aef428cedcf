package fairpull.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Sides;
import fairpull.domain.search.Costs;
import fairpull.domain.search.FrontDay;
import fairpull.domain.search.DayCaution;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import fairpull.domain.search.SearchSpace;
import fairpull.domain.search.Shortfall;
import fairpull.domain.search.Shortfall.Limit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The front against R, against sizing day by day, and against the equivalences that the search relies on. */
class SearchTest {
    private static final Path FRONT = Path.of("src/test/resources/computed/search-r/front.csv");
    private static final Costs COSTS = new Costs(120, 8, 40, 25);
    private static final double REACH = 1e-9;
    private static final SizeQuestion.Clock WITH_BREAKS = new SizeQuestion.Clock(5, 20, 30, List.of(Optional.of(new Hours(LocalTime.of(9, 0),
            Optional.empty(), List.of(new Break(LocalTime.of(10, 20), 1800), new Break(LocalTime.of(12, 15), 2700))))));

    @Test
    void findsTheFrontThatRFinds() throws IOException {
        List<String> expected = Files.readAllLines(FRONT);
        SearchQuestion question = new SearchQuestion(asked(Drift.NONE, 0),
                new SearchSpace(10, OptionalInt.empty(), true, false, false, new Range(2, 10), new Range(1, 3)), 480, OptionalDouble.of(1500), COSTS);

        List<SearchRow> front = search(question).front();

        assertThat(expected).hasSize(front.size() + 1).hasSizeGreaterThan(10);
        for (int i = 0; i < front.size(); i++) {
            String[] cells = expected.get(i + 1).split(",");
            SearchRow row = front.get(i);
            assertThat(List.of(row.order().length(), row.pulls(), row.warmUps())).as("row %d", i)
                    .containsExactly(Integer.valueOf(cells[0]), Integer.valueOf(cells[1]), Integer.valueOf(cells[2]));
            close(row.seen().minutes(), cells[3]);
            close(row.cost(), cells[4]);
            close(row.seen().degreesOfFreedom().orElseThrow(), cells[5]);
            close(row.seen().standardError().orElseThrow(), cells[6]);
            close(row.detectableGain(), cells[7]);
        }
    }

    /** Up to the first day that finds a gain, the short front is the front of the whole search; where none does, it is all of it. */
    @ParameterizedTest
    @CsvSource({"0, 1000", "4, 4.5", "0, 3.2", "20, 2.5", "4, 0.01"})
    void theShortFrontIsThatOfTheSearchUpToWhatIsEnough(double refitDf, double enough) {
        SearchQuestion question = new SearchQuestion(asked(Drift.LINEAR, refitDf),
                new SearchSpace(8, OptionalInt.empty(), true, true, false, new Range(2, 6), new Range(1, 2)), 420, OptionalDouble.empty(), COSTS);
        List<FrontDay> whole = search(question).front().stream().map(row -> new FrontDay(row.order(), row.pulls(), row.warmUps(),
                row.seen().minutes(), row.detectableGain())).toList();
        int first = (int) whole.stream().takeWhile(day -> day.detectableGain() > enough).count();

        assertThat(Search.front(question, enough)).isEqualTo(whole.subList(0, Math.min(first + 1, whole.size())));
    }

    private static void close(double actual, String expected) {
        double value = Double.parseDouble(expected);
        assertThat(actual).isCloseTo(value, within(1e-6 * value));
    }

    /** Every allowed day sized by itself: none beats a row, and whatever no other day beats is there. */
    @ParameterizedTest
    @CsvSource({"NONE, 0, true, false, false, 9", "NONE, 6, false, false, false, 9", "LINEAR, 0, false, false, false, 9",
        "LINEAR, 11, true, true, false, 9", "QUADRATIC, 0, true, false, false, 9", "QUADRATIC, 4, false, false, false, 2",
        "NONE, 0, true, false, true, 9", "LINEAR, 8, true, false, true, 9"})
    void bruteForceFindsNoBetterDay(Drift drift, double refitDf, boolean firstA, boolean counterbalanced, boolean oneWay, int exchanges) {
        SearchSpace space = new SearchSpace(6, OptionalInt.of(exchanges), firstA, counterbalanced, oneWay, new Range(2, 4), new Range(1, 2));
        noDayIsBetter(new SearchQuestion(asked(drift, refitDf), space, 300, OptionalDouble.of(900), COSTS));
    }

    /** Breaks part installs unequally, so that orders alike without them differ; a day is as long as its clock says. */
    @ParameterizedTest
    @EnumSource(Drift.class)
    void withBreaksNoDayIsBetterEither(Drift drift) {
        SearchSpace space = new SearchSpace(6, OptionalInt.empty(), false, false, false, new Range(2, 4), new Range(1, 1));

        SearchAnswer answer = noDayIsBetter(new SearchQuestion(asked(drift, 0, WITH_BREAKS), space, 400, OptionalDouble.of(1200), COSTS));

        SearchAnswer without = search(new SearchQuestion(asked(drift, 0), space, 400, OptionalDouble.of(1200), COSTS));
        assertThat(answer.leastMinutes().getAsDouble()).isGreaterThan(without.leastMinutes().getAsDouble());
    }

    /** Precision being the same, what a drift passes for decides: by the fit that judges, of every order with as many A and B. */
    @ParameterizedTest
    @CsvSource({"false", "true"})
    void withBreaksTheOrderKeptLeavesTheLeastDriftOnTheClock(boolean counterbalanced) {
        SearchSpace space = new SearchSpace(6, OptionalInt.empty(), true, counterbalanced, false, new Range(2, 4), new Range(1, 1));
        SearchQuestion question = new SearchQuestion(asked(Drift.NONE, 0, WITH_BREAKS), space, 600, OptionalDouble.empty(), COSTS);

        List<SearchRow> front = search(question).front();

        SearchSpace all = new SearchSpace(6, OptionalInt.empty(), true, false, false, new Range(2, 4), new Range(1, 1));
        assertThat(front).hasSizeGreaterThan(1).allSatisfy(row -> {
            long countA = row.order().chars().filter(letter -> letter == 'A').count();
            double least = OrderClasses.orders(all).stream().filter(order -> order.letters().length() == row.order().length())
                    .filter(order -> order.countA() == countA || order.countB() == countA)
                    .mapToDouble(order -> Math.abs(DriftLeft.of(question.sizing(order.letters(), row.pulls(), row.warmUps())).linear()))
                    .min().orElseThrow();
            assertThat(Math.abs(row.linearDriftLeft())).as("%s", row.order()).isCloseTo(least, within(1e-9));
            // half of five minutes
            assertThat(!counterbalanced || Math.abs(row.linearDriftLeft()) <= 2.5 / 60 + 1e-9).isTrue();
        });
    }

    private static SearchAnswer noDayIsBetter(SearchQuestion question) {
        SearchAnswer answer = search(question);

        List<SizeAnswer> days = everyDay(question);
        assertThat(days).hasSizeGreaterThan(10);
        assertThat(answer.front()).isNotEmpty().isSortedAccordingTo((one, other) -> Double.compare(one.seen().minutes(), other.seen().minutes()))
                .isSortedAccordingTo((one, other) -> Double.compare(other.detectableGain(), one.detectableGain()));
        for (SearchRow row : answer.front()) {
            assertThat(days).as("days that beat %s", row).noneMatch(day -> beats(day, row.seen()));
        }
        for (SizeAnswer day : days) {
            assertThat(answer.front()).as("row at least as good as %s", day).anyMatch(row -> row.seen().minutes() <= day.minutes() + REACH
                    && row.detectableGain() <= gain(day) * (1 + REACH));
        }
        return answer;
    }

    private static List<SizeAnswer> everyDay(SearchQuestion question) {
        List<SizeAnswer> days = new ArrayList<>();
        for (OrderShape order : OrderClasses.orders(question.space())) {
            for (int pulls = question.space().pulls().least(); pulls <= question.space().pulls().most(); pulls++) {
                for (int warm = question.space().warmUps().least(); warm <= question.space().warmUps().most(); warm++) {
                    SizeAnswer day = Sizing.figures(question.sizing(order.letters(), pulls, warm));
                    double cost = day.minutes() / 60 * 120 + order.letters().length() * (pulls + warm) * 8
                            + (order.letters().length() - 1) * 40 + 25;
                    if (day.detectableGain().isPresent() && day.minutes() <= question.minutes() && cost <= question.money().getAsDouble()) {
                        days.add(day);
                    }
                }
            }
        }
        return days;
    }

    private static boolean beats(SizeAnswer day, SizeAnswer other) {
        boolean noWorse = day.minutes() <= other.minutes() + REACH && gain(day) <= gain(other) * (1 + REACH);
        boolean better = day.minutes() < other.minutes() - REACH || gain(day) < gain(other) * (1 - REACH);
        return noWorse && better;
    }

    private static double gain(SizeAnswer day) {
        return day.detectableGain().orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Drift.class)
    void everyFigureOfEveryRowIsThatOfSize(Drift drift) {
        SearchQuestion question = new SearchQuestion(asked(drift, 0),
                new SearchSpace(10, OptionalInt.empty(), false, false, false, new Range(2, 10), new Range(1, 3)), 600, OptionalDouble.empty(), COSTS);

        List<SearchRow> front = search(question).front();

        assertThat(front).hasSizeGreaterThan(10).allSatisfy(row -> {
            SizeAnswer size = Sizing.size(question.sizing(row.order(), row.pulls(), row.warmUps()));
            assertThat(row.seen()).isEqualTo(size.withNeeds(OptionalInt.empty(), OptionalInt.empty()));
        });
    }

    /** What each code claims, read off the letters of the order and the figures of the row. */
    @ParameterizedTest
    @CsvSource({"NONE, false", "LINEAR, false", "QUADRATIC, false", "NONE, true", "LINEAR, true"})
    void everyRowIsCautionedAgainstWhatItLacks(Drift drift, boolean oneWay) {
        SearchSpace space = new SearchSpace(7, OptionalInt.empty(), true, false, oneWay, new Range(2, 6), new Range(1, 1));

        List<SearchRow> front = search(new SearchQuestion(asked(drift, 8), space, 480, OptionalDouble.empty(), COSTS)).front();

        assertThat(front).hasSizeGreaterThan(5).allSatisfy(row -> {
            assertThat(row.cautions().contains(DayCaution.NO_RETURN_TO_A)).isEqualTo(row.order().matches("A+B+"));
            assertThat(row.cautions().contains(DayCaution.SINGLE_B_ONE_WAY)).isEqualTo(oneWay && row.order().matches("A*B"));
            assertThat(row.cautions().contains(DayCaution.DRIFT_TOLD_BY_PULLS_ALONE)).isEqualTo(row.seen().limit().isEmpty());
            assertThat(row.cautions().contains(DayCaution.LINEAR_DRIFT_LEFT)).isEqualTo(row.linearDriftLeft() != 0);
            assertThat(row.cautions().contains(DayCaution.CURVATURE_LEFT)).isEqualTo(row.quadraticDriftLeft() != 0);
        });
        assertThat(front.stream().anyMatch(row -> row.cautions().contains(DayCaution.NO_RETURN_TO_A))).isEqualTo(true);
        assertThat(front.stream().anyMatch(row -> row.cautions().contains(DayCaution.SINGLE_B_ONE_WAY))).isEqualTo(oneWay);
        assertThat(front.stream().anyMatch(row -> row.cautions().contains(DayCaution.CURVATURE_LEFT))).isEqualTo(drift != Drift.QUADRATIC);
    }

    /** The claim behind the classes: orders put together have the same precision, however they were written. */
    @ParameterizedTest
    @EnumSource(Drift.class)
    void ordersOfOneClassHaveOnePrecision(Drift drift) {
        SearchSpace all = new SearchSpace(7, OptionalInt.empty(), false, false, false, new Range(2, 2), new Range(1, 1));
        List<OrderShape> preferred = new OrderClasses(all, drift).equallySpaced().preferred();
        int compared = 0;
        for (OrderShape order : OrderClasses.orders(all)) {
            OrderShape kept = preferred.stream().filter(one -> OrderClasses.sameClass(one, order, drift)).findFirst().orElseThrow();
            SizeQuestion ask = asked(drift, 0);
            Optional<Precision> one = precision(ask, order);
            Optional<Precision> other = precision(ask, kept);
            assertThat(one.isPresent()).as("%s and %s", order, kept).isEqualTo(other.isPresent());
            if (one.isPresent()) {
                assertThat(one.get().standardError()).as("%s and %s", order, kept).isCloseTo(other.get().standardError(), relative(other.get().standardError()));
                assertThat(one.get().degreesOfFreedom()).as("%s and %s", order, kept)
                        .isCloseTo(other.get().degreesOfFreedom(), within(1e-6 * other.get().degreesOfFreedom()));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
        assertThat(preferred.size()).isLessThan(compared);
    }

    private static Optional<Precision> precision(SizeQuestion ask, OrderShape order) {
        SizeQuestion question = ask.withSequence(order.letters()).withPulls(2).withWarmUps(1);
        return Precision.of(SequenceDesign.of(question), question);
    }

    private static Offset<Double> relative(double of) {
        return within(1e-9 * of);
    }

    @Test
    void keepsTheOrderWithTheLeastDriftAndAAtBothEnds() {
        SearchSpace three = new SearchSpace(3, OptionalInt.empty(), false, false, false, new Range(2, 2), new Range(1, 1));
        SearchSpace five = new SearchSpace(5, OptionalInt.empty(), true, false, false, new Range(2, 2), new Range(1, 1));

        assertThat(letters(three)).containsExactly("AB", "ABA");
        assertThat(letters(five)).contains("ABBA", "ABABA").doesNotContain("ABAB", "BABAB");
    }

    /** Orders of one class tell a change equally well; of the counterbalanced ones always one can end in A as it began. */
    @ParameterizedTest
    @EnumSource(value = Drift.class, names = {"NONE", "LINEAR"})
    void everyCounterbalancedDayEndsInAAsItBegan(Drift drift) {
        SearchSpace space = new SearchSpace(10, OptionalInt.empty(), true, true, false, new Range(2, 8), new Range(1, 1));
        List<OrderShape> preferred = new OrderClasses(space, drift).equallySpaced().preferred();

        assertThat(preferred).hasSizeGreaterThan(15).allSatisfy(order -> {
            assertThat(order.letters()).startsWith("A").endsWith("A");
            assertThat(order.lean()).isZero();
        });
        // of eight installs, four of each, by hand: of those with A at both ends ABBAABBA is the least bowed (68 to 84)
        assertThat(preferred).extracting(OrderShape::letters).contains("ABA", "ABBA", "ABABA", "ABBAABBA");
        assertThat(search(new SearchQuestion(asked(drift, 0), space, 600, OptionalDouble.empty(), COSTS)).front()).isNotEmpty()
                .allSatisfy(row -> assertThat(row.order()).endsWith("A"));
    }

    private static List<String> letters(SearchSpace space) {
        return new OrderClasses(space, Drift.NONE).equallySpaced().preferred().stream().map(OrderShape::letters).toList();
    }

    @Test
    void aPartThatCannotComeOffIsNeverFollowedByA() {
        SearchSpace oneWay = new SearchSpace(5, OptionalInt.empty(), true, false, true, new Range(2, 2), new Range(1, 1));

        assertThat(OrderClasses.orders(oneWay)).extracting(OrderShape::letters)
                .containsExactlyInAnyOrder("AB", "AAB", "ABB", "AAAB", "AABB", "ABBB", "AAAAB", "AAABB", "AABBB", "ABBBB");
    }

    @Test
    void theShortestAndCheapestDayAreKnownWhereNothingFits() {
        SearchSpace space = new SearchSpace(4, OptionalInt.empty(), true, false, false, new Range(2, 4), new Range(1, 2));

        SearchAnswer answer = search(new SearchQuestion(asked(Drift.NONE, 0), space, 20, OptionalDouble.empty(), COSTS));

        // ABA with two counted pulls and one warm-up: 30 + 9 × 5 + 2 × 20 minutes
        assertThat(answer.front()).isEmpty();
        assertThat(answer.leastMinutes()).hasValue(115);
        assertThat(answer.leastMoney().orElseThrow()).isCloseTo(115 / 60.0 * 120 + 9 * 8 + 2 * 40 + 25, within(1e-9));
    }

    /** A limit is named where the search without it finds a gain smaller by a twentieth, and only there. */
    @ParameterizedTest
    @CsvSource({"180, 10, 10, 0, NONE", "600, 4, 10, 0, NONE", "600, 10, 2, 0, NONE", "2000, 10, 10, 20, NONE", "200, 5, 3, 4, LINEAR",
        "2000, 4, 10, Infinity, NONE"})
    void theLimitsThatBindAreThoseWhoseMovingHelps(double minutes, int installs, int pulls, double refitDf, Drift drift) {
        SearchSpace space = space(installs, pulls);
        OptionalDouble none = OptionalDouble.empty();
        SizeQuestion asked = asked(drift, refitDf).withGain(0.01);

        SearchAnswer answer = search(new SearchQuestion(asked, space, minutes, none, COSTS));

        double enough = least(answer) * 0.95;
        Shortfall shortfall = answer.shortfall().orElseThrow();
        assertThat(shortfall.binds(Limit.HOURS)).isEqualTo(least(search(new SearchQuestion(asked, space, 10000, none, COSTS))) <= enough);
        assertThat(shortfall.binds(Limit.INSTALLS))
                .isEqualTo(least(search(new SearchQuestion(asked, space(10, pulls), minutes, none, COSTS))) <= enough);
        assertThat(shortfall.binds(Limit.PULLS))
                .isEqualTo(least(search(new SearchQuestion(asked, space(installs, 2 * pulls), minutes, none, COSTS))) <= enough);
        assertThat(shortfall.binds(Limit.RECORD)).isEqualTo(least(search(new SearchQuestion(
                asked.withRefitDegreesOfFreedom(Double.POSITIVE_INFINITY), space, minutes, none, COSTS))) <= enough);
        assertThat(shortfall.binds(Limit.MONEY) || shortfall.binds(Limit.SWAPS)).as("neither is limited").isFalse();
        // 0.6·√(2/5)·(1.959964 + 0.841621), by hand: five installs of either, quantiles of the normal distribution from tables
        assertThat(shortfall.outOfReachBelow()).isCloseTo(1.0631, within(5e-4));
    }

    private static SearchSpace space(int installs, int pulls) {
        return new SearchSpace(installs, OptionalInt.empty(), true, false, false, new Range(2, pulls), new Range(1, 1));
    }

    private static double least(SearchAnswer answer) {
        return answer.front().get(answer.front().size() - 1).detectableGain();
    }

    @Test
    void aGainThatIsFoundFallsShortOfNothing() {
        assertThat(search(new SearchQuestion(asked(Drift.NONE, 0), space(10, 10), 600, OptionalDouble.empty(), COSTS)).shortfall()).isEmpty();
    }

    @Test
    void saysHowFarItIsAndStopsWhenAsked() {
        SearchQuestion question = new SearchQuestion(asked(Drift.LINEAR, 0),
                new SearchSpace(6, OptionalInt.empty(), true, false, false, new Range(2, 10), new Range(1, 1)), 600, OptionalDouble.empty(), COSTS);
        List<Double> said = new ArrayList<>();
        int[] asked = new int[1];

        assertThat(Search.search(question, said::add, () -> true)).isPresent();
        assertThat(Search.search(question, share -> { }, () -> ++asked[0] < 5)).isEmpty();

        assertThat(said).hasSizeBetween(10, 100).isSorted().last().isEqualTo(1.0);
        assertThat(asked[0]).isEqualTo(5);
    }

    private static SearchAnswer search(SearchQuestion question) {
        return Search.search(question, share -> { }, () -> true).orElseThrow();
    }

    private static SizeQuestion asked(Drift drift, double refitDf) {
        return asked(drift, refitDf, new SizeQuestion.Clock(5, 20, 30));
    }

    private static SizeQuestion asked(Drift drift, double refitDf, SizeQuestion.Clock clock) {
        return new SizeQuestion("AB", 1, 0, 1.2, 0, 0.6, refitDf, 3, 0.8, 0.05, Sides.TWO, drift, clock);
    }
}
