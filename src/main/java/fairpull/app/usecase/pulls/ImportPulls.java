package fairpull.app.usecase.pulls;

import fairpull.app.task.Progress;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.plan.Measure;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Takes exports into a test: all of the files or none. */
public final class ImportPulls {
    private ImportPulls() {
    }

    /**
     * What is to be imported.
     *
     * @param folder the test
     * @param files the exports; one may hold several pulls
     * @param install the install they belong to; empty where file names or headings say
     * @param firstPull the number of the first of them; the next free one where it is not given
     * @param warmUps whether they are warm-ups
     * @param reading how they are to be read
     * @param startedAt when the pull started, for a single file
     * @param places the first pull of each file for which that was said by itself; outranks its name
     */
    public record Request(Path folder, List<Path> files, Optional<String> install, OptionalInt firstPull, boolean warmUps,
            Reading reading, Optional<OffsetDateTime> startedAt, Map<Path, PullId> places) {
        public Request {
            files = List.copyOf(files);
            places = Map.copyOf(places);
        }

        /** A request in which no file has a place of its own. */
        public Request(Path folder, List<Path> files, Optional<String> install, OptionalInt firstPull, boolean warmUps, Reading reading,
                Optional<OffsetDateTime> startedAt) {
            this(folder, files, install, firstPull, warmUps, reading, startedAt, Map.of());
        }
    }

    /**
     * How exports are to be read, where that is said.
     *
     * @param columns which column is which quantity, as typed ({@code power=P wheel:kW}), where the reader's guess is not wanted
     * @param corrected what was said of how the values are corrected
     * @param decimalMark the decimal mark; empty: the file tells, or as remembered for this header
     * @param onePull whether each file is one pull, even where it looks like several
     * @param because why the exports of pulls that are there already are read anew; empty where pulls come in
     */
    public record Reading(List<String> columns, StatedCorrection corrected, Optional<DecimalMark> decimalMark, boolean onePull,
            Optional<String> because) {
    }

    /**
     * A pull that was taken.
     *
     * @param pull which one
     * @param file the file it came from
     * @param values its measures in their own units, by name; empty for a warm-up
     * @param doubts what is not certain about them, one sentence each
     */
    public record Taken(PullId pull, String file, Map<Measure, Double> values, List<String> doubts) {
    }

    /** Imports the files; returns what was taken. */
    public static List<Taken> run(Request request, OffsetDateTime now) throws IOException {
        if (request.startedAt().isPresent() && request.files().size() != 1) {
            throw new UsageException("--at", "the start of one pull, but " + request.files().size() + " files are given");
        }
        return prepare(request, Progress.none()).take(now, Progress.none());
    }

    /** {@return what the files would bring, of which nothing is taken yet; a file that cannot be used says why} */
    public static PreparedImport prepare(Request request, Progress progress) throws IOException {
        return prepare(request, Surface.COMMAND_LINE, progress);
    }

    /** {@return the same, doubts saying what to do on a surface} */
    public static PreparedImport prepare(Request request, Surface surface, Progress progress) throws IOException {
        return new ImportWork(request, surface, List.of()).prepare(progress);
    }

    /** {@return what the files would bring once some records of the day were taken back, which is written together with them} */
    public static PreparedImport prepare(Request request, List<LogRecord> takenBack) throws IOException {
        return new ImportWork(request, Surface.COMMAND_LINE, takenBack).prepare(Progress.none());
    }
}
