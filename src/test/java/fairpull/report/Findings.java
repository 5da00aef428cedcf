package fairpull.report;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.finding.Verdict;
import fairpull.domain.finding.Worthwhile;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Sides;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented findings of every verdict, with figures that look like findings. */
public final class Findings {
    private static final JudgeSettings WITH_RECORD = JudgeSettings.plain().withWorthwhileGain(3)
            .withRecords(Optional.of(new ScatterRecord(0.8, 10)), Optional.of(new ScatterRecord(0.9, 11)));

    private Findings() {
    }

    /** {@return a worthwhile gain of 5.1 hp, judged with a record} */
    public static Finding gain(List<PullSeen> pulls) {
        return gain(pulls, WITH_RECORD.refitRecord());
    }

    /** {@return the same, judged with another record, or a guess in its place} */
    public static Finding gain(List<PullSeen> pulls, Optional<ScatterRecord> refit) {
        return new Finding("hp", WITH_RECORD.withRecords(WITH_RECORD.pullRecord(), refit).withDrift(Drift.LINEAR), new Verdict.Gain(), Optional.of(Worthwhile.YES),
                Optional.of(new Estimate(5.1234, 0.83, 12.4, 6.17, 0.00004)), Optional.of(new Interval(0.95, 3.32, 6.93)),
                Optional.of(new Checks.Equivalence(3, 0.98)), Optional.of(new Checks.ScatterFound(0.41, 0.55)),
                Optional.of(new Estimate(5.08, 0.91, 3, 5.58, 0.011)), Optional.of(new Interval(0.95, 2.18, 7.98)), OptionalDouble.of(2.4),
                Optional.of(new Checks.ReturnCheck(-0.4, new Interval(0.95, -1.3, 0.5), new Interval(0.95, -3.1, 2.3), true)),
                Optional.of(new Checks.RecordCheck(0.64, 3, 13.2, 0.6)), Optional.empty(), Optional.of(new Checks.DriftFound(0.1, 0.14)),
                Optional.of(new Checks.LeaveOneOut(4.8, 5.5, List.of())), Optional.of(new Checks.LeaveOneOut(4.1, 6.2, List.of())),
                List.of(), installs(pulls), List.of());
    }

    /** {@return a loss on own data, where less is better} */
    public static Finding slower() {
        Finding gain = gain(List.of());
        return with(gain, JudgeSettings.plain().looking(Sides.TWO, Better.LESS), new Verdict.Loss(), Optional.empty(), gain.interval());
    }

    /** {@return a gain of −0.123 s where less is better, one-sided: the far end is open} */
    public static Finding quickerOneSided() {
        Finding gain = gain(List.of());
        Finding quicker = with(gain, JudgeSettings.plain().looking(Sides.ONE, Better.LESS).withWorthwhileGain(0.05), new Verdict.Gain(),
                Optional.of(Worthwhile.OPEN), Optional.of(new Interval(0.95, Double.NEGATIVE_INFINITY, -0.034)));
        return withEstimate(inUnit(quicker, "s"), new Estimate(-0.1234, 0.042, 4.2, -2.9, 0.02), OptionalDouble.of(0.06));
    }

    /** {@return a gain with one worthwhile answer} */
    public static Finding gain(Worthwhile worthwhile) {
        Finding gain = gain(List.of());
        return with(gain, gain.settings(), gain.verdict(), Optional.of(worthwhile), gain.interval());
    }

    /** {@return undecided, without a record, never far from zero} */
    public static Finding undecided(String unit) {
        return undecided(unit, List.of());
    }

    /** {@return the same for some pulls} */
    public static Finding undecided(String unit, List<PullSeen> pulls) {
        Finding gain = gain(pulls);
        Finding undecided = with(gain, JudgeSettings.plain().withWorthwhileGain(3),
                new Verdict.Undecided(Verdict.WhyUndecided.INTERVAL_TOO_WIDE), Optional.of(Worthwhile.OPEN),
                Optional.of(new Interval(0.95, -2.9, 4.5)));
        Finding bare = withEstimate(inUnit(undecided, unit), new Estimate(0.8, 0.62, 1.4, 1.29, 0.36), OptionalDouble.of(0.22));
        return new Finding(unit, bare.settings(), bare.verdict(), bare.worthwhile(), bare.estimate(), bare.interval(),
                Optional.of(new Checks.Equivalence(3, 0.09)), bare.scatter(), bare.installMeansTest(), bare.installMeansInterval(),
                bare.tippingScatter(), Optional.of(new Checks.ReturnCheck(0.5, new Interval(0.95, -0.7, 1.7),
                new Interval(0.95, -0.7, 1.7), false)), Optional.empty(), Optional.of(new Checks.Randomisation(0.333, 3, true)),
                Optional.empty(), Optional.of(new Checks.LeaveOneOut(0.4, 1.2, List.of("B1-2"))), bare.leaveOneInstallOut(),
                List.of(new Checks.Outlier("B1", "2", -2.2)), bare.installs(),
                List.of(Notice.of(Notice.Code.REFIT_SCATTER_NOT_SEEN), Notice.naming(Notice.Code.ONE_PULL_DECIDES, List.of("B1-2"))));
    }

    /** {@return beyond zero, but the test on install means does not agree} */
    public static Finding meansDisagree() {
        Finding gain = gain(List.of());
        return with(gain, JudgeSettings.plain(), new Verdict.Undecided(Verdict.WhyUndecided.INSTALL_MEANS_DISAGREE), Optional.empty(),
                gain.interval());
    }

