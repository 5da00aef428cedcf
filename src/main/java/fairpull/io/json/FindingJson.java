package fairpull.io.json;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Checks;
import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.FactorSpread;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullCorrection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A finding as JSON: for a plain table the finding alone, for a test with its seal, claims, pulls and amendments. */
public final class FindingJson {
    private FindingJson() {
    }

    /** {@return the finding of a table; the warnings are the sentences of its notices} */
    public static String document(Finding finding, List<String> warnings) {
        return fill(Tree.empty(), finding).trees("secondary", List.of(), (tree, none) -> { }).texts("warnings", warnings).document();
    }

    /** {@return the finding of a test; the warnings are the sentences of all notices} */
    public static String document(Judgement judgement, List<String> warnings) {
        Tree tree = Tree.empty().text("title", judgement.plan().title()).text("measure", judgement.plan().question().deciding().name());
        fill(tree, judgement.deciding());
        judgement.look().ifPresent(look -> tree.tree("look", Tree.empty().whole("number", look.number()).whole("planned", look.planned())
                .whole("afterInstalls", look.afterInstalls()).number("level", look.level()).number("errorRate", look.errorRate())));
        tree.trees("secondary", judgement.secondary(), FindingJson::secondary);
        optional(tree, "curve", judgement.curve().map(CurveJson::tree));
        judgement.withExcluded().ifPresentOrElse(
                with -> tree.tree("withExcludedPulls", fill(Tree.empty(), with)), () -> tree.nothing("withExcludedPulls"));
        judgement.seal().ifPresentOrElse(
                seal -> tree.tree("seal", Tree.empty().text("code", seal.code()).text("planSha256", seal.planSha256())
                        .text("at", seal.at().toString())),
                () -> tree.nothing("seal"));
        tree.trees("claims", judgement.claims(), FindingJson::claim);
        optional(tree, "correctionFactor", FactorSpread.of(judgement.pulls()).map(spread -> Tree.empty()
                .tree("A", Tree.empty().number("least", spread.leastA()).number("largest", spread.largestA()))
                .tree("B", Tree.empty().number("least", spread.leastB()).number("largest", spread.largestB()))));
        tree.trees("pulls", judgement.pulls(), (pull, seen) -> {
            pull.text("pull", seen.pull().toString()).text("fate", words(seen.fate())).text("reason", seen.reason())
                    .number("minutes", seen.minutes());
            seen.correction().ifPresent(correction -> correction(pull, correction));
            judgement.plan().question().measures().forEach(measure ->
                    pull.number(measure.name() + " [" + measure.unit().symbol() + "]",
                            seen.values().getOrDefault(measure.name(), Double.NaN)));
        });
        tree.trees("amendments", judgement.amendments(), (amendment, seen) -> amendment.text("at", seen.at().toString())
                .text("because", seen.amendment().reason()).flag("afterFirstData", seen.afterFirstData())
                .texts("places", seen.amendment().changes().stream().map(change -> change.place()).toList()));
        tree.trees("checks", judgement.checks(), FindingJson::check);
        return tree.texts("warnings", warnings).document();
    }

    private static void claim(Tree tree, ClaimStanding standing) {
        tree.text("claim", standing.claim().words()).text("measure", standing.claim().measure())
                .text("standing", words(standing.standing()));
        standing.against().ifPresent(against -> tree.tree("atSpeed", CurveJson.speed(Tree.empty(), "speed", against.speedRadPerS())
                .number("low", against.interval().low()).number("high", against.interval().high())
                .flag("namedBefore", against.namedBefore())));
    }

    private static void correction(Tree pull, PullCorrection correction) {
        pull.number("correctionFactor", correction.factor()).number("multipliedBy", correction.multiplier())
                .number("airCarriedMinutes", correction.carried().map(PullCorrection.Carried::minutes).orElse(Double.NaN));
    }

    private static void check(Tree tree, CheckOutcome outcome) {
        tree.text("code", words(outcome.code())).text("state", words(outcome.state())).numbers("figures", outcome.figures())
                .texts("pulls", outcome.names());
    }

