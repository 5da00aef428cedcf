package fairpull.engine.judging;

import fairpull.domain.finding.Checks.DriftFound;
import fairpull.domain.finding.Checks.LeaveOneOut;
import fairpull.domain.finding.Checks.Outlier;
import fairpull.domain.finding.Checks.Randomisation;
import fairpull.domain.finding.Checks.RecordCheck;
import fairpull.domain.finding.Checks.ReturnCheck;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Judges one measure: is there a change B − A, how large, and what would overturn the answer. The unit of comparison is the install:
 * value = session mean + τ·[part is B] + drift + covariates + refit scatter of the install + pull scatter, by restricted maximum
 * likelihood, with the small-sample adjustment of Kenward and Roger where there is no rig record.
 *
 * <p>Checked against: lme4 and pbkrtest (computed/judge-lme4-pbkrtest), published mixed models, simulated error rates.
 */
public final class Judge {
    private Judge() {
    }

    /**
     * The finding for a table.
     *
     * @param table counted pulls in the order in which they were run
     * @param settings how it is judged
     * @return the finding, all figures in the table's unit
     * @throws IllegalArgumentException if the settings ask for minutes or a covariate that the table lacks, or if the change cannot be
     *     told apart from sessions, drift or covariates
     */
    public static Finding judge(PullTable table, JudgeSettings settings) {
        ModelTable model = ModelTable.of(table, settings);
        CoreFit fit = CoreFit.of(model, settings);
        Verdict verdict = VerdictRule.of(fit, settings, model.equalPulls());
        boolean judged = fit.why().isEmpty();
        Optional<Interval> interval = fit.change().map(change -> change.interval(settings));
        Optional<RecordCheck> recordCheck = BesideVerdict.recordCheck(model, settings);
        Optional<ReturnCheck> returnCheck = BesideVerdict.returnCheck(model, settings);
        Optional<Randomisation> randomisation = judged && settings.drawn() ? Optional.of(BesideVerdict.randomisation(model))
                : Optional.empty();
        Optional<LeaveOneOut> pullOut = judged ? LeaveOut.pulls(table, model, settings, verdict) : Optional.empty();
        Optional<LeaveOneOut> installOut = judged ? LeaveOut.installs(table, settings, verdict) : Optional.empty();
        Optional<DriftFound> drift = judged ? DriftSlope.of(model, settings) : Optional.empty();
        List<Outlier> outliers = BesideVerdict.outliers(model);
        List<Notice> notices = new Notices().ofTable(model, settings).ofScatter(fit.scatter(), recordCheck).ofReturn(returnCheck)
                .ofOutliers(outliers).ofLeaveOut(pullOut, Code.ONE_PULL_DECIDES).ofLeaveOut(installOut, Code.ONE_INSTALL_DECIDES).all();
        return new Finding(table.unit(), settings, verdict, VerdictRule.worthwhile(verdict, interval, settings),
                fit.change().map(change -> change.estimate(settings)), interval,
                settings.worthwhileGain().isEmpty() ? Optional.empty()
                        : fit.change().map(change -> change.equivalence(settings.worthwhileGain().getAsDouble())),
                fit.scatter(), fit.installMeans().map(means -> means.estimate(settings)),
                fit.installMeans().map(means -> means.interval(settings)), TippingScatter.of(model, settings), returnCheck, recordCheck,
                randomisation, drift, pullOut, installOut, outliers, BesideVerdict.installMeans(model), notices);
    }
}
