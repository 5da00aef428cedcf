package fairpull.app.usecase.tracing;

import fairpull.app.document.OpenedPicture;
import fairpull.app.usecase.UsageException;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Publication.Curves;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.Tracing;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.io.folder.AtomicWrite;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts the curves of a publication beside its file, where it names them. */
public final class KeepCurves {
    private static final long MOST_BYTES = 16L << 20;

    private KeepCurves() {
    }

    /**
     * A table that holds a curve.
     *
     * @param file where it lies now
     * @param column header or number of the column, where it has to be said
     */
    public record Table(Path file, Optional<String> column) {
    }

    /** {@return the curves of two tables, which are copied beside the publication unless they lie there already} */
    public static Curves tables(String name, Unit unit, Table before, Table after, Path publication) throws IOException {
        return new Curves(name, unit, Units.RPM, new CurveSource.Table(beside(before.file(), publication), before.column()),
                new CurveSource.Table(beside(after.file(), publication), after.column()));
    }

    private static String beside(Path file, Path publication) throws IOException {
        Path target = target(file, publication);
        if (!isThere(file, target)) {
            AtomicWrite.bytes(target, Files.readAllBytes(file));
        }
        return target.getFileName().toString();
    }

    private static Path target(Path file, Path publication) {
        return publication.toAbsolutePath().resolveSibling(file.getFileName());
    }

    /** Whether a file lies where it is to be put; refuses to put it in place of another one, and one that is no curve for its size. */
    private static boolean isThere(Path file, Path target) throws IOException {
        if (Files.exists(target)) {
            if (!Files.isSameFile(target, file) && Files.mismatch(target, file) >= 0) {
                throw new UsageException("", target + " is another file of that name; rename one of them, or choose another folder");
            }
            return true;
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new UsageException("", file.getFileName() + " is larger than " + (MOST_BYTES >> 20)
                    + " MiB; a curve of a publication is smaller");
        }
        return false;
    }

    /**
     * Copies the files of the curves of a publication beside the file in which it is going to lie. Either all can be copied or none is;
     * one that is not where it was is left out, as the audit says of it.
     */
    public static void carry(Publication publication, Path from, Path written) throws IOException {
        List<Path> files = publication.curves().stream().flatMap(curves -> Stream.of(curves.before(), curves.after()))
                .flatMap(source -> files(source).stream()).distinct().map(from::resolve).filter(Files::isRegularFile).toList();
        List<Path> missing = new ArrayList<>();
        for (Path file : files) {
            if (!isThere(file, target(file, written))) {
                missing.add(file);
            }
        }
        for (Path file : missing) {
            AtomicWrite.bytes(target(file, written), Files.readAllBytes(file));
        }
    }

    /** A trace has its table beside it, and the picture where that was pasted. */
    private static List<String> files(CurveSource source) {
        return source.match(new CurveSource.Cases<List<String>>() {
            @Override
            public List<String> table(CurveSource.Table table) {
                return List.of(table.name());
            }

            @Override
            public List<String> traced(CurveSource.Traced traced) {
                String stem = traced.name().replaceFirst("(?i)\\.json$", "");
                return List.of(traced.name(), stem + ".csv", stem + ".png");
            }

            @Override
            public List<String> points(CurveSource.Points points) {
                return List.of();
            }
        });
    }

    /** {@return what was traced, as the curves of a publication need it} */
    public static Trace trace(Tracing tracing) {
        Trace trace = TraceChart.trace(tracing);
        if (trace.curve(Part.A).isEmpty() || trace.curve(Part.B).isEmpty()) {
            throw new UsageException("", "Both curves are needed: curve A is the one before, curve B the one after.");
        }
        if (trace.axes().x().unit().quantity() != Quantity.ENGINE_SPEED) {
            throw new UsageException("", "The x axis needs an engine speed with its unit, such as 2000 rpm.");
        }
        return trace;
    }

    /** {@return the curves of a trace, which is saved beside the publication with its table and, where it was pasted, its picture} */
    public static Curves traced(OpenedPicture opened, Tracing tracing, Path publication) throws IOException {
        Trace trace = trace(tracing);
        Path target = free(publication, opened.file().name().replaceFirst("\\.[^.]*$", "") + "-trace");
        TraceChart.save(opened, tracing, target, List.of());
        CurveSource.Traced source = new CurveSource.Traced(target.getFileName().toString());
        return new Curves(trace.axes().y().unit().quantity().words(), trace.axes().y().unit(), trace.axes().x().unit(), source, source);
    }

    private static Path free(Path publication, String stem) {
        return Stream.iterate(1, number -> number + 1).map(number -> stem + (number == 1 ? "" : "-" + number))
                .filter(name -> Stream.of(".json", ".csv", ".png").noneMatch(
                        ending -> Files.exists(publication.toAbsolutePath().resolveSibling(name + ending))))
                .map(name -> publication.toAbsolutePath().resolveSibling(name + ".json")).findFirst().orElseThrow();
    }
}
