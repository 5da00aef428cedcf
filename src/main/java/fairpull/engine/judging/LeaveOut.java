package fairpull.engine.judging;

import fairpull.domain.finding.Checks.LeaveOneOut;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.Verdict;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The estimate and the verdict when one pull, or one install, is left out at a time. */
final class LeaveOut {
    private final PullTable table;
    private final JudgeSettings settings;
    private final Verdict verdict;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;
    private final List<String> changing = new ArrayList<>();

    private LeaveOut(PullTable table, JudgeSettings settings, Verdict verdict) {
        this.table = table;
        this.settings = settings;
        this.verdict = verdict;
    }

    /** Leaves out each pull in turn; those without which nothing can be judged are passed over. */
    static Optional<LeaveOneOut> pulls(PullTable table, ModelTable model, JudgeSettings settings, Verdict verdict) {
        LeaveOut out = new LeaveOut(table, settings, verdict);
        for (int k = 0; k < table.rows().size(); k++) {
            PullRow row = table.rows().get(k);
            model.without(k, settings.drift()).ifPresentOrElse(rest -> out.look(name(row), rest),
                    () -> out.without(name(row), other -> other == row));
        }
        return out.found();
    }

    /** Leaves out each install in turn; those without which nothing can be judged are passed over. */
    static Optional<LeaveOneOut> installs(PullTable table, JudgeSettings settings, Verdict verdict) {
        LeaveOut out = new LeaveOut(table, settings, verdict);
        for (String install : table.byInstall().keySet()) {
            out.without(install, row -> row.install().equals(install));
        }
        return out.found();
    }

    /** The name of a pull in notices: its install and its own name, which may hold the install already. */
    static String name(PullRow row) {
        return row.pull().startsWith(row.install() + "-") ? row.pull() : row.install() + " " + row.pull();
    }

    private void without(String name, Predicate<PullRow> leftOut) {
        List<PullRow> rest = table.rows().stream().filter(leftOut.negate()).toList();
        for (Part part : Part.values()) {
            if (rest.stream().noneMatch(row -> row.part() == part)) {
                return;
            }
        }
        look(name, ModelTable.of(new PullTable(table.unit(), table.covariateNames(), rest), settings));
    }

    private void look(String name, ModelTable model) {
        if (!model.changeEstimable()) {
            return;
        }
        CoreFit fit = CoreFit.of(model, settings);
        fit.change().ifPresent(change -> {
            low = Math.min(low, change.change());
            high = Math.max(high, change.change());
            if (!VerdictRule.sameKind(verdict, VerdictRule.of(fit, settings, model.equalPulls()))) {
                changing.add(name);
            }
        });
    }

    private Optional<LeaveOneOut> found() {
        return low <= high ? Optional.of(new LeaveOneOut(low, high, changing)) : Optional.empty();
    }
}
