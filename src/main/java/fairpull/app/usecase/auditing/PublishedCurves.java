package fairpull.app.usecase.auditing;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Publication;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedCurve;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.io.folder.Bounded;
import fairpull.io.json.TraceJson;
import fairpull.io.table.CurveFileReader;
import fairpull.io.table.Export;
import fairpull.io.table.ExportReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Reads the curves of a publication, each from where it stands; files lie beside the publication, and are no links. */
final class PublishedCurves {
    private static final long MOST_BYTES = 16L << 20;
    /** A pull of a minute at a hundred rows a second. */
    private static final int MOST_POINTS = 6000;
    private static final int MOST_TABLES = 2;

    private final Path folder;
    /** Power and torque often stand in one table a side: it is kept until the next but one is read. */
    private final Map<String, Export> tables = new LinkedHashMap<>();

    /** Reads curves whose files lie in a folder. */
    PublishedCurves(Path folder) {
        this.folder = folder;
    }

    /** {@return the curves of a publication} */
    static List<CurvePair> of(Publication publication, Path folder) throws IOException {
        PublishedCurves reader = new PublishedCurves(folder);
        List<CurvePair> pairs = new ArrayList<>();
        for (Publication.Curves curves : publication.curves()) {
            pairs.add(reader.pair(curves));
        }
        return pairs;
    }

    /** {@return one pair of curves} */
    CurvePair pair(Publication.Curves curves) throws IOException {
        CurveSeen before = read(curves, curves.before(), Part.A).thinned(MOST_POINTS);
        CurveSeen after = read(curves, curves.after(), Part.B).thinned(MOST_POINTS);
        if (before.unit().quantity() != after.unit().quantity()) {
            throw new InputException(Place.none(), "the curve of " + curves.name() + " is of " + before.unit().quantity().words()
                    + " before and of " + after.unit().quantity().words() + " after", "name the right columns");
        }
        return new CurvePair(curves, before, after);
    }

    private CurveSeen read(Publication.Curves curves, CurveSource source, Part part) throws IOException {
        try {
            return source.match(new CurveSource.Cases<CurveSeen>() {
                @Override
                public CurveSeen table(CurveSource.Table table) {
                    return CurveFileReader.read(export(table.name()), table.column(), curves);
                }

                @Override
                public CurveSeen traced(CurveSource.Traced traced) {
                    return ofTrace(traced, curves, part);
                }

                @Override
                public CurveSeen points(CurveSource.Points points) {
                    Samples exact = Samples.of(new double[points.points().size()]);
                    return new CurveSeen(curves.unit(), curves.speedUnit(), ofPoints(points.points(), point -> point.speed().si()),
                            ofPoints(points.points(), point -> point.value().si()), exact, exact);
                }
            });
        } catch (UncheckedIOException trouble) {
            throw trouble.getCause();
        }
    }

    private Export export(String name) {
        Export known = tables.remove(name);
        Export export = known != null ? known : ExportReader.read(beside(name));
        if (tables.size() == MOST_TABLES) {
            tables.remove(tables.keySet().iterator().next());
        }
        tables.put(name, export);
        return export;
    }

    private static Samples ofPoints(List<CurveSource.Point> points, ToDoubleFunction<CurveSource.Point> value) {
        return Samples.of(points.stream().mapToDouble(value).toArray());
    }

    private Path beside(String name) {
        try {
            Path file = folder.resolve(name);
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new InputException(Place.of(file.toString()), "there is no such file beside the publication",
                        "put the file of the curve into the folder of the publication; a link is not followed");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new InputException(Place.of(file.toString()), "larger than " + (MOST_BYTES >> 20) + " MiB",
                        "a published curve is not that long");
            }
            return file;
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    private CurveSeen ofTrace(CurveSource.Traced traced, Publication.Curves curves, Part part) {
        Path file = beside(traced.name());
        Trace trace;
        try {
            trace = TraceJson.read(Bounded.text(file, MOST_BYTES), file.toString());
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
        TracedCurve curve = curve(trace, part, curves.before().equals(curves.after()), file);
        Unit unit = known(trace.axes().y().unit(), curves.unit(), file);
        Unit speedUnit = known(trace.axes().x().unit(), curves.speedUnit(), file);
        List<TracedPoint> points = rising(curve);
        if (points.size() < 2 || !(speedUnit.toSi(points.get(0).x()) > 0)) {
            throw new InputException(Place.of(file.toString()), "a curve over engine speed has two points or more, at speeds above 0",
                    "trace the curve again");
        }
        return new CurveSeen(unit, speedUnit, ofTraced(points, point -> speedUnit.toSi(point.x())),
                ofTraced(points, point -> unit.toSi(point.y())), ofTraced(points, point -> speedUnit.differenceToSi(point.xError())),
                ofTraced(points, point -> unit.differenceToSi(point.yError())));
    }

    /** The curve of a part; one that is alone in its trace needs no part, unless it would be the one before and the one after. */
    private static TracedCurve curve(Trace trace, Part part, boolean isOfBoth, Path file) {
        boolean alone = trace.curves().size() == 1 && !isOfBoth;
        return trace.curve(part).or(() -> trace.curves().stream().filter(only -> alone).findFirst()).orElseThrow(
                () -> new InputException(Place.of(file.toString()), "the trace holds no curve of part " + part + ", which is the one "
                        + (part == Part.A ? "before" : "after"), "trace both curves, or give each a trace of its own"));
    }

    /** In the order of speed, each speed once. */
    private static List<TracedPoint> rising(TracedCurve curve) {
        List<TracedPoint> rising = new ArrayList<>();
        for (TracedPoint point : curve.points().stream().sorted(Comparator.comparingDouble(TracedPoint::x)).toList()) {
            if (rising.isEmpty() || point.x() > rising.get(rising.size() - 1).x()) {
                rising.add(point);
            }
        }
        return rising;
    }

    private static Samples ofTraced(List<TracedPoint> points, ToDoubleFunction<TracedPoint> value) {
        return Samples.of(points.stream().mapToDouble(value).toArray());
    }

    /** The unit of an axis where it has a known one; otherwise the one said of the curve. */
    private static Unit known(Unit ofAxis, Unit said, Path file) {
        boolean silent = ofAxis.quantity() == Quantity.FRACTION || ofAxis.quantity() == Quantity.OTHER;
        if (!silent && ofAxis.quantity() != said.quantity()) {
            throw new InputException(Place.of(file.toString()), "its axis is in " + ofAxis.symbol() + ", which is no unit of "
                    + said.quantity().words(), "give the curve its unit, or trace it with the right axes");
        }
        return silent ? said : ofAxis;
    }
}
