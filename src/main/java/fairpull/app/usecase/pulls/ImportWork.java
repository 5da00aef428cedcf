package fairpull.app.usecase.pulls;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.engine.check.Checklist.Looked;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One import: files are read side by side on all cores, and given their pulls in their order. */
final class ImportWork {
    /** So many files are in memory at a time with everything that stands in them. */
    private static final int AT_ONCE = 4 * Math.max(2, Chunks.cores());

    private final ImportPulls.Request request;
    private final Surface surface;
    private final TestFolder test;
    private final TestFolder.Content content;
    private final List<LogRecord> takenBack;
    private final ReadAnew readAnew;
    private final Assignment assignment;
    private final FileCheck check;

    ImportWork(ImportPulls.Request request, Surface surface, List<LogRecord> takenBack) throws IOException {
        this.request = request;
        this.surface = surface;
        this.takenBack = List.copyOf(takenBack);
        this.test = TestFolder.open(request.folder());
        TestFolder.Content onDisk = test.read();
        this.content = onDisk.with(onDisk.log().takingBack(takenBack));
        this.readAnew = new ReadAnew(content.log(), request.reading().because());
        this.assignment = new Assignment(request, content, readAnew);
        this.check = new FileCheck(content, request.reading(), readAnew, surface);
    }

    /** What became of a file: its outcome, or why it is refused. */
    private record Outcome<R>(Optional<R> result, Optional<RuntimeException> refusal) {
    }

    private interface Work<R> {
        R run() throws IOException;
    }

    private static <R> Outcome<R> tried(Work<R> work) {
        try {
            return new Outcome<>(Optional.of(work.run()), Optional.empty());
        } catch (InputException | UsageException refusal) {
            return new Outcome<>(Optional.empty(), Optional.of(refusal));
        } catch (IOException unreadable) {
            return new Outcome<>(Optional.empty(), Optional.of(new InputException(Place.none(),
                    String.valueOf(unreadable.getMessage()), "look whether the file is still there and may be read")));
        }
    }

    PreparedImport prepare(Progress progress) {
        List<Looked> before = PullChecks.looked(test, content);
        List<Outcome<FileCheck.Result>> outcomes = new ArrayList<>();
        for (int from = 0; from < request.files().size(); from += AT_ONCE) {
            outcomes.addAll(batch(request.files().subList(from, Math.min(request.files().size(), from + AT_ONCE)), from, progress));
        }
        refuseDuplicates(outcomes);
        addPairs(before, outcomes);
        List<PreparedImport.Checked> checked = new ArrayList<>();
        for (int file = 0; file < outcomes.size(); file++) {
            Path path = request.files().get(file);
            Optional<RuntimeException> refusal = outcomes.get(file).refusal();
            checked.add(outcomes.get(file).result().map(FileCheck.Result::checked)
                    .orElseGet(() -> new PreparedImport.Checked(path, "", Optional.empty(), List.of(), refusal)));
        }
        return new PreparedImport(request, test, content, takenBack, readAnew, checked);
    }

    private List<Outcome<FileCheck.Result>> batch(List<Path> files, int done, Progress progress) {
        Progress within = new Progress() {
            @Override
            public void reached(int parts, int all) {
                progress.reached(done + parts, request.files().size());
            }

            @Override
            public boolean isCancelled() {
                return progress.isCancelled();
            }
        };
        List<Outcome<FileCheck.Opened>> looks = Chunks.run(files.size(),
                file -> tried(() -> check.open(files.get(file))), Chunks.cores(), quiet(progress));
        List<Outcome<List<PullId>>> pulls = new ArrayList<>();
        for (int file = 0; file < files.size(); file++) {
            Path path = files.get(file);
            Outcome<FileCheck.Opened> look = looks.get(file);
            pulls.add(look.result().isEmpty() ? new Outcome<>(Optional.empty(), look.refusal())
                    : tried(() -> assignment.of(path, look.result().get().pulls())));
        }
        return Chunks.run(files.size(), file -> pulls.get(file).result().isEmpty()
                ? new Outcome<FileCheck.Result>(Optional.empty(), pulls.get(file).refusal())
                : tried(() -> check.of(files.get(file), looks.get(file).result().orElseThrow(), pulls.get(file).result().get())),
                Chunks.cores(), within);
    }

    private static Progress quiet(Progress progress) {
        return new Progress() {
            @Override
            public void reached(int done, int all) {
                // told once the file is checked
            }

            @Override
            public boolean isCancelled() {
                return progress.isCancelled();
            }
        };
    }

    /** Refuses a file whose bytes are those of a pull that is there, or of a file before it. */
    private void refuseDuplicates(List<Outcome<FileCheck.Result>> outcomes) {
        Map<String, PullId> incoming = new HashMap<>();
        for (int file = 0; file < outcomes.size(); file++) {
            if (outcomes.get(file).result().isEmpty()) {
                continue;
            }
            PreparedImport.Checked checked = outcomes.get(file).result().get().checked();
            Optional<PullId> same = checked.pulls().stream().flatMap(pull -> same(checked, pull).stream()).findFirst()
                    .or(() -> Optional.ofNullable(incoming.get(checked.sha256())));
            if (same.isPresent()) {
                outcomes.set(file, new Outcome<>(Optional.empty(), Optional.of(new InputException(Place.of(checked.path().toString()),
                        "the same bytes as pull " + same.get() + ": a file exported twice?", "give the export of this pull"))));
            } else {
                incoming.put(checked.sha256(), checked.pulls().get(0).taken().pull());
            }
        }
    }

    private Optional<PullId> same(PreparedImport.Checked checked, PreparedImport.Checked.OfPull pull) {
        return content.log().pulls().values().stream()
                .filter(taken -> taken.isSameExport(checked.sha256(), pull.numberInFile())
                        && !readAnew.isReplaced(taken.pull(), pull.taken().pull()))
                .map(LogEntry.PullTaken::pull).findFirst();
    }

    /** What pulls show against each other is told once for all of them. */
    private void addPairs(List<Looked> before, List<Outcome<FileCheck.Result>> outcomes) {
        List<Looked> incoming = outcomes.stream().flatMap(outcome -> outcome.result().stream())
                .flatMap(result -> result.pulls().stream()).flatMap(pull -> pull.trace().stream()).toList();
        Map<PullId, List<String>> doubts = PullChecks.pairDoubts(content.plan().question(), before, incoming, surface);
        outcomes.replaceAll(outcome -> new Outcome<>(outcome.result().map(result -> result.with(doubts)), outcome.refusal()));
    }
}
