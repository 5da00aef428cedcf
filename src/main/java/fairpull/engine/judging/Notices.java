package fairpull.engine.judging;

import fairpull.domain.finding.Checks.LeaveOneOut;
import fairpull.domain.finding.Checks.Outlier;
import fairpull.domain.finding.Checks.RecordCheck;
import fairpull.domain.finding.Checks.ReturnCheck;
import fairpull.domain.finding.Checks.ScatterFound;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a reader must know about a finding, in a fixed order. */
final class Notices {
    /** Below this p-value the data scatter more than the record says. */
    private static final double RECORD_TOO_SMALL_BELOW = 0.05;

    private final List<Notice> notices = new ArrayList<>();

    Notices ofTable(ModelTable table, JudgeSettings settings) {
        if (!returnsToA(table)) {
            notices.add(Notice.of(Code.NO_RETURN_TO_A));
        }
        if (!table.equalPulls() && settings.refitRecord().isEmpty()) {
            int[] sizes = table.oneWay().sizes();
            notices.add(Notice.of(Code.UNEQUAL_PULLS, (double) Arrays.stream(sizes).min().orElseThrow(),
                    (double) Arrays.stream(sizes).max().orElseThrow()));
        }
        List<String> early = ClockOrder.contradicted(table.rows());
        if (!early.isEmpty()) {
            notices.add(Notice.naming(Code.CLOCK_CONTRADICTS_ORDER, early));
        }
        if (table.pullsIdentical()) {
            notices.add(Notice.of(Code.PULLS_IDENTICAL));
        }
        if (isKnown(settings.refitRecord()) && isKnown(settings.pullRecord())) {
            notices.add(Notice.of(Code.SCATTER_TAKEN_AS_KNOWN));
        }
        return this;
    }

    private static boolean isKnown(Optional<ScatterRecord> record) {
        return record.filter(r -> Double.isInfinite(r.degreesOfFreedom())).isPresent();
    }

    /**
     * A part that comes back after the other within a session excludes drift as the whole of the difference; so do two sessions of
     * which one goes from A to B and one from B to A.
     */
    private static boolean returnsToA(ModelTable table) {
        Map<String, List<Part>> runs = new LinkedHashMap<>();
        for (PullRow row : table.installs()) {
            List<Part> ofSession = runs.computeIfAbsent(row.session(), name -> new ArrayList<>());
            if (ofSession.isEmpty() || ofSession.get(ofSession.size() - 1) != row.part()) {
                ofSession.add(row.part());
            }
        }
        Set<Part> firstOfTwo = new LinkedHashSet<>();
        runs.values().stream().filter(run -> run.size() == 2).forEach(run -> firstOfTwo.add(run.get(0)));
        return firstOfTwo.size() == 2 || runs.values().stream().anyMatch(run -> run.size() > 2);
    }

    Notices ofScatter(Optional<ScatterFound> scatter, Optional<RecordCheck> record) {
        scatter.filter(found -> found.refitVariance() == 0 && found.pull() > 0)
                .ifPresent(found -> notices.add(Notice.of(Code.REFIT_SCATTER_NOT_SEEN)));
        record.filter(check -> check.pValue() < RECORD_TOO_SMALL_BELOW)
                .ifPresent(check -> notices.add(Notice.of(Code.RECORD_TOO_SMALL, check.f(), check.pValue())));
        return this;
    }

    Notices ofReturn(Optional<ReturnCheck> check) {
        check.filter(found -> found.byRecord() && !found.cameBack()).ifPresent(found -> notices.add(
                Notice.of(Code.DID_NOT_COME_BACK, found.difference(), found.withRefit().low(), found.withRefit().high(),
                        found.withRefit().level())));
        return this;
    }

    Notices ofOutliers(List<Outlier> outliers) {
        if (!outliers.isEmpty()) {
            notices.add(Notice.naming(Code.OUTLIERS,
                    outliers.stream().map(outlier -> outlier.install() + " " + outlier.pull()).toList()));
        }
        return this;
    }

    Notices ofLeaveOut(Optional<LeaveOneOut> check, Code code) {
        check.filter(found -> !found.changing().isEmpty()).ifPresent(found -> notices.add(Notice.naming(code, found.changing())));
        return this;
    }

    List<Notice> all() {
        return notices;
    }
}
