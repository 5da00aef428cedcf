package fairpull.report.wording;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Verdict;
import fairpull.domain.finding.Worthwhile;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The finding in plain language: the verdict as a heading, and a paragraph with the figures that carry it. */
public final class FindingWords {
    /** What every figure of a change is: B less A, kept on one line. */
    public static final String CHANGE = "B\u00a0−\u00a0A";

    private FindingWords() {
    }

    /** {@return the verdict as a heading} */
    public static String verdictHead(Finding finding) {
        return finding.verdict().match(new Verdict.Cases<String>() {
            @Override
            public String gain() {
                return gainHead(finding);
            }

            @Override
            public String loss() {
                return "A loss";
            }

            @Override
            public String noDifferenceThatMatters() {
                return "No difference that matters";
            }

            @Override
            public String undecided(Verdict.WhyUndecided why) {
                return "Undecided";
            }

            @Override
            public String cannotBeJudged(Verdict.WhyNotJudged why) {
                return switch (why) {
                    case TOO_FEW_INSTALLS -> "Cannot be judged: too few installs";
                    case TOO_FEW_PULLS -> "Cannot be judged: too few pulls";
                };
            }
        });
    }

    private static String gainHead(Finding finding) {
        return "A gain" + finding.worthwhile().map(worthwhile -> switch (worthwhile) {
            case YES -> ", and shown to be worthwhile";
            case NO -> ", but shown to be less than worthwhile";
            case OPEN -> "; whether it is worthwhile is open";
        }).orElse("");
    }

    /** {@return the finding as a paragraph} */
    public static String paragraph(Finding finding, Subject subject) {
        List<String> sentences = new ArrayList<>();
        if (finding.estimate().isPresent() && finding.interval().isPresent()) {
            sentences.add(change(finding, finding.estimate().get(), subject));
            sentences.add(interval(finding, finding.interval().get()));
        }
        sentences.addAll(reason(finding, subject));
        TippingWords.sentence(finding, subject).ifPresent(sentences::add);
        if (finding.notices().stream().anyMatch(notice -> notice.code() == Notice.Code.NO_RETURN_TO_A)) {
            sentences.add("A was never fitted again after B, so drift over the day is not excluded as the cause.");
        }
        return String.join(" ", sentences);
    }

    /** {@return the finding with the excluded pulls put back, against the one without} */
    public static String withExcluded(Finding without, Finding with) {
        boolean same = without.verdict().words().equals(with.verdict().words());
        return "Without the excluded pulls: " + inShort(without) + ". With them: " + inShort(with) + ". "
                + (same ? "The verdict is the same." : "The verdict is another, so the reasons for leaving them out carry it.");
    }

    private static String inShort(Finding finding) {
        Numbers numbers = Numbers.of(finding);
        return finding.verdict().words()
                + finding.estimate().map(estimate -> ", " + numbers.signed(estimate.change())).orElse("")
                + finding.interval().map(ends -> " (" + Numbers.level(ends.level()) + " interval " + CheckWords.ends(numbers, ends) + ")")
                .orElse("");
    }

    private static String change(Finding finding, Estimate estimate, Subject subject) {
        Numbers numbers = Numbers.of(finding);
        double change = estimate.change();
        String amount = numbers.printsAsZero(change) ? "no different from what it was with "
                : numbers.with(Math.abs(change)) + (change > 0 ? " higher" : " lower") + " than with ";
        return "With " + subject.b() + ", " + subject.measure() + " was " + amount + subject.a() + " on this car, this rig and "
                + days(finding) + " (" + Numbers.count(finding.installs().size(), "install") + ", "
                + Numbers.count(finding.installs().stream().mapToInt(Checks.InstallMean::pulls).sum(), "counted pull") + ").";
    }

    private static String days(Finding finding) {
        long sessions = finding.installs().stream().map(Checks.InstallMean::session).distinct().count();
        return sessions > 1 ? "these " + sessions + " sessions" : "this day";
    }

    private static String interval(Finding finding, Interval interval) {
        Numbers numbers = Numbers.of(finding);
        String level = "The " + (finding.settings().sides() == Sides.ONE ? "one-sided " : "") + Numbers.level(interval.level())
                + " interval ";
        if (Double.isInfinite(interval.low())) {
            return level + "for " + CHANGE + " ends at " + numbers.with(interval.high()) + " and is open below.";
        }
        if (Double.isInfinite(interval.high())) {
            return level + "for " + CHANGE + " begins at " + numbers.with(interval.low()) + " and is open above.";
        }
        return level + "for " + CHANGE + " runs from " + numbers.fromTo(interval.low(), interval.high()) + ".";
    }

    private static List<String> reason(Finding finding, Subject subject) {
        return finding.verdict().match(new Verdict.Cases<List<String>>() {
            @Override
            public List<String> gain() {
                return shown(finding, "gain");
            }

            @Override
            public List<String> loss() {
                return shown(finding, "loss");
            }

            @Override
            public List<String> noDifferenceThatMatters() {
                return List.of(nothingThatMatters(finding));
            }

            @Override
            public List<String> undecided(Verdict.WhyUndecided why) {
                return List.of(why == Verdict.WhyUndecided.INTERVAL_TOO_WIDE ? tooWide(finding) : meansDisagree(finding));
            }

            @Override
            public List<String> cannotBeJudged(Verdict.WhyNotJudged why) {
                return List.of(rawDifference(finding, subject), whyNotJudged(finding, why));
            }
        });
    }

