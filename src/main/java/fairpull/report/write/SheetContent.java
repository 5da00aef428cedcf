package fairpull.report.write;

import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.finding.Notice;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Seal;
import java.util.List;
import java.util.Optional;

/**
 * What a run sheet is made from.
 *
 * @param plan the plan in force
 * @param planSha256 its hash
 * @param seal its seal, if there is one
 * @param amendments what was changed since
 * @param alarms what was changed by hand
 */
public record SheetContent(Plan plan, String planSha256, Optional<Seal> seal, List<AmendmentSeen> amendments, List<Notice> alarms) {
    public SheetContent {
        amendments = List.copyOf(amendments);
        alarms = List.copyOf(alarms);
    }
}
