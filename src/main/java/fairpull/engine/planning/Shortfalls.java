package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchSpace;
import fairpull.domain.search.Shortfall;
import fairpull.domain.search.Shortfall.Limit;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Which limits of a search bind: each is moved alone, and the smallest gain that a day then finds is compared with the one found within
 * all of them.
 *
 * <p>Checked against: searches with the limit moved (SearchTest).
 */
final class Shortfalls {
    /** Longer than any day: the longest that may be asked for is a week. */
    private static final double NO_END_MINUTES = 7 * 24 * 60;
    private static final int MOST_PULLS = 100;

    private final SearchQuestion question;
    private final double gainAtInfinity;
    private final double found;

    private Shortfalls(SearchQuestion question, double gainAtInfinity, double found) {
        this.question = question;
        this.gainAtInfinity = gainAtInfinity;
        this.found = found;
    }

    /**
     * What keeps a search from its gain.
     *
     * @param gainAtInfinity the gain found at a standard error of 1 and infinitely many degrees of freedom
     * @param found the smallest gain found within all limits
     */
    static Shortfall of(SearchQuestion question, double gainAtInfinity, double found) {
        Shortfalls limits = new Shortfalls(question, gainAtInfinity, found);
        Set<Limit> binding = EnumSet.noneOf(Limit.class);
        for (Limit limit : Limit.values()) {
            if (limits.binds(limit)) {
                binding.add(limit);
            }
        }
        double half = SearchSpace.MOST_INSTALLS / 2.0;
        return new Shortfall(binding, question.asked().refitScatter() * Math.sqrt(2 / half) * gainAtInfinity);
    }

    private boolean binds(Limit limit) {
        SearchSpace space = question.space();
        SizeQuestion asked = question.asked();
        return switch (limit) {
            case HOURS -> helps(within(asked, space, NO_END_MINUTES, question.money()));
            case MONEY -> question.money().isPresent() && helps(within(asked, space, question.minutes(), OptionalDouble.empty()));
            case INSTALLS -> space.mostInstalls() < SearchSpace.MOST_INSTALLS
                    && helps(asked, with(SearchSpace.MOST_INSTALLS, space.mostExchanges(), space.pulls()));
            case SWAPS -> space.mostExchanges().isPresent()
                    && helps(asked, with(space.mostInstalls(), OptionalInt.empty(), space.pulls()));
            case PULLS -> space.pulls().most() < MOST_PULLS && helps(asked, with(space.mostInstalls(), space.mostExchanges(),
                    new Range(space.pulls().least(), Math.min(MOST_PULLS, 2 * space.pulls().most()))));
            case RECORD -> Double.isFinite(asked.refitDegreesOfFreedom())
                    && helps(asked.withRefitDegreesOfFreedom(Double.POSITIVE_INFINITY), space);
        };
    }

    private SearchSpace with(int installs, OptionalInt exchanges, Range pulls) {
        SearchSpace space = question.space();
        return new SearchSpace(installs, exchanges, space.firstA(), space.counterbalanced(), space.oneWay(), pulls, space.warmUps());
    }

    private SearchQuestion within(SizeQuestion asked, SearchSpace space, double minutes, OptionalDouble money) {
        return new SearchQuestion(asked, space, minutes, money, question.costs());
    }

    private boolean helps(SizeQuestion asked, SearchSpace space) {
        return helps(within(asked, space, question.minutes(), question.money()));
    }

    /** Whether some day of another question finds a gain that is smaller by enough; the most precise are looked at first. */
    private boolean helps(SearchQuestion moved) {
        double enough = found * (1 - Shortfall.WORTH_NAMING);
        List<SearchDay> days = SearchDaysLaidOut.of(moved, () -> true).orElseThrow().days().stream().filter(SearchDay::isAffordable)
                .filter(day -> day.standardErrorAtLeast() * gainAtInfinity <= enough)
                .sorted(Comparator.comparingDouble(SearchDay::standardErrorAtLeast)).toList();
        return days.stream().anyMatch(day -> day.precision().filter(precision -> Sizing.power(precision, enough, day.sizing())
                >= moved.asked().powerWanted()).isPresent());
    }
}
