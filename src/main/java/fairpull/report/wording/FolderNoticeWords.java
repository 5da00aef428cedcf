package fairpull.report.wording;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.Notice;

/** The sentences about a test's folder and day: seal, log, exports, times, gates. */
final class FolderNoticeWords {
    private FolderNoticeWords() {
    }

    static String sentence(Notice notice, Surface surface) {
        return switch (notice.code()) {
            case NOT_SEALED -> "The plan was not sealed, so nothing shows that it was made before the data; seal the next one.";
            case SEALED_AFTER_DATA -> "The plan was sealed only after data had come in, so it could have been made to fit them; "
                    + "seal the next one before the day.";
            case SEALED_AGAIN -> "The plan was sealed " + NoticeWords.whole(notice, 0) + " times; the log names every seal, and "
                    + "only the first "
                    + "can stand for what was meant before the day.";
            case AMENDED_AFTER_DATA -> "After the first data the plan was amended " + times(notice)
                    + "; read the reasons, and take the finding as one made knowing data.";
            case PLAN_CHANGED_BY_HAND -> "The plan is not the one that was sealed and no amendment says why: this is not the "
                    + "finding that was planned; restore the sealed plan, or amend it with a reason.";
            case SEAL_CHANGED_BY_HAND -> "The seal file does not belong to the log: it was changed or replaced by hand; "
                    + "compare its code with the one printed on the run sheet.";
            case LOG_CHANGED_BY_HAND -> "The log was changed by hand: entry " + NoticeWords.whole(notice, 0)
                    + " does not follow from the one before; nothing from there on can be relied on.";
            case EXPORT_CHANGED_BY_HAND -> "Not the files that were imported: " + NoticeWords.names(notice)
                    + "; restore them, or exclude those pulls with the reason.";
            case MAPPING_CHANGED_BY_HAND -> "Read with other columns or units than at import: " + NoticeWords.names(notice)
                    + "; restore the mapping, or read them anew: "
                    + ReadAnewWords.remedy(notice, "--column power=P:kW", surface) + ".";
            default -> ofDay(notice);
        };
    }

    private static String ofDay(Notice notice) {
        return switch (notice.code()) {
            case PULLS_BEFORE_SEAL -> "Started before the plan was sealed, by their times: " + NoticeWords.names(notice)
                    + "; the seal does not show that the plan came before these data.";
            case ORDER_NOT_DRAWN -> "The plan says that its order was drawn, but its seed draws another one, so there is no "
                    + "randomisation test; say that the order was chosen.";
            case CLOCK_CONTRADICTS_ORDER -> "By their times these installs began before the one before them was done: "
                    + "" + NoticeWords.names(notice)
                    + "; return check and drift follow the order of the plan or table, so correct the times or the order.";
            case GATES_NOT_READ -> "Never noted, so these gates could not be held against anything: " + NoticeWords.names(notice)
                    + "; note the readings beside each pull.";
            case PULLS_ABORTED -> "Begun and not finished: " + NoticeWords.names(notice) + "; a pull that is stopped because it "
                    + "feels slow is a pull "
                    + "picked, so read the reasons.";
            case PULLS_READ_ANEW -> "Read anew with other columns or units after they had come in: " + NoticeWords.names(notice)
                    + "; the log keeps both readings, so read the reasons, and look whether every pull is now read alike.";
            case ENTRIES_TAKEN_BACK -> "Written into the log on the day and taken back: " + NoticeWords.names(notice)
                    + "; the log keeps these entries and their exports, and they do not count.";
            case FAR_FROM_EXPECTED -> "Further than half the expected level from it: " + NoticeWords.names(notice)
                    + "; look at units, columns and the expected level.";
            case LOG_CUT_SHORT -> "An unfinished line stands at the end of the log: a write was cut short, or the log was cut by hand; "
                    + "what was written with it is lost.";
            case EXPORT_NOT_IN_LOG -> "Among the exports, but not in the log: " + NoticeWords.names(notice)
                    + "; they are not judged, and entries may have been taken out of the log.";
            case LOG_STATE -> "The log holds " + entries(notice) + " and ends in "
                    + "" + NoticeWords.names(notice) + "; an earlier finding "
                    + "that names more entries, or another code for as many, shows that some were taken out.";
            default -> throw new IllegalArgumentException(notice.code() + " is not about a test's folder");
        };
    }

    private static String entries(Notice notice) {
        return Math.round(notice.figures().get(0)) == 1 ? "1 entry" : NoticeWords.whole(notice, 0) + " entries";
    }

    private static String times(Notice notice) {
        long count = Math.round(notice.figures().get(0));
        return count == 1 ? "once" : count + " times";
    }
}
