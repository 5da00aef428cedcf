package fairpull.report.wording;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.finding.Verdict;
import fairpull.domain.plan.Part;
import java.util.Optional;

/** Would the verdict still stand? The tipping scatter, worded for each verdict. */
public final class TippingWords {
    private TippingWords() {
    }

    /** {@return the sentence about the tipping scatter, where there is one} */
    public static Optional<String> sentence(Finding finding, Subject subject) {
        if (finding.tippingScatter().isEmpty() || !Double.isFinite(finding.tippingScatter().getAsDouble())) {
            return Optional.empty();
        }
        String tipping = scatter(finding.tippingScatter().getAsDouble(), finding.unit());
        return Optional.of(sentence(finding, subject, tipping) + record(finding));
    }

    private static String sentence(Finding finding, Subject subject, String tipping) {
        return finding.verdict().match(new Verdict.Cases<String>() {
            @Override
            public String gain() {
                return stands("gain");
            }

            @Override
            public String loss() {
                return stands("loss");
            }

            private String stands(String what) {
                return "The " + what + " stands unless refitting alone moves " + subject.measure() + " by more than " + tipping
                        + " (one standard deviation)";
            }

            @Override
            public String noDifferenceThatMatters() {
                return "It would be a " + direction(finding) + ", though one too small to matter, on a rig that refits within " + tipping
                        + " (one standard deviation)";
            }

            @Override
            public String undecided(Verdict.WhyUndecided why) {
                return wouldBe();
            }

            @Override
            public String cannotBeJudged(Verdict.WhyNotJudged why) {
                return wouldBe();
            }

            private String wouldBe() {
                return "It would be a " + direction(finding) + " on a rig that refits within " + tipping + " (one standard deviation)";
            }
        });
    }

    /** {@return what is said on a rig that refits within the tipping scatter, in a few words} */
    public static String below(Finding finding) {
        boolean stands = finding.verdict().words().equals(direction(finding));
        return stands ? direction(finding) + " stands" : "would be a " + direction(finding);
    }

    /** {@return what is said beyond the tipping scatter, in a few words} */
    public static String above(Finding finding) {
        return finding.verdict().words().equals(direction(finding)) ? "no longer stands" : "not shown";
    }

    /** {@return whether the difference seen points towards a gain or a loss} */
    static String direction(Finding finding) {
        double change = finding.estimate().map(estimate -> estimate.change()).orElseGet(() -> raw(finding, Part.B) - raw(finding, Part.A));
        return finding.settings().better().gainOf(change) < 0 ? "loss" : "gain";
    }

    private static double raw(Finding finding, Part part) {
        return finding.installs().stream().filter(install -> install.part() == part).mapToDouble(Checks.InstallMean::mean)
                .average().orElse(0);
    }

    private static String record(Finding finding) {
        return finding.settings().refitRecord().map(record -> "; " + (record.guess() ? "taken beforehand was " : "the rig record says ")
                + recordFigure(record, finding.unit()) + ".").orElse("; there is no record of what this rig does.");
    }

    /** {@return a record with how well it is known} */
    static String recordFigure(ScatterRecord record, String unit) {
        String known = Double.isInfinite(record.degreesOfFreedom()) ? "taken as known"
                : Numbers.withDegreesOfFreedom(record.degreesOfFreedom());
        return Numbers.brief(record.standardDeviation(), unit) + " (" + (record.guess() ? "a starting guess, " : "") + known + ")";
    }

    /** {@return a scatter with two significant digits} */
    public static String scatter(double standardDeviation, String unit) {
        return Numbers.resolving(standardDeviation, unit).with(standardDeviation);
    }
}
