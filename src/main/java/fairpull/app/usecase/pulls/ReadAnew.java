package fairpull.app.usecase.pulls;

import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads the export of a pull that is there already with other columns, units or correction. The bytes stay: only how they are read
 * changes, for a reason that the log keeps beside the first reading.
 *
 * @param log what came in before
 * @param because the reason; empty where pulls come in for the first time
 */
record ReadAnew(DayLog log, Optional<String> because) {

    /** Refuses a pull that is there where no reason is given, and one that is not there where one is. */
    void checkPresence(Place place, PullId pull) {
        boolean isThere = log.pulls().containsKey(pull);
        if (isThere && because.isEmpty()) {
            throw new InputException(place, "pull " + pull + " is there already",
                    new Remedy("a pull is never replaced; to read its export otherwise give the same file and --because \"…\"; else "
                            + "exclude it with a reason, or name another pull",
                    "a pull is never replaced; leave the one that is there out with a reason, or choose another pull for this file"));
        }
        if (!isThere && because.isPresent()) {
            throw new InputException(place, "pull " + pull + " has not come in, so it cannot be read anew",
                    new Remedy("leave out --because", "bring it in as a new pull"));
        }
    }

    /** Refuses other bytes than those that were kept. */
    void checkBytes(Path file, PullId pull, String sha256) {
        if (because.isPresent() && !log.pulls().get(pull).fileSha256().equals(sha256)) {
            throw new InputException(Place.of(file.toString()), "not the bytes that pull " + pull + " came in with",
                    "only how an export is read can change; exclude the pull with a reason");
        }
    }

    /** {@return whether a pull of the log is one that this import reads anew} */
    boolean isReplaced(PullId pull, PullId now) {
        return because.isPresent() && pull.equals(now);
    }

    /** {@return how the values are corrected, where that is not said again} */
    Optional<Correction> corrected(StatedCorrection stated, Optional<Mapping> remembered) {
        return because.isEmpty() ? stated.standard() : stated.over(remembered.flatMap(Mapping::corrected));
    }

    /** {@return what the log says of a pull: of one read anew, all but the reading stays as it was} */
    LogEntry.PullTaken entry(LogEntry.PullTaken first) {
        if (because.isEmpty()) {
            return first;
        }
        LogEntry.PullTaken before = log.pulls().get(first.pull());
        return new LogEntry.PullTaken(first.pull(), first.startedAt().or(before::startedAt), before.file(), first.numberInFile(),
                first.fileSha256(), first.mapping(), first.mappingSha256(), first.corrected(), before.typedSi(), because);
    }

    /** {@return the names of exports that stay although their pulls were taken back} */
    List<String> filesTakenBack() {
        return log.filesTakenBack();
    }
}
