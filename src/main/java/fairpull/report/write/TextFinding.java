package fairpull.report.write;

import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.report.wording.CheckWords;
import fairpull.report.wording.ClaimWords;
import fairpull.report.wording.CurveSummary;
import fairpull.report.wording.FindingWords;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.Said;
import fairpull.report.wording.SealWords;
import fairpull.report.wording.SecondaryWords;
import fairpull.report.wording.Subject;
import fairpull.report.wording.TippingWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A finding as plain text for a terminal of 100 columns. */
public final class TextFinding {
    private TextFinding() {
    }

    /** {@return the finding of one measure: verdict, paragraph, figures, notices} */
    public static String text(Finding finding, Subject subject) {
        return finding(finding, subject) + notices(finding.notices(), finding.unit());
    }

    /** {@return the finding of a whole test} */
    public static String text(Judgement judgement) {
        Finding deciding = judgement.deciding();
        StringBuilder text = new StringBuilder();
        text.append(Lines.wrapped(judgement.plan().title(), "")).append(Lines.wrapped(SealWords.line(judgement), ""));
        if (!judgement.plan().remark().isBlank()) {
            text.append(Lines.wrapped(judgement.plan().remark(), ""));
        }
        List<Notice> notices = Stream.concat(judgement.notices().stream(), deciding.notices().stream()).toList();
        List<Notice> alarms = notices.stream().filter(TextFinding::isAlarm).toList();
        text.append(alarms.isEmpty() ? "" : "\n" + notices(alarms, deciding.unit()));
        text.append('\n').append(finding(deciding, Subject.of(judgement.plan(), judgement.plan().question().deciding())));
        judgement.withExcluded().ifPresent(with -> text.append(Lines.wrapped(FindingWords.withExcluded(deciding, with), "")).append('\n'));
        text.append(curve(judgement.curve()));
        text.append(section("Further measures", SecondaryWords.all(judgement)));
        text.append(section("Claims", ClaimWords.all(judgement)));
        text.append(section("Amendments", SealWords.amendments(judgement)));
        return text.append(notices(notices.stream().filter(notice -> !isAlarm(notice)).toList(), deciding.unit())).toString();
    }

    /** {@return the finding of a table of curves} */
    public static String text(CurveFinding curve) {
        return curve(Optional.of(curve));
    }

    private static String curve(Optional<CurveFinding> curve) {
        return curve.map(found -> section("Difference B − A over engine speed", CurveSummary.all(found))).orElse("");
    }

    private static boolean isAlarm(Notice notice) {
        return notice.code().severity() == Notice.Severity.ALARM;
    }

    private static String finding(Finding finding, Subject subject) {
        String head = FindingWords.verdictHead(finding);
        return head + "\n" + "─".repeat(head.length()) + "\n" + Lines.wrapped(FindingWords.paragraph(finding, subject), "") + "\n"
                + Lines.rows(figures(finding)) + Lines.rows(CheckWords.all(finding)) + "\n";
    }

    private static List<Said> figures(Finding finding) {
        List<Said> figures = new ArrayList<>();
        finding.estimate().ifPresent(estimate -> figures.addAll(estimate(finding, estimate)));
        finding.equivalence().ifPresent(tests -> figures.add(new Said("Within ± the worthwhile gain",
                "± " + Numbers.given(tests.margin(), finding.unit()) + ", two one-sided tests " + Numbers.p(tests.pValue()))));
        finding.scatter().ifPresent(scatter -> figures.add(new Said("Scatter of pulls, of refits",
                TippingWords.scatter(scatter.pull(), finding.unit()) + ", "
                        + TippingWords.scatter(Math.sqrt(scatter.refitVariance()), finding.unit()))));
        figures.add(new Said("Tipping scatter", finding.tippingScatter().isPresent()
                ? TippingWords.scatter(finding.tippingScatter().getAsDouble(), finding.unit())
                : "none: no change would be shown even on a rig that refits without scatter"));
        return figures;
    }

    private static List<Said> estimate(Finding finding, Estimate estimate) {
        Numbers numbers = Numbers.of(finding);
        List<Said> figures = new ArrayList<>();
        figures.add(new Said("Change, " + FindingWords.CHANGE, numbers.signed(estimate.change())));
        finding.interval().ifPresent(interval -> figures.add(new Said(Numbers.level(interval.level()) + " interval",
                CheckWords.ends(numbers, interval))));
        figures.add(new Said("Standard error", TippingWords.scatter(estimate.standardError(), finding.unit())));
        figures.add(new Said("t, degrees of freedom, p", Numbers.resolving(estimate.t() / 10, "").bare(estimate.t()) + ", "
                + Numbers.degreesOfFreedom(estimate.degreesOfFreedom()) + ", " + Numbers.p(estimate.pValue())));
        return figures;
    }

    private static String section(String title, List<Said> said) {
        return said.isEmpty() ? "" : title + "\n" + Lines.rows(said) + "\n";
    }

    private static String notices(List<Notice> notices, String unit) {
        StringBuilder text = new StringBuilder();
        notices.stream().sorted(Comparator.comparing((Notice notice) -> notice.code().severity()).reversed()).forEach(notice -> {
            String mark = switch (notice.code().severity()) {
                case ALARM -> "ALARM    ";
                case WARNING -> "Warning  ";
                case INFORMATION -> "Note     ";
            };
            text.append(mark).append(Lines.wrapped(NoticeWords.sentence(notice, unit), " ".repeat(mark.length())).substring(mark.length()));
        });
        return text.toString();
    }
}
