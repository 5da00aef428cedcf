package fairpull.engine.judging;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.Verdict;
import fairpull.engine.stats.EqualPulls;
import fairpull.engine.stats.MeansFit;
import java.util.Arrays;
import java.util.Optional;

/**
 * Judges many sets of values of one plan: the fit, the interval and the verdict of {@link Judge}, without what stands beside them. Where
 * pulls are equal in number and nothing varies within installs, the fit goes by install means; otherwise it is the judge's
 * own. Not to be shared between threads.
 *
 * <p>Checked against: {@link Judge} (RepeatedJudgeTest).
 */
public final class RepeatedJudge {
    private final ModelTable layout;
    private final JudgeSettings settings;
    private final CriticalValues criticals;
    private final boolean equalPulls;
    private final Optional<EqualPulls> closedForm;

    private RepeatedJudge(ModelTable layout, JudgeSettings settings) {
        this.layout = layout;
        this.settings = settings;
        criticals = new CriticalValues(settings);
        equalPulls = layout.equalPulls();
        closedForm = layout.closedForm(CoreFit.knowledge(settings));
    }

    /**
     * A judge of tables like this one.
     *
     * @param layout a table whose values are not looked at
     * @param settings how it is judged
     * @return the judge
     * @throws IllegalArgumentException if the change cannot be told apart from sessions, drift or covariates
     */
    public static RepeatedJudge of(PullTable layout, JudgeSettings settings) {
        ModelTable model = ModelTable.of(layout, settings);
        model.requireChangeEstimable();
        return new RepeatedJudge(model, settings);
    }

    /**
     * Judges some values.
     *
     * @param values one a pull, in the order of the layout; further ones are not looked at
     * @return where they stand
     */
    public Standing judge(double[] values) {
        if (closedForm.isPresent()) {
            MeansFit.Fit fit = closedForm.get().fit(values);
            return new Standing(CoreFit.ofChange(new TStatement(fit.estimate(), fit.standardError(), fit.degreesOfFreedom())));
        }
        double[] ofLayout = values.length == layout.pulls() ? values : Arrays.copyOf(values, layout.pulls());
        return new Standing(CoreFit.of(layout.withValues(ofLayout), settings));
    }

    /** Where one set of values stands: the fit does not depend on a constant change of B, so it serves any such change. */
    public final class Standing {
        private final CoreFit fit;

        private Standing(CoreFit fit) {
            this.fit = fit;
        }

        /** {@return the verdict if every pull of B were higher by {@code added}} */
        public Verdict verdict(double added) {
            return VerdictRule.of(fit.plus(added), settings, equalPulls, criticals);
        }

        /** {@return whether there is an interval and it holds a change; both are without anything added} */
        public boolean covers(double change) {
            return fit.change().isPresent() && fit.change().get().interval(settings, criticals).holds(change);
        }
    }
}
