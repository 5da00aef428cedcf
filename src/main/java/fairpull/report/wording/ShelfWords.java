package fairpull.report.wording;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Notice;
import fairpull.domain.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** What a list of tests says of each in a few words. */
public final class ShelfWords {
    private ShelfWords() {
    }

    /**
     * How far a test is.
     *
     * @param in counted pulls that came in
     * @param planned counted pulls of the plan
     * @param sealed whether its log names a seal
     * @param over whether the last pull of the plan is in
     * @param amendments how many there are
     */
    public record Progress(int in, int planned, boolean sealed, boolean over, int amendments) {
    }

    /** {@return how far a test is} */
    public static String state(Progress progress) {
        String pulls = progress.in() + " of " + Numbers.count(progress.planned(), "pull");
        String state = progress.over() ? progress.in() >= progress.planned() ? "complete" : "over, " + pulls
                : progress.in() > 0 ? "under way, " + pulls : progress.sealed() ? "sealed" : "planned";
        String amended = progress.amendments() == 0 ? "" : progress.amendments() == 1 ? ", amended"
                : ", amended " + progress.amendments() + " times";
        return state + (progress.sealed() ? "" : ", not sealed") + amended;
    }

    /** {@return both parts} */
    public static String parts(Plan plan) {
        return "A: " + plan.question().partA().strip() + " · B: " + plan.question().partB().strip();
    }

    /** {@return the verdict of a finding} */
    public static String verdict(Finding finding) {
        return FindingWords.verdictHead(finding).split("[,;:] ", 2)[0];
    }

    /** {@return what belongs to the verdict: whether it is worthwhile, why there is none; empty where nothing does} */
    public static String besideVerdict(Finding finding) {
        String[] parts = FindingWords.verdictHead(finding).split("[,;:] ", 2);
        return parts.length < 2 ? "" : parts[1];
    }

    /** {@return the estimated change with its unit; empty where it cannot be judged} */
    public static String change(Finding finding) {
        return finding.estimate().map(estimate -> Numbers.of(finding).signed(estimate.change())).orElse("");
    }

    /** {@return the interval of the change with unit and level; empty where there is none} */
    public static String interval(Finding finding) {
        Numbers numbers = Numbers.of(finding);
        return finding.interval().map(ends -> Numbers.level(ends.level()) + ": " + numbers.signedBare(ends.low()) + " … "
                + numbers.signed(ends.high())).orElse("");
    }

    /** {@return what a reader must know before relying on a verdict; empty where there is no alarm} */
    public static String alarm(List<Notice> notices, String unit) {
        return notices.stream().filter(notice -> notice.code().severity() == Notice.Severity.ALARM)
                .map(notice -> NoticeWords.sentence(notice, unit)).findFirst().orElse("");
    }

    /** {@return how many tests there are, and in which states} */
    public static String count(int all, int complete, int underWay, int ahead, int unreadable) {
        List<String> parts = new ArrayList<>();
        part(parts, complete, "complete");
        part(parts, underWay, "under way");
        part(parts, ahead, "still ahead");
        part(parts, unreadable, "cannot be read");
        return Numbers.count(all, "test") + (parts.isEmpty() ? "" : ": " + String.join(", ", parts)) + ".";
    }

    private static void part(List<String> parts, int number, String what) {
        if (number > 0) {
            parts.add(number + " " + what);
        }
    }
}
