package fairpull.cli;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.SearchDays;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.search.Costs;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchSpace;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code search}: the days worth choosing. */
@Command(name = "search",
        description = "Tries every order of up to ten installs with every number of pulls and warm-ups within hours and money, and lists "
                + "the days worth choosing: those that no other beats in both length and smallest gain found.",
        footer = {"  fairpull search --hours 6 --pull-scatter 1.2 --refit-scatter 0.6 --gain 3 --unit hp \\",
            "      --money 900 --per-hour 120 --per-pull 4"})
final class SearchVerb extends Verb {
    private static final Pattern RANGE = Pattern.compile("(\\d{1,4})(?:\\s*[-–]\\s*(\\d{1,4}))?");

    @Option(names = "--hours", paramLabel = "HOURS",
            description = "How long the day may last, needed, set-up and breaks included: 6, 6h, 360min.")
    private String hours;

    @Mixin
    private ScatterOptions scatter;

    @Mixin
    private GainOptions gain;

    @Mixin
    private JudgingOptions judging;

    @Mixin
    private Orders orders;

    @Mixin
    private Fillings fillings;

    @Mixin
    private BreakOptions breaks;

    @Mixin
    private Money money;

    @Option(names = "--unit", defaultValue = "", paramLabel = "UNIT",
            description = "Unit of gain and scatter, for the words of the answer.")
    private String unit;

    @Override
    protected void work() {
        Missing missing = new Missing().unless(hours, "--hours", "6");
        gain.require(missing);
        scatter.require(missing);
        missing.refuse();
        SizeQuestion asked = new SizeQuestion("AB", 1, 0, scatter.pullToPlan(), scatter.pullDfToPlan(), scatter.refitToPlan(),
                scatter.refitDfToPlan(), gain.gain(), gain.powerWanted(),
                judging.errorRate(), judging.sides(), judging.drift(), breaks.kept(fillings.clock(), 1));
        double minutes = SearchDays.hoursAsMinutes("--hours", hours);
        SearchQuestion question = new SearchQuestion(asked, orders.space(fillings), minutes, money.limit(), money.costs());
        WatchedWork work = program().watchedWork();
        Answer answer;
        try {
            answer = SearchDays.answer(question, unit, work);
        } finally {
            work.clearLine();
        }
        answer(answer);
    }

    /** Which orders may be tried. */
    static final class Orders {
        @Option(names = "--max-installs", defaultValue = "10", paramLabel = "N",
                description = "Installs at most, 2 to 10; default ${DEFAULT-VALUE}.")
        private int maxInstalls;

        @Option(names = "--max-swaps", paramLabel = "N",
                description = "How often, at most, one part is taken off and the other fitted: ABBA has 2.")
        private Integer maxSwaps;

        @Option(names = "--first-a", description = "A is fitted first; so it is without this option.")
        private boolean firstA;

        @Option(names = "--any-first", description = "A or B is fitted first.")
        private boolean anyFirst;

        @Option(names = "--counterbalanced", description = "A and B stand equally late on average, "
                + "so that a linear drift cancels; with breaks, to within half an interval.")
        private boolean counterbalanced;

        @Option(names = "--one-way", description = "B cannot come off again: A … A B … B only.")
        private boolean oneWay;

        private SearchSpace space(Fillings fillings) {
            contradiction(firstA && anyFirst, "--any-first", "contradicts --first-a; give one of them");
            contradiction(oneWay && anyFirst, "--any-first",
                    "contradicts --one-way: a part that cannot come off again is never fitted first");
            contradiction(oneWay && counterbalanced, "--counterbalanced",
                    "contradicts --one-way: every B stands after every A; leave one of them out");
            OptionalInt swaps = maxSwaps == null ? OptionalInt.empty() : OptionalInt.of(Numbers.whole("--max-swaps", maxSwaps, 1, 9));
            return new SearchSpace(Numbers.whole("--max-installs", maxInstalls, 2, SearchSpace.MOST_INSTALLS), swaps, !anyFirst,
                    counterbalanced, oneWay, fillings.pulls(), fillings.warmUps());
        }
    }

    /** What every install may hold, and the times between. */
    static final class Fillings {
        @Option(names = "--pulls", defaultValue = "2-10", paramLabel = "N-M",
                description = "Counted pulls per install: 2-10, or 5; default ${DEFAULT-VALUE}. "
                        + "The cap of 10 is only this default; up to 100 may be given.")
        private String pulls;

        @Option(names = "--warm-ups", defaultValue = "2", paramLabel = "N-M",
                description = "Warm-up pulls per install: 1-3, or 2; default ${DEFAULT-VALUE}.")
        private String warmUps;

        @Option(names = "--interval", defaultValue = "5", paramLabel = "MIN",
                description = "Minutes from pull to pull; default ${DEFAULT-VALUE}.")
        private String interval;

        @Option(names = "--swap", defaultValue = "20", paramLabel = "MIN",
                description = "Minutes that every install after the first adds; default ${DEFAULT-VALUE}.")
        private String swap;

        @Option(names = "--set-up", defaultValue = "30", paramLabel = "MIN",
                description = "Minutes before the first pull; default ${DEFAULT-VALUE}.")
        private String setUp;

        private Range pulls() {
            return range("--pulls", pulls, 1, 100);
        }

        private Range warmUps() {
            return range("--warm-ups", warmUps, 0, 20);
        }

        private SizeQuestion.Clock clock() {
            return new SizeQuestion.Clock(Numbers.positive("--interval", interval), Numbers.notNegative("--swap", swap),
                    Numbers.notNegative("--set-up", setUp));
        }

        private static Range range(String option, String text, int least, int most) {
            Matcher matcher = RANGE.matcher(text.strip());
            if (!matcher.matches()) {
                throw new UsageException(option, "expected a number or a range such as 2-10, found “" + text + "”");
            }
            int from = Numbers.whole(option, Integer.parseInt(matcher.group(1)), least, most);
            int to = matcher.group(2) == null ? from : Numbers.whole(option, Integer.parseInt(matcher.group(2)), least, most);
            contradiction(to < from, option, "the range ends before it begins, found “" + text + "”");
            return new Range(from, to);
        }
    }

    /** What a day costs, and may cost. */
    static final class Money {
        @Option(names = "--money", paramLabel = "M", description = "What the day may cost, in any currency; needs a cost below.")
        private String limit;

        @Option(names = "--per-hour", defaultValue = "0", paramLabel = "M", description = "Cost of an hour, set-up included.")
        private String perHour;

        @Option(names = "--per-pull", defaultValue = "0", paramLabel = "M", description = "Cost of a pull, warm-ups too.")
        private String perPull;

        @Option(names = "--per-swap", defaultValue = "0", paramLabel = "M", description = "Cost of every install after the first.")
        private String perSwap;

        @Option(names = "--set-up-cost", defaultValue = "0", paramLabel = "M", description = "Cost once, before anything is run.")
        private String setUp;

        private Costs costs() {
            return new Costs(Numbers.notNegative("--per-hour", perHour), Numbers.notNegative("--per-pull", perPull),
                    Numbers.notNegative("--per-swap", perSwap), Numbers.notNegative("--set-up-cost", setUp));
        }

        private OptionalDouble limit() {
            contradiction(limit != null && costs().areNone(), "--money",
                    "a limit of money needs a cost; give --per-hour, --per-pull, --per-swap or --set-up-cost too");
            return limit == null ? OptionalDouble.empty() : OptionalDouble.of(Numbers.positive("--money", limit));
        }
    }

    private static void contradiction(boolean holds, String option, String problem) {
        if (holds) {
            throw new UsageException(option, problem);
        }
    }
}
