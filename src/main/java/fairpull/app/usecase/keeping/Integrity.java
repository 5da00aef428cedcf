package fairpull.app.usecase.keeping;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Is everything as the log says it was: plan, seal, log, exports, mappings? */
public final class Integrity {
    private final TestFolder test;
    private final TestFolder.Content content;
    private final List<Notice> notices = new ArrayList<>();

    private Integrity(TestFolder test, TestFolder.Content content) {
        this.test = test;
        this.content = content;
    }

    /** {@return what does not fit, worst first; nothing where all is as it was} */
    public static List<Notice> check(TestFolder test, TestFolder.Content content) throws IOException {
        Integrity integrity = new Integrity(test, content);
        integrity.logChain();
        integrity.sealAgainstLog();
        integrity.planAgainstLog();
        integrity.exports();
        integrity.mappings();
        integrity.orderOfSealAndData();
        integrity.startsBeforeSeal();
        integrity.logEnd();
        return integrity.notices;
    }

    private void logChain() {
        content.logBrokenAt().ifPresent(number -> notices.add(Notice.of(Code.LOG_CHANGED_BY_HAND, (double) number)));
    }

    private void sealAgainstLog() {
        List<LogEntry.Sealed> seals = content.log().seals();
        Optional<LogEntry.Sealed> last = seals.isEmpty() ? Optional.empty() : Optional.of(seals.get(seals.size() - 1));
        Optional<String> inLog = last.map(LogEntry.Sealed::sealSha256);
        Optional<String> inFile = content.seal().map(TestFolder::sha256);
        if (!inLog.equals(inFile)) {
            notices.add(Notice.of(Code.SEAL_CHANGED_BY_HAND));
        }
    }

    private void planAgainstLog() {
        boolean follows = content.log().planSha256().map(content.planSha256()::equals).orElse(true);
        if (!follows || !amendmentsFollow(content.log())) {
            notices.add(Notice.of(Code.PLAN_CHANGED_BY_HAND));
        }
    }

    /** Each amendment must begin with the plan that the seal or amendment before it left. */
    private static boolean amendmentsFollow(DayLog log) {
        String present = null;
        for (LogRecord record : log.records()) {
            if (record.entry() instanceof LogEntry.Sealed sealed) {
                present = sealed.planSha256();
            } else if (record.entry() instanceof LogEntry.Amended amended) {
                if (!amended.planSha256Before().equals(present)) {
                    return false;
                }
                present = amended.planSha256After();
            }
        }
        return true;
    }

    private void exports() throws IOException {
        Set<String> changed = new LinkedHashSet<>();
        for (LogEntry.PullTaken taken : content.log().pulls().values()) {
            if (taken.file().isEmpty()) {
                continue;
            }
            Path file = test.export(taken.file());
            if (!Files.isRegularFile(file) || !Sha256.of(file).equals(taken.fileSha256())) {
                changed.add(taken.file());
            }
        }
        if (!changed.isEmpty()) {
            notices.add(Notice.naming(Code.EXPORT_CHANGED_BY_HAND, List.copyOf(changed)));
        }
    }

    private void logEnd() throws IOException {
        if (content.logCutShort()) {
            notices.add(Notice.of(Code.LOG_CUT_SHORT));
        }
        List<String> logged = content.log().filesNamed();
        List<String> strays = test.exportNames().stream().filter(name -> !logged.contains(name)).toList();
        if (!strays.isEmpty()) {
            notices.add(Notice.naming(Code.EXPORT_NOT_IN_LOG, strays));
        }
        if (!content.log().records().isEmpty()) {
            notices.add(new Notice(Code.LOG_STATE, List.of((double) content.log().records().size()), List.of(content.logCode())));
        }
    }

    private void mappings() {
        List<String> known = content.mappings().stream().map(TestFolder::sha256).toList();
        List<String> changed = content.log().pulls().values().stream()
                .filter(taken -> !taken.file().isEmpty() && !known.contains(taken.mappingSha256()))
                .map(taken -> taken.pull().toString())
                .toList();
        if (!changed.isEmpty()) {
            notices.add(Notice.naming(Code.MAPPING_CHANGED_BY_HAND, changed));
        }
    }

    private void orderOfSealAndData() {
        int seals = content.log().seals().size();
        if (seals == 0) {
            notices.add(Notice.of(Code.NOT_SEALED));
            return;
        }
        if (seals > 1) {
            notices.add(Notice.of(Code.SEALED_AGAIN, (double) seals));
        }
        int firstSeal = content.log().records().stream().filter(record -> record.entry() instanceof LogEntry.Sealed)
                .mapToInt(LogRecord::number).min().orElseThrow();
        if (content.log().firstData().map(data -> data < firstSeal).orElse(false)) {
            notices.add(Notice.of(Code.SEALED_AFTER_DATA));
        }
    }

    /** The log's order decides what came first, but a start noted before the seal is evidence of its own. */
    private void startsBeforeSeal() {
        Optional<OffsetDateTime> firstSeal = content.log().records().stream().filter(record -> record.entry() instanceof LogEntry.Sealed)
                .map(LogRecord::at).findFirst();
        List<String> early = content.log().pulls().keySet().stream()
                .filter(pull -> firstSeal.isPresent() && content.log().startOf(pull).filter(firstSeal.get()::isAfter).isPresent())
                .map(Object::toString)
                .toList();
        if (!early.isEmpty()) {
            notices.add(Notice.naming(Code.PULLS_BEFORE_SEAL, early));
        }
    }
}
