package fairpull.app.usecase.planning;

import fairpull.app.task.CancelledException;
import fairpull.app.task.Progress;
import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Hours;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.engine.planning.Search;
import fairpull.io.json.SearchJson;
import fairpull.report.wording.SearchCautionWords;
import fairpull.report.wording.SearchWords;
import fairpull.report.write.TextSearch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/** Finds the days worth choosing within hours and money. */
public final class SearchDays {
    private static final int ALL = 100;

    private SearchDays() {
    }

    /** {@return the answer; figures are in {@code unit}} */
    public static Answer answer(SearchQuestion question, String unit, Progress progress) {
        int[] percent = new int[1];
        SearchAnswer answer = search(question, share -> {
            percent[0] = (int) Math.round(share * ALL);
            progress.reached(percent[0], ALL);
        }, () -> !progress.isCancelled()).orElseThrow(() -> new CancelledException(percent[0], ALL));
        List<String> warnings = new ArrayList<>(SearchCautionWords.folded(question, answer, unit));
        warnings.addAll(SearchWords.warnings(question));
        return new Answer(TextSearch.text(question, answer, unit),
                SearchJson.document(question, answer, unit, warnings, caution -> SearchCautionWords.sentence(caution, question)));
    }

    /**
     * Searches on the thread of the caller.
     *
     * @param progress told the share that is done
     * @param goOn asked often whether to go on
     * @return the answer, with at least one day; empty where the search was stopped
     * @throws UsageException if no day within the limits can be judged
     */
    public static Optional<SearchAnswer> search(SearchQuestion question, DoubleConsumer progress, BooleanSupplier goOn) {
        Optional<SearchAnswer> answer = Search.search(question, progress, goOn);
        answer.filter(found -> found.front().isEmpty()).ifPresent(nothing -> refuse(question, nothing));
        return answer;
    }

    private static void refuse(SearchQuestion question, SearchAnswer nothing) {
        double oneInstall = shortestInstall(question);
        if (question.minutes() < oneInstall) {
            throw new UsageException("--hours", minutes(question.minutes()) + " is shorter than one install, which takes "
                    + minutes(oneInstall) + " with set-up and warm-ups" + shortest(nothing.leastMinutes()));
        }
        if (nothing.daysTried() == 0) {
            throw new UsageException("limits", "no order of up to " + question.space().mostInstalls()
                    + " installs satisfies them all; allow more swaps or installs, or leave out --counterbalanced");
        }
        if (nothing.leastMinutes().isEmpty()) {
            throw new UsageException("limits", "no order they allow can be judged from its own data; allow more --max-installs, or give a "
                    + "record of refit scatter (--refit-df)");
        }
        if (nothing.leastMinutes().getAsDouble() > question.minutes()) {
            throw new UsageException("--hours", "no day of " + minutes(question.minutes()) + " can be judged"
                    + shortest(nothing.leastMinutes()));
        }
        throw new UsageException("--money", "no day that can be judged fits; the cheapest costs "
                + Math.round(nothing.leastMoney().orElseThrow()) + " and the shortest takes "
                + minutes(nothing.leastMinutes().getAsDouble()));
    }

    private static String shortest(OptionalDouble leastMinutes) {
        return leastMinutes.isPresent() ? "; the shortest allowed day that can be judged takes " + minutes(leastMinutes.getAsDouble()) : "";
    }

    private static double shortestInstall(SearchQuestion question) {
        SizeQuestion.Clock clock = question.asked().clock();
        return clock.setUpMinutes() + (question.space().pulls().least() + question.space().warmUps().least()) * clock.intervalMinutes();
    }

    private static String minutes(double minutes) {
        long whole = Math.round(minutes);
        return whole < 60 ? whole + " min" : whole / 60 + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
    }

    /** {@return the hours of every day that may be tried, for its breaks; none where neither start nor break was typed} */
    public static Optional<Hours> hours(String start, List<String> breaks) {
        return WorkingHours.of(new NewPlan.HoursTyped(start, null, breaks)).ofOneDay();
    }

    /** {@return hours as minutes: a bare number means hours} */
    public static double hoursAsMinutes(String option, String text) {
        Amount amount = Amount.parse(text).orElseThrow(() -> new UsageException(option, "expected hours such as 6 or 6h, found “" + text
                + "”"));
        if (!amount.isBare() && amount.unit().quantity() != Quantity.TIME) {
            throw new UsageException(option, "expected hours such as 6, 6h or 360min; “" + amount.unit().symbol() + "” is no unit of time");
        }
        double minutes = Units.MINUTE.fromSi(amount.isBare() ? Units.HOUR.toSi(amount.value()) : amount.si());
        if (!(minutes > 0 && minutes <= 7 * 24 * 60)) {
            throw new UsageException(option, "expected more than 0 hours and at most a week, found “" + text + "”");
        }
        return minutes;
    }
}