    /** {@return no difference that matters} */
    public static Finding noDifference(List<PullSeen> pulls) {
        Finding gain = gain(pulls);
        Finding none = with(gain, gain.settings(), new Verdict.NoDifferenceThatMatters(), Optional.of(Worthwhile.NO),
                Optional.of(new Interval(0.95, -1.1, 1.6)));
        return new Finding("hp", none.settings(), none.verdict(), none.worthwhile(),
                Optional.of(new Estimate(0.25, 0.61, 9.2, 0.41, 0.69)), none.interval(), Optional.of(new Checks.Equivalence(3, 0.0007)),
                none.scatter(), none.installMeansTest(), none.installMeansInterval(), OptionalDouble.empty(), Optional.empty(),
                none.recordCheck(), Optional.empty(), none.drift(), none.leaveOnePullOut(), none.leaveOneInstallOut(), List.of(),
                none.installs(), List.of());
    }

    /** {@return A and B once each, with nothing known beforehand} */
    public static Finding cannotBeJudged(List<PullSeen> pulls) {
        return new Finding("hp", JudgeSettings.plain().withWorthwhileGain(3),
                new Verdict.CannotBeJudged(Verdict.WhyNotJudged.TOO_FEW_INSTALLS), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.of(1.35), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), installs(pulls),
                List.of(Notice.of(Notice.Code.NO_RETURN_TO_A), Notice.of(Notice.Code.PLANNED_CLOCK_USED)));
    }

    /** {@return the same finding with other notices} */
    public static Finding withNotices(Finding finding, Notice... notices) {
        return new Finding(finding.unit(), finding.settings(), finding.verdict(), finding.worthwhile(), finding.estimate(),
                finding.interval(), finding.equivalence(), finding.scatter(), finding.installMeansTest(), finding.installMeansInterval(),
                finding.tippingScatter(), finding.returnCheck(), finding.recordCheck(), finding.randomisation(), finding.drift(),
                finding.leaveOnePullOut(), finding.leaveOneInstallOut(), finding.outliers(), finding.installs(), List.of(notices));
    }

    /** {@return the same finding in another unit, figures as they are} */
    public static Finding inUnit(Finding finding, String unit) {
        return new Finding(unit, finding.settings(), finding.verdict(), finding.worthwhile(), finding.estimate(),
                finding.interval(), finding.equivalence(), finding.scatter(), finding.installMeansTest(), finding.installMeansInterval(),
                finding.tippingScatter(), finding.returnCheck(), finding.recordCheck(), finding.randomisation(), finding.drift(),
                finding.leaveOnePullOut(), finding.leaveOneInstallOut(), finding.outliers(), finding.installs(), finding.notices());
    }

    /** {@return the same finding with another interval and worthwhile gain} */
    public static Finding around(double change, double low, double high, OptionalDouble worthwhile) {
        JudgeSettings settings = worthwhile.isPresent() ? JudgeSettings.plain().withWorthwhileGain(worthwhile.getAsDouble())
                : JudgeSettings.plain();
        Finding finding = with(gain(List.of()), settings, new Verdict.Gain(), Optional.empty(), Optional.of(new Interval(0.95, low, high)));
        return withEstimate(finding, new Estimate(change, 1, 5, change, 0.02), OptionalDouble.of(2));
    }

    private static Finding with(Finding finding, JudgeSettings settings, Verdict verdict, Optional<Worthwhile> worthwhile,
            Optional<Interval> interval) {
        return new Finding(finding.unit(), settings, verdict, worthwhile, finding.estimate(), interval, finding.equivalence(),
                finding.scatter(), finding.installMeansTest(), finding.installMeansInterval(), finding.tippingScatter(),
                finding.returnCheck(), finding.recordCheck(), finding.randomisation(), finding.drift(), finding.leaveOnePullOut(),
                finding.leaveOneInstallOut(), finding.outliers(), finding.installs(), finding.notices());
    }

    private static Finding withEstimate(Finding finding, Estimate estimate, OptionalDouble tipping) {
        return new Finding(finding.unit(), finding.settings(), finding.verdict(), finding.worthwhile(), Optional.of(estimate),
                finding.interval(), finding.equivalence(), finding.scatter(), finding.installMeansTest(), finding.installMeansInterval(),
                tipping, finding.returnCheck(), finding.recordCheck(), finding.randomisation(), finding.drift(),
                finding.leaveOnePullOut(), finding.leaveOneInstallOut(), finding.outliers(), finding.installs(), finding.notices());
    }

    static List<Checks.InstallMean> installs(List<PullSeen> pulls) {
        Map<String, List<Double>> byInstall = new LinkedHashMap<>();
        pulls.stream().filter(pull -> pull.fate() == Fate.USED).forEach(pull -> byInstall
                .computeIfAbsent(pull.pull().install(), label -> new ArrayList<>()).add(pull.values().get(Examples.POWER.name())));
        List<Checks.InstallMean> means = new ArrayList<>();
        byInstall.forEach((label, values) -> {
            double mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
            double squares = values.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
            means.add(new Checks.InstallMean(session(pulls, label), label, Part.valueOf(label.substring(0, 1)), values.size(), mean,
                    Math.sqrt(squares / (values.size() - 1))));
        });
        return means;
    }

    private static String session(List<PullSeen> pulls, String install) {
        int day = pulls.stream().filter(pull -> pull.pull().install().equals(install)).flatMap(pull -> pull.startedAt().stream())
                .mapToInt(at -> at.getDayOfMonth() - 14).min().orElse(0);
        return List.of("Tuesday", "Wednesday", "Thursday").get(day);
    }
}
