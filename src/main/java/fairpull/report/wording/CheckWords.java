package fairpull.report.wording;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What each check beside the verdict found. A check that does not apply says so. */
public final class CheckWords {
    private static final double SMALL_P = 0.05;

    private CheckWords() {
    }

    /** {@return all checks of a finding, always in the same order} */
    public static List<Said> all(Finding finding) {
        List<Said> said = new ArrayList<>();
        said.add(returnCheck(finding));
        said.add(drift(finding));
        said.add(record(finding));
        said.add(leaveOneOut("pull", finding.leaveOnePullOut(), finding));
        said.add(leaveOneOut("install", finding.leaveOneInstallOut(), finding));
        said.add(outliers(finding));
        said.add(randomisation(finding));
        said.add(installMeans(finding));
        return List.copyOf(said);
    }

    /** {@return whether the last A agrees with the first} */
    public static Said returnCheck(Finding finding) {
        return finding.returnCheck().map(check -> returnCheck(check, finding)).orElseGet(() -> new Said(
                "Return check not applicable",
                finding.installs().stream().filter(install -> install.part() == Part.A).count() < 2
                        ? "A was fitted once only, so there is no return to compare."
                        : finding.installs().stream().map(Checks.InstallMean::session).distinct().count() == 1
                        ? "With single pulls there is no scatter of pulls to hold the return against."
                        : "It compares the last A with the first within one session; here each session carries its own A."));
    }

    private static Said returnCheck(Checks.ReturnCheck check, Finding finding) {
        Interval pulls = check.pullOnly();
        Interval both = check.withRefit();
        Interval shown = check.byRecord() ? both : pulls;
        Numbers numbers = Numbers.resolving((shown.high() - shown.low()) / 2, finding.unit());
        String seen = "Last A − first A: " + numbers.signed(check.difference()) + "; ";
        String interval = level(shown) + " ";
        if (!check.byRecord()) {
            return new Said("Return: for information", seen + "pull scatter alone gives a " + interval + "of "
                    + numbers.fromTo(pulls.low(), pulls.high())
                    + ". Refitting moves an unchanged car too, and no record says by how much.");
        }
        String basis = isGuess(finding) ? "with the starting guess of refit scatter the " : "with the refit scatter on record the ";
        return new Said(check.cameBack() ? "Came back" : "Did not come back", seen + basis + interval
                + "is " + numbers.fromTo(both.low(), both.high()) + (check.cameBack() ? ", which holds 0." : ", which does not hold 0."));
    }

    /** {@return what changed with the clock} */
    public static Said drift(Finding finding) {
        if (finding.settings().drift() == Drift.NONE) {
            return new Said("Drift not modelled", "The plan names no drift term; the order of installs has to balance it.");
        }
        String kind = finding.settings().drift() == Drift.LINEAR ? "straight-line drift" : "curved drift, its straight part";
        return finding.drift().map(drift -> {
            Numbers numbers = Numbers.resolving(drift.standardError(), finding.unit());
            return new Said("Drift taken out",
                    "By the model of a " + kind + ": " + numbers.signed(drift.perHour()) + " an hour, standard error "
                            + numbers.with(drift.standardError()) + ".");
        }).orElseGet(() -> new Said("Drift not known", "A " + kind + " is in the model, but these data cannot tell its size."));
    }

    /** {@return whether the data scatter as the record, or the guess that stands for it, says} */
    public static Said record(Finding finding) {
        String source = isGuess(finding) ? "starting guess" : "record";
        return finding.recordCheck().map(check -> new Said(
                (check.pValue() < SMALL_P ? "Scatters more than the " : "Scatters as the ") + source + " says",
                "F = " + Numbers.resolving(check.f(), "").bare(check.f()) + " with " + Numbers.degreesOfFreedom(check.df1()) + " and "
                        + Numbers.degreesOfFreedom(check.df2()) + " degrees of freedom, " + Numbers.p(check.pValue()) + "."))
                .orElseGet(() -> new Said("Record check not applicable", finding.settings().refitRecord().isEmpty()
                        ? "Judged without a record of refit scatter." : "Too few installs to hold the " + source + " against."));
    }

    private static boolean isGuess(Finding finding) {
        return finding.settings().refitRecord().filter(ScatterRecord::guess).isPresent();
    }

    private static Said leaveOneOut(String what, Optional<Checks.LeaveOneOut> found, Finding finding) {
        return found.map(range -> new Said(
                range.changing().isEmpty() ? "No single " + what + " decides" : "One " + what + " decides",
                "Leaving out any one " + what + ": " + Numbers.of(finding).signedBare(range.low()) + " … "
                        + Numbers.of(finding).signed(range.high()) + (range.changing().isEmpty() ? "."
                        : "; the verdict is another without " + String.join(", ", range.changing()) + ".")))
                .orElseGet(() -> new Said("Leaving out one " + what + ": not applicable", finding.interval().isEmpty()
                        ? "There is no interval that it could change." : "What is left cannot be judged: there is too little of it."));
    }

    private static Said outliers(Finding finding) {
        if (finding.outliers().isEmpty()) {
            return new Said("No pull stands apart", "None is far from the mean of its install, by generalised extreme studentised "
                    + "deviates at 5" + Numbers.THIN + "%.");
        }
        String names = finding.outliers().stream()
                .map(outlier -> outlier.pull() + " of " + outlier.install() + " by " + Numbers.of(finding).signed(outlier.deviation()))
                .collect(Collectors.joining(", "));
        return new Said(finding.outliers().size() == 1 ? "One pull stands apart" : "Pulls stand apart",
                "From the mean of the install: " + names + ". Kept, and flagged.");
    }

    private static Said randomisation(Finding finding) {
        return finding.randomisation().map(test -> new Said("Order drawn", "Randomisation test: " + Numbers.p(test.pValue())
                + (test.exact() ? ", all " + test.orders() + " orders counted." : ", " + test.orders() + " orders drawn.")))
                .orElseGet(() -> new Said("Randomisation test not applicable", finding.settings().drawn()
                        ? "The order was drawn, but there is nothing to test." : "The order was chosen, not drawn."));
    }

    private static Said installMeans(Finding finding) {
        if (finding.installMeansTest().isEmpty()) {
            return new Said("Install-means test not applicable", "There are too few installs for it.");
        }
        Numbers numbers = Numbers.of(finding);
        String interval = finding.installMeansInterval().map(ends -> ", " + level(ends) + " " + ends(numbers, ends)).orElse("");
        return finding.installMeansTest().map(test -> new Said("Test on install means", numbers.signed(test.change()) + interval + ", "
                + Numbers.p(test.pValue()) + " with " + Numbers.withDegreesOfFreedom(test.degreesOfFreedom())
                + ": the one that anyone can redo.")).get();
    }

    /** {@return the level of an interval with the word, such as “95 % interval”} */
    static String level(Interval interval) {
        return Numbers.level(interval.level()) + " interval";
    }

    /** {@return both ends of an interval, an open one in words} */
    public static String ends(Numbers numbers, Interval interval) {
        if (Double.isInfinite(interval.low())) {
            return "up to " + numbers.with(interval.high());
        }
        return Double.isInfinite(interval.high()) ? numbers.with(interval.low()) + " and above"
                : numbers.fromTo(interval.low(), interval.high());
    }
}
