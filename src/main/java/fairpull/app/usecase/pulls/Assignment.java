package fairpull.app.usecase.pulls;

import fairpull.app.usecase.keeping.Planned;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ExportFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which pulls of the plan the files of an import are: by headings that name them, by the install and the order in which the files and
 * the pulls in them come, or by the names of the files.
 */
final class Assignment {
    private final ImportPulls.Request request;
    private final TestFolder.Content content;
    private final ReadAnew readAnew;
    private final Set<Path> files = new HashSet<>();
    private final Set<PullId> assigned = new HashSet<>();
    private int next;

    Assignment(ImportPulls.Request request, TestFolder.Content content, ReadAnew readAnew) {
        this.request = request;
        this.content = content;
        this.readAnew = readAnew;
        this.next = request.firstPull().orElseGet(() -> readAnew.because().isPresent() ? 1 : nextFree());
    }

    /**
     * Assigns the pulls of the next file, in its order.
     *
     * @throws InputException if they are not in the plan, or there already, or if nothing says which they are
     */
    List<PullId> of(Path path, ExportFile file) {
        Place place = Place.of(path.toString());
        if (!files.add(path)) {
            throw new InputException(place, "the file is given twice", "give each pull a file of its own");
        }
        List<PullId> pulls = pulls(path, place, file);
        for (PullId pull : pulls) {
            if (!assigned.add(pull)) {
                throw new InputException(place, "two files for pull " + pull, "give each pull one file");
            }
            Planned.check(content.plan(), pull);
            readAnew.checkPresence(place, pull);
        }
        return pulls;
    }

    private List<PullId> pulls(Path path, Place place, ExportFile file) {
        boolean onePull = request.reading().onePull();
        if (!onePull && !file.named().isEmpty()) {
            if (request.install().isPresent()) {
                throw new InputException(place, "the file says itself which pulls it holds: " + file.howFound(),
                        "leave out --install, or rename them in a copy of the file");
            }
            return file.named();
        }
        int count = onePull ? 1 : file.pulls();
        PullId first = request.places().get(path);
        if (first != null) {
            return IntStream.range(0, count).mapToObj(i -> new PullId(first.install(), first.warmUp(), first.number() + i)).toList();
        }
        if (request.install().isEmpty() && count > 1) {
            throw new InputException(place, "the file holds " + count + " pulls (" + file.howFound() + ") and does not say which",
                    "say of which install they are: --install B1, or that they are one: --one-pull");
        }
        List<PullId> pulls = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pulls.add(request.install().map(label -> new PullId(label, request.warmUps(), next++)).orElseGet(() -> named(path)));
        }
        return pulls;
    }

    private int nextFree() {
        return request.install().flatMap(label -> content.plan().sequence().installs()
                .filter(install -> install.label().equals(label))
                .flatMap(install -> PlannedClock.pullsOf(install).stream())
                .filter(pull -> pull.warmUp() == request.warmUps())
                .filter(pull -> !content.log().pulls().containsKey(pull) && !content.log().aborted().containsKey(pull))
                .map(PullId::number)
                .findFirst()).orElse(1);
    }

    /** {@return the pull that the name of a file says} */
    static Optional<PullId> byName(Path file) {
        return PullId.ofFileName(file.getFileName().toString());
    }

    private static PullId named(Path file) {
        return byName(file).orElseThrow(() -> new InputException(Place.of(file.toString()), "the name does not say which pull it holds",
                "name it like B1-3.csv (A1-W2.csv for a warm-up), or give --install B1 --pull 3"));
    }
}
