package fairpull.app.usecase.judging;

import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.plan.Claim;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.io.folder.TestFolder;
import java.util.List;

/**
 * Whether a claim named its engine speed before the first data, told by the order of the log alone. A plan that was not sealed by then,
 * or that was changed by hand since, could have been written to fit the data.
 */
final class SpeedsNamed {
    private static final String CLAIMS = "question.claims";

    private final TestFolder.Content content;

    SpeedsNamed(TestFolder.Content content) {
        this.content = content;
    }

    boolean before(Claim claim) {
        String place = CLAIMS + "." + content.plan().question().claims().indexOf(claim);
        return sealedBeforeData() && isAsSealed() && AmendmentSeen.in(content.log()).stream().filter(AmendmentSeen::afterFirstData)
                .flatMap(amendment -> amendment.amendment().changes().stream()).noneMatch(change -> touches(change.place(), place));
    }

    private boolean sealedBeforeData() {
        int firstData = content.log().firstData().orElse(Integer.MAX_VALUE);
        List<LogRecord> records = content.log().records();
        return records.stream().anyMatch(record -> record.entry() instanceof LogEntry.Sealed && record.number() < firstData)
                && records.stream().noneMatch(record -> record.entry() instanceof LogEntry.Sealed && record.number() > firstData);
    }

    private boolean isAsSealed() {
        return content.log().planSha256().filter(content.planSha256()::equals).isPresent();
    }

    /** A change of the claim itself, of something in it, or of all claims together. */
    private static boolean touches(String changed, String claim) {
        return changed.equals(claim) || changed.startsWith(claim + ".") || claim.startsWith(changed + ".");
    }
}
