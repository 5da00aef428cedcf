package fairpull.report.wording;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Verdict;
import fairpull.domain.finding.Worthwhile;

/** Why the verdict is what it is, in one sentence for whoever paid for the part. */
public final class WhyWords {
    private final Finding finding;
    private final Numbers numbers;

    private WhyWords(Finding finding) {
        this.finding = finding;
        this.numbers = Numbers.of(finding);
    }

    /** {@return the sentence} */
    public static String sentence(Finding finding) {
        return new WhyWords(finding).sentence();
    }

    private String sentence() {
        return finding.verdict().match(new Verdict.Cases<String>() {
            @Override
            public String gain() {
                return finding.worthwhile().map(WhyWords.this::gain)
                        .orElseGet(() -> "Even the smallest change that " + allowed() + " is a gain: " + least() + ".");
            }

            @Override
            public String loss() {
                return "Even the most favourable change that " + allowed() + " is a loss" + (Double.isFinite(asGain().high())
                        ? ": " + numbers.with(-asGain().high()) : "") + ".";
            }

            @Override
            public String noDifferenceThatMatters() {
                return "Whether gain or loss, a change as large as the " + worthwhile() + " that would be worthwhile is ruled out.";
            }

            @Override
            public String undecided(Verdict.WhyUndecided why) {
                return why == Verdict.WhyUndecided.INTERVAL_TOO_WIDE ? tooWide()
                        : "The installs have unequal numbers of pulls, and the two ways of judging them do not agree.";
            }

            @Override
            public String cannotBeJudged(Verdict.WhyNotJudged why) {
                return why == Verdict.WhyNotJudged.TOO_FEW_INSTALLS
                        ? "Nothing says how much of the difference taking a part off and putting it on again would make by itself."
                        : "Nothing says how much of the difference the scatter of pulls would make by itself.";
            }
        });
    }

    private String gain(Worthwhile worthwhile) {
        return switch (worthwhile) {
            case YES -> "Even the smallest change that " + allowed() + ", a gain of " + least() + ", reaches the " + worthwhile()
                    + " that would be worthwhile.";
            case NO -> "It is a gain, but even the largest that " + allowed() + ", " + numbers.with(asGain().high())
                    + ", falls short of the " + worthwhile() + " that would be worthwhile.";
            case OPEN -> "It is a gain, but the smallest that " + allowed() + ", " + least() + ", is less than the " + worthwhile()
                    + " that would be worthwhile, and the largest is not.";
        };
    }

    private String tooWide() {
        Interval gain = asGain();
        String from = Double.isInfinite(gain.low()) ? "everything up to " + amount(gain.high())
                : Double.isInfinite(gain.high()) ? "everything from " + amount(gain.low()) + " upward"
                : "everything from " + amount(gain.low()) + " to " + amount(gain.high());
        double matters = finding.settings().worthwhileGain().orElse(Double.POSITIVE_INFINITY);
        String besides = gain.high() >= matters ? "no change at all as well as the " + worthwhile() + " that would be worthwhile"
                : "no change at all";
        return "These pulls leave room for " + from + " (" + CheckWords.level(gain) + "): " + besides + ".";
    }

    /** Every figure of it is an end of the interval, so its level stands with it. */
    private String allowed() {
        return "these pulls leave room for" + finding.interval().map(interval -> " (" + CheckWords.level(interval) + ")").orElse("");
    }

    private String amount(double gain) {
        return numbers.printsAsZero(gain) ? "no change" : (gain < 0 ? "a loss of " : "a gain of ") + numbers.with(Math.abs(gain));
    }

    private String least() {
        return numbers.with(asGain().low());
    }

    private String worthwhile() {
        return Numbers.given(finding.settings().worthwhileGain().orElse(Double.NaN), finding.unit());
    }

    /** The interval with a gain above zero, whichever direction that is. */
    private Interval asGain() {
        Interval interval = finding.interval().orElseThrow();
        double one = finding.settings().better().gainOf(interval.low());
        double other = finding.settings().better().gainOf(interval.high());
        return new Interval(interval.level(), Math.min(one, other), Math.max(one, other));
    }
}