    private static List<String> shown(Finding finding, String what) {
        boolean above = finding.estimate().map(estimate -> estimate.change() > 0).orElse(true);
        String better = finding.settings().better() == Better.LESS ? "; less is better here" : "";
        List<String> sentences = new ArrayList<>();
        sentences.add("All of it lies " + (above ? "above" : "below") + " zero" + better + ", so this is a " + what + ".");
        if (what.equals("gain") && finding.worthwhile().isPresent()) {
            sentences.add(worthwhile(finding.worthwhile().get(), worthwhileGain(finding)));
        }
        return sentences;
    }

    private static String worthwhile(Worthwhile worthwhile, String gain) {
        return switch (worthwhile) {
            case YES -> "It reaches the worthwhile gain of " + gain + " with its nearer end.";
            case NO -> "Even its farther end falls short of the worthwhile gain of " + gain + ".";
            case OPEN -> "It holds the worthwhile gain of " + gain + ", so whether the gain reaches that is open.";
        };
    }

    private static String worthwhileGain(Finding finding) {
        return Numbers.given(finding.settings().worthwhileGain().orElse(Double.NaN), finding.unit());
    }

    private static String nothingThatMatters(Finding finding) {
        String tests = finding.equivalence().map(equivalence -> " (two one-sided tests, " + Numbers.p(equivalence.pValue()) + ")")
                .orElse("");
        OptionalDouble largest = largestSeen(finding);
        // the interval is wider than the two one-sided tests need, so its end may lie beyond the gain that they rule out
        if (largest.isEmpty() || largest.getAsDouble() >= finding.settings().worthwhileGain().orElse(Double.POSITIVE_INFINITY)) {
            return "No change as large as the worthwhile gain of " + worthwhileGain(finding) + " was seen, either way" + tests + ".";
        }
        return "No change larger than " + Numbers.of(finding).with(largest.getAsDouble())
                + " was seen. One as large as the worthwhile gain of " + worthwhileGain(finding) + " is ruled out" + tests + ".";
    }

    private static String tooWide(Finding finding) {
        String matters = finding.settings().worthwhileGain().isPresent()
                ? "; nor is it shown to stay below the worthwhile gain of " + worthwhileGain(finding) : "";
        OptionalDouble largest = largestSeen(finding);
        String size = largest.isEmpty() ? "" : "No change larger than " + Numbers.of(finding).with(largest.getAsDouble())
                + " was seen. ";
        boolean oneSided = finding.settings().sides() == Sides.ONE;
        return size + "The interval holds zero, so " + (oneSided ? "a gain is not shown" : "a change is not shown") + matters + ".";
    }

    /** The end of the interval farther from zero: what a null result may say it has not seen more than. */
    private static OptionalDouble largestSeen(Finding finding) {
        return finding.interval().map(interval -> Math.max(Math.abs(interval.low()), Math.abs(interval.high())))
                .filter(Double::isFinite).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static String meansDisagree(Finding finding) {
        String means = finding.installMeansInterval().map(interval -> ", which gives " + Numbers.of(finding).fromTo(interval.low(),
                interval.high()) + " (" + CheckWords.level(interval) + "),").orElse("");
        return "It lies beyond zero, but the installs have unequal numbers of pulls, and the test on install means" + means
                + " does not agree. With unequal pulls both must, so nothing is decided.";
    }

    private static String rawDifference(Finding finding, Subject subject) {
        double difference = meanOf(finding, Part.B) - meanOf(finding, Part.A);
        Numbers numbers = Numbers.of(finding);
        String amount = numbers.printsAsZero(difference) ? "do not differ"
                : "differ by " + numbers.signed(difference) + " (" + CHANGE + ")";
        return "The plain means of " + subject.measure() + " with " + subject.b() + " and with " + subject.a() + " " + amount + ".";
    }

    private static double meanOf(Finding finding, Part part) {
        return finding.installs().stream().filter(install -> install.part() == part).mapToDouble(Checks.InstallMean::mean)
                .average().orElse(Double.NaN);
    }

    private static String whyNotJudged(Finding finding, Verdict.WhyNotJudged why) {
        return switch (why) {
            case TOO_FEW_INSTALLS -> "With " + finding.installs().stream().map(Checks.InstallMean::install)
                    .collect(Collectors.joining(", ")) + " and no rig record, nothing says how much of that refitting alone would move. "
                    + "More installs, or a record of refit scatter with its degrees of freedom, would let it be judged.";
            case TOO_FEW_PULLS -> "With a single pull in each install and no record, nothing says how much of that is the scatter of "
                    + "pulls. More pulls per install, or a record of pull scatter with its degrees of freedom, would let it be judged.";
        };
    }
}