    private static void secondary(Tree tree, Judgement.Secondary secondary) {
        tree.text("measure", secondary.measure().name());
        fill(tree, secondary.finding());
        tree.number("holmP", secondary.holmP());
    }

    private static Tree fill(Tree tree, Finding finding) {
        tree.text("unit", finding.unit().isEmpty() ? null : finding.unit());
        estimate(tree, finding.estimate());
        interval(tree, "interval", finding.interval());
        optional(tree, "equivalence", finding.equivalence().map(test ->
                Tree.empty().number("margin", test.margin()).number("pValue", test.pValue())));
        optional(tree, "scatter", finding.scatter().map(found ->
                Tree.empty().number("pull", found.pull()).number("refitVariance", found.refitVariance())));
        optional(tree, "installMeans", finding.installMeansTest().map(test -> {
            Tree means = estimate(Tree.empty(), Optional.of(test));
            interval(means, "interval", finding.installMeansInterval());
            return means;
        }));
        tree.text("verdict", finding.verdict().words()).text("reason", finding.verdict().why().map(FindingJson::words).orElse(null));
        tree.text("worthwhile", finding.worthwhile().map(FindingJson::words).orElse(null));
        tree.number("tippingScatter", finding.tippingScatter());
        checks(tree, finding);
        return tree;
    }

    private static void checks(Tree tree, Finding finding) {
        optional(tree, "returnCheck", finding.returnCheck().map(FindingJson::returnCheck));
        optional(tree, "recordCheck", finding.recordCheck().map(check -> Tree.empty().number("F", check.f()).number("df1", check.df1())
                .number("df2", check.df2()).number("pValue", check.pValue())));
        optional(tree, "randomisation", finding.randomisation().map(test -> Tree.empty().number("p", test.pValue())
                .whole("orders", test.orders()).flag("exact", test.exact())));
        optional(tree, "drift", finding.drift().map(drift -> Tree.empty().number("perHour", drift.perHour())
                .number("standardError", drift.standardError())));
        optional(tree, "leaveOnePullOut", finding.leaveOnePullOut().map(FindingJson::leaveOneOut));
        optional(tree, "leaveOneInstallOut", finding.leaveOneInstallOut().map(FindingJson::leaveOneOut));
        tree.trees("outliers", finding.outliers(), (outlier, seen) -> outlier.text("install", seen.install()).text("pull", seen.pull())
                .number("deviation", seen.deviation()));
        tree.trees("installs", finding.installs(), (install, mean) -> install.text("session", mean.session())
                .text("install", mean.install()).text("part", mean.part().name()).whole("pulls", mean.pulls()).number("mean", mean.mean())
                .number("standardDeviation", mean.standardDeviation()));
    }

    private static Tree returnCheck(Checks.ReturnCheck check) {
        Tree tree = Tree.empty().number("difference", check.difference()).number("low", check.pullOnly().low())
                .number("high", check.pullOnly().high());
        if (check.byRecord()) {
            tree.tree("withRefit", Tree.empty().number("low", check.withRefit().low()).number("high", check.withRefit().high())
                    .flag("cameBack", check.cameBack()));
        }
        return tree;
    }

    private static Tree leaveOneOut(Checks.LeaveOneOut range) {
        return Tree.empty().number("low", range.low()).number("high", range.high()).texts("changing", range.changing());
    }

    private static Tree estimate(Tree tree, Optional<Estimate> estimate) {
        Estimate figures = estimate.orElse(new Estimate(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN));
        return tree.number("estimate", figures.change()).number("standardError", figures.standardError())
                .number("degreesOfFreedom", figures.degreesOfFreedom()).number("t", figures.t()).number("pValue", figures.pValue());
    }

    private static void interval(Tree tree, String key, Optional<Interval> interval) {
        optional(tree, key, interval.map(ends ->
                Tree.empty().number("level", ends.level()).number("low", ends.low()).number("high", ends.high())));
    }

    private static void optional(Tree tree, String key, Optional<Tree> value) {
        value.ifPresentOrElse(present -> tree.tree(key, present), () -> tree.nothing(key));
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
