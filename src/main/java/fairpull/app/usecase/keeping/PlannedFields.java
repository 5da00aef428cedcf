package fairpull.app.usecase.keeping;

import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.pull.LogEntry;
import fairpull.io.json.PlanJson;
import java.util.List;

/** Amendments field by field, so that each change can be said in words. */
public final class PlannedFields {
    private PlannedFields() {
    }

    public static List<AmendmentSeen> of(List<AmendmentSeen> amendments) {
        return amendments.stream().map(seen -> new AmendmentSeen(seen.at(), new LogEntry.Amended(seen.amendment().reason(),
                PlanJson.fields(seen.amendment().changes()), seen.amendment().planSha256Before(), seen.amendment().planSha256After()),
                seen.afterFirstData())).toList();
    }
}
