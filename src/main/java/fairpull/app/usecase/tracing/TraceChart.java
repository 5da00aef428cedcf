package fairpull.app.usecase.tracing;

import fairpull.app.document.OpenedPicture;
import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedLine;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.tracing.Tracing;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.engine.tracing.Calibration;
import fairpull.engine.tracing.Follower;
import fairpull.engine.tracing.Snapping;
import fairpull.engine.tracing.Thinning;
import fairpull.engine.tracing.TraceReading;
import fairpull.io.folder.AtomicWrite;
import fairpull.io.json.TraceJson;
import fairpull.io.picture.PictureReader;
import fairpull.io.table.TraceWriter;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.TraceWords;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Traces the curves of a chart in a picture. */
public final class TraceChart {
    private static final String JSON = ".json";

    private TraceChart() {
    }

    /**
     * What following a line gave.
     *
     * @param line the line; empty where there is none at the click
     * @param sentences what to say about it
     */
    public record Followed(Optional<FollowedLine> line, List<String> sentences) {
    }

    /** {@return the picture in a file} */
    public static OpenedPicture open(Path file) throws IOException {
        PictureReader.Loaded loaded = PictureReader.read(file);
        return new OpenedPicture(loaded.file(), loaded.picture(), loaded.lossy(), Optional.empty());
    }

    /** {@return a picture from the clipboard, given as a PNG} */
    public static OpenedPicture pasted(byte[] png) {
        PictureReader.Loaded loaded = PictureReader.read(png, "pasted.png");
        return new OpenedPicture(loaded.file(), loaded.picture(), false, Optional.of(png));
    }

    /**
     * Follows the line at a click to both sides.
     *
     * @param longestGapPx bridged where it is interrupted
     * @param stepPx pixels from one point to the next
     */
    public static Followed follow(OpenedPicture opened, Tracing tracing, PixelPoint click, int longestGapPx, int stepPx) {
        Optional<FollowedLine> line = Follower.follow(opened.picture(), click, longestGapPx).map(found -> Thinning.of(found, stepPx));
        if (line.isEmpty()) {
            return new Followed(line, List.of("There is no line at the click: click on the line itself, where it stands alone."));
        }
        return new Followed(line, TraceWords.followed(line.get(), place -> place(tracing, place), opened.lossy()));
    }

    /** {@return a click on a curve: moved to the middle of its line where that is near, otherwise as it is} */
    public static LinePoint point(Picture picture, TracedLine line, PixelPoint click) {
        Optional<LinePoint> snapped = line.colour().isEmpty() ? Optional.empty()
                : Snapping.nearest(picture, line.colour().getAsInt(), click);
        return snapped.orElseGet(() -> new LinePoint(click, 0, PointSource.PLACED));
    }

    /** {@return how a place is called: by its value on the x axis once that is known, in pixels before} */
    public static String place(Tracing tracing, PixelPoint place) {
        return calibration(tracing).map(known -> Numbers.given(rounded(known.x(place)), symbol(tracing.x().unit())))
                .orElseGet(() -> Math.round(place.xPx()) + " pixels from the left");
    }

    /** {@return both values of a place once the axes are known, such as {@code 4510 rpm, 123.4 kW}} */
    public static Optional<String> values(Tracing tracing, PixelPoint place) {
        return calibration(tracing).map(known -> Numbers.given(rounded(known.x(place)), symbol(tracing.x().unit())) + ", "
                + Numbers.given(rounded(known.y(place)), symbol(tracing.y().unit())));
    }

    /** {@return a value to four digits: a picture gives no more} */
    static double rounded(double value) {
        return Double.isFinite(value) ? new BigDecimal(value).round(new MathContext(4)).doubleValue() : value;
    }

    private static String symbol(Unit unit) {
        return unit.equals(Units.ONE) ? "" : unit.symbol();
    }

    private static Optional<Calibration> calibration(Tracing tracing) {
        try {
            return tracing.axes().map(Calibration::of);
        } catch (IllegalArgumentException askew) {
            return Optional.empty();
        }
    }

    /** {@return what is wrong with the axes, or what they still lack; empty where nothing is} */
    public static Optional<String> axesMissing(Tracing tracing) {
        try {
            if (tracing.axes().isPresent()) {
                Calibration.of(tracing.axes().get());
                return Optional.empty();
            }
            return Optional.of("Each axis needs two points: click their places in the picture and type what the chart says there.");
        } catch (IllegalArgumentException askew) {
            return Optional.of(sentence(askew.getMessage()));
        }
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** {@return the points of a curve in the units of the chart; none while the axes are not known} */
    public static List<TracedPoint> points(Tracing tracing, Part part) {
        return calibration(tracing).map(known -> tracing.line(part).points().stream()
                .map(point -> known.read(point, tracing.line(part).widthPx())).toList()).orElse(List.of());
    }

    /** {@return what was traced, in the units of the chart} */
    public static Trace trace(Tracing tracing) {
        axesMissing(tracing).ifPresent(missing -> {
            throw new UsageException("", missing);
        });
        if (tracing.a().points().isEmpty() && tracing.b().points().isEmpty()) {
            throw new UsageException("", "No curve has points yet: follow a line, or click points on it.");
        }
        Axes axes = tracing.axes().orElseThrow();
        return TraceReading.of(tracing, axes);
    }

    /**
     * Saves a trace as JSON, its table beside it, and the picture too where it lay in no file.
     *
     * @param own files that were written before by this trace and may be written over
     * @return every file that was written
     * @throws UsageException if a file of that name is there already, or the trace is not complete
     */
    public static List<Path> save(OpenedPicture opened, Tracing tracing, Path target, List<Path> own) throws IOException {
        Trace trace = trace(tracing);
        String name = String.valueOf(target.getFileName());
        String stem = name.toLowerCase(Locale.ROOT).endsWith(JSON) ? name.substring(0, name.length() - JSON.length()) : name;
        Path json = target.resolveSibling(stem + JSON);
        Path csv = target.resolveSibling(stem + ".csv");
        Path png = target.resolveSibling(stem + ".png");
        List<Path> files = opened.pasted().isPresent() ? List.of(json, csv, png) : List.of(json, csv);
        for (Path file : files) {
            if (Files.exists(file) && !own.contains(file)) {
                throw new UsageException("", file.getFileName() + " is there already; save under another name.");
            }
        }
        AtomicWrite.text(json, TraceJson.indented(trace));
        AtomicWrite.text(csv, TraceWriter.text(trace));
        if (opened.pasted().isPresent()) {
            AtomicWrite.bytes(png, opened.pasted().get());
        }
        return files;
    }
}
