package fairpull.app.usecase.pulls;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What some files would bring into a test: read, assigned and checked, and not taken yet. */
public final class PreparedImport {
    private final ImportPulls.Request request;
    private final TestFolder test;
    private final TestFolder.Content read;
    private final List<LogRecord> takenBack;
    private final ReadAnew readAnew;
    private final List<Checked> checked;

    PreparedImport(ImportPulls.Request request, TestFolder test, TestFolder.Content read, List<LogRecord> takenBack, ReadAnew readAnew,
            List<Checked> checked) {
        this.request = request;
        this.test = test;
        this.read = read;
        this.takenBack = takenBack;
        this.readAnew = readAnew;
        this.checked = List.copyOf(checked);
    }

    /**
     * A file as it was checked.
     *
     * @param path the file
     * @param pulls what it would bring, in its order; empty where it is refused
     * @param refusal why it cannot be used
     */
    public record FileChecked(Path path, List<ImportPulls.Taken> pulls, Optional<RuntimeException> refusal) {
        public FileChecked {
            pulls = List.copyOf(pulls);
        }

        /** {@return why it cannot be used, in one line without the folder that it lies in; empty where it can} */
        public Optional<String> problem() {
            return refusal.map(fault -> fault instanceof InputException unusable ? unusable.oneLine(Surface.WINDOW)
                    : fault instanceof UsageException misuse ? misuse.problem() : String.valueOf(fault.getMessage()))
                    .map(words -> words.replace(path.toString(), path.getFileName().toString()));
        }
    }

    /** A file and what is needed to take its pulls. */
    record Checked(Path path, String sha256, Optional<Mapping> mapping, List<OfPull> pulls, Optional<RuntimeException> refusal) {
        /** One pull of it. */
        record OfPull(Optional<Integer> numberInFile, ImportPulls.Taken taken) {
        }
    }

    /** {@return the files in the order in which they were given} */
    public List<FileChecked> files() {
        return checked.stream().map(file -> new FileChecked(file.path(), file.pulls().stream().map(Checked.OfPull::taken).toList(),
                file.refusal())).toList();
    }

    /**
     * Takes all of the files.
     *
     * @throws InputException if one of them cannot be used, or has changed since; nothing is taken then
     */
    public List<ImportPulls.Taken> take(OffsetDateTime now, Progress progress) throws IOException {
        return take(now, List.of(), progress);
    }

    /** Takes all of the files, and writes more that is known of their pulls with them. */
    public List<ImportPulls.Taken> take(OffsetDateTime now, List<LogEntry> beside, Progress progress) throws IOException {
        checked.stream().flatMap(file -> file.refusal().stream()).findFirst().ifPresent(refusal -> {
            throw refusal;
        });
        long pulls = checked.stream().mapToLong(file -> file.pulls().size()).sum();
        if (request.startedAt().isPresent() && pulls != 1) {
            throw new UsageException("--at", "the start of one pull, but the file holds " + pulls);
        }
        test.take(now, read, () -> kept(progress), checked.stream().flatMap(file -> file.mapping().stream()).distinct().toList(),
                names -> entries(names, beside));
        return checked.stream().flatMap(file -> file.pulls().stream()).map(Checked.OfPull::taken).toList();
    }

    private List<LogEntry> entries(List<String> names, List<LogEntry> beside) {
        List<LogEntry> entries = new ArrayList<>();
        takenBack.forEach(record -> entries.add(new LogEntry.TakenBack(record.number())));
        for (int file = 0; file < checked.size(); file++) {
            for (Checked.OfPull pull : checked.get(file).pulls()) {
                entries.add(entry(checked.get(file), pull, names.get(file)));
            }
        }
        entries.addAll(beside);
        return entries;
    }

    /** Copies the files into the test; where that is stopped or fails, none of them stays. */
    private List<String> kept(Progress progress) throws IOException {
        List<String> kept = Collections.synchronizedList(new ArrayList<>());
        try {
            return Chunks.run(checked.size(), file -> {
                String name = keep(checked.get(file));
                kept.add(name);
                return name;
            }, Chunks.cores(), progress);
        } catch (RuntimeException stopped) {
            test.dropExports(kept.stream().filter(name -> !name.isEmpty()).toList());
            throw stopped;
        }
    }

    private String keep(Checked file) {
        if (readAnew.because().isPresent()) {
            return "";
        }
        try {
            return test.keepExport(file.path(), file.pulls().get(0).taken().pull().toString(), file.sha256(),
                    readAnew.filesTakenBack());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private LogEntry entry(Checked file, Checked.OfPull pull, String name) {
        PullId which = pull.taken().pull();
        Mapping mapping = file.mapping().orElseThrow();
        return readAnew.entry(new LogEntry.PullTaken(which, request.startedAt(), name, pull.numberInFile(), file.sha256(),
                mapping.fingerprint(), TestFolder.sha256(mapping), mapping.corrected(), Map.of(), Optional.empty()));
    }
}
