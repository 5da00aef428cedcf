package fairpull.report.wording;

import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Verdict;
import java.util.List;

/** Headings that say what was found. */
public final class HeadingWords {
    private HeadingWords() {
    }

    /** {@return over the day strip} */
    public static String day(Judgement judgement) {
        int sessions = judgement.plan().sequence().sessions().size();
        long installs = judgement.plan().sequence().installs().count();
        return (sessions == 1 ? "The day" : Numbers.count(sessions, "session")) + ": " + Numbers.count(installs, "install")
                + " in the order " + judgement.plan().sequence().letters().replace("|", " | ");
    }

    /** {@return the marks of the day strip, as far as they occur} */
    public static String marks(Judgement judgement) {
        StringBuilder marks = new StringBuilder("A is open, B is hatched; an upright tick is a counted pull");
        for (Fate fate : Fate.values()) {
            if (judgement.pulls().stream().anyMatch(pull -> pull.fate() == fate)) {
                marks.append(switch (fate) {
                    case USED -> "";
                    case WARM_UP -> ", a ring a warm-up";
                    case EXCLUDED -> ", a cross one that is left out";
                    case ABORTED -> ", a short black tick one that was aborted";
                    case AWAITED -> ", a short dotted tick one that is not in yet";
                    case MISSING -> ", a dotted tick one that never came in";
                });
            }
        }
        boolean timed = judgement.pulls().stream().anyMatch(pull -> pull.startedAt().isPresent());
        return marks + ". Beneath, each value, and the mean of each install as a line."
                + (timed ? "" : " No clock times are known: the strip is drawn to the plan’s times.");
    }

    /** {@return over the tipping scale} */
    public static String standing(Finding finding) {
        return finding.verdict().match(new Verdict.Cases<String>() {
            @Override
            public String gain() {
                return "Would it still stand?";
            }

            @Override
            public String loss() {
                return "Would it still stand?";
            }

            @Override
            public String noDifferenceThatMatters() {
                return "Would it still stand?";
            }

            @Override
            public String undecided(Verdict.WhyUndecided why) {
                return "What would decide it?";
            }

            @Override
            public String cannotBeJudged(Verdict.WhyNotJudged why) {
                return "What would let it be judged?";
            }
        });
    }

    /** {@return over the notices} */
    public static String notices(List<Notice> notices) {
        long warnings = notices.stream().filter(notice -> notice.code().severity() == Notice.Severity.WARNING).count();
        return warnings == 0 ? "For information" : "To know before relying on it: " + Numbers.count(warnings, "warning");
    }

    /** {@return over the excluded pulls} */
    public static String excluded(Judgement judgement) {
        long excluded = judgement.pulls().stream().filter(pull -> pull.fate() == Fate.EXCLUDED).count();
        boolean same = judgement.withExcluded().map(with -> with.verdict().words()
                .equals(judgement.deciding().verdict().words())).orElse(true);
        return Numbers.count(excluded, "pull") + " left out; with " + (excluded == 1 ? "it" : "them") + " the verdict "
                + (same ? "is the same" : "is another");
    }

    /** {@return over the amendments} */
    public static String amendments(Judgement judgement) {
        long after = judgement.amendments().stream().filter(amendment -> amendment.afterFirstData()).count();
        return judgement.amendments().isEmpty() ? "No amendments to the plan"
                : Numbers.count(judgement.amendments().size(), "amendment") + ", " + (after == 0 ? "none" : after)
                + " after the first data";
    }
}
