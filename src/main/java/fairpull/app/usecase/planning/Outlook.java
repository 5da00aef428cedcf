package fairpull.app.usecase.planning;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.day.DayFit;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.search.Costs;
import fairpull.engine.planning.DayReview;
import fairpull.engine.planning.Improvements;
import fairpull.engine.planning.PlanReview;
import fairpull.engine.planning.PlanSizing;
import fairpull.report.wording.DayWords;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.OutlookWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a plan can see as it stands, for the panel that is always in view.
 *
 * @param key the figure in large type; empty where nothing can be said yet
 * @param keyMeaning what that figure is
 * @param rows further figures, each with its name
 * @param help what would improve the plan most, in a sentence or two
 * @param cautions what a reader must know before relying on it
 * @param fit when everything happens, and whether it fits
 */
public record Outlook(String key, String keyMeaning, List<Row> rows, List<String> help, List<String> cautions, DayFit fit) {
    /** A figure with its name. */
    public record Row(String name, String figure) {
    }

    public Outlook {
        rows = List.copyOf(rows);
        help = List.copyOf(help);
        cautions = List.copyOf(cautions);
    }

    /** {@return what a plan can see} */
    public static Outlook of(Plan plan) {
        return of(plan, new Costs(0, 0, 0, 0));
    }

    /** {@return what a plan can see, and what it costs where anything costs something} */
    public static Outlook of(Plan plan, Costs costs) {
        DayFit fit = DayReview.of(plan);
        String unit = plan.question().deciding().unit().symbol();
        Optional<SizeQuestion> question = PlanSizing.question(plan);
        Optional<SizeAnswer> answer = question.map(SizePlan::size);
        List<Row> rows = OutlookWords.rows(plan, question, answer, fit, costs).entrySet().stream()
                .map(entry -> new Row(entry.getKey(), entry.getValue())).toList();
        List<String> help = question.isPresent()
                ? OutlookWords.help(Improvements.of(question.get()), unit)
                : List.of(OutlookWords.missing(plan));
        return new Outlook(answer.map(OutlookWords::chance).orElse(""), OutlookWords.chanceOfWhat(plan), rows, help,
                cautions(plan, fit, unit), fit);
    }

    /** {@return what a plan can find, in a sentence, for whoever is about to seal it} */
    public static String beforeSeal(Plan plan) {
        Outlook outlook = of(plan);
        return outlook.key().isEmpty() ? OutlookWords.blind(plan) : OutlookWords.seen(outlook.key(), outlook.keyMeaning());
    }

    private static List<String> cautions(Plan plan, DayFit fit, String unit) {
        List<Notice> notices = new ArrayList<>(PlanReview.review(plan));
        notices.removeIf(notice -> notice.code().severity() == Notice.Severity.INFORMATION
                || notice.code() == Notice.Code.PLAN_NO_WORTHWHILE_GAIN);
        if (leansOnAGuess(plan.rig())) {
            notices.add(Notice.of(Notice.Code.STARTING_GUESS_USED));
        }
        return Stream.concat(notices.stream().map(notice -> NoticeWords.sentence(notice, unit, Surface.WINDOW)),
                DayWords.warnings(fit).stream()).toList();
    }

    private static boolean leansOnAGuess(Rig rig) {
        return Stream.of(rig.pullScatter(), rig.refitScatter()).flatMap(Optional::stream).anyMatch(Scatter::isGuess);
    }
}
