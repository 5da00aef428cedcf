package fairpull.io.json;

import com.fasterxml.jackson.databind.JsonNode;
import fairpull.domain.InputException;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.PictureFile;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedCurve;
import java.util.List;

/** The file of a traced chart. */
public final class TraceJson {
    /** The version of the file format that this program writes, and the only one there is so far. */
    public static final int SCHEMA_VERSION = 1;

    private TraceJson() {
    }

    private record TraceFile(int traceVersion, PictureFile picture, Axes axes, List<TracedCurve> curves) {
        /** What a trace refuses is refused while the file is read, so that its line is known. */
        TraceFile {
            new Trace(picture, axes, curves);
        }
    }

    /** {@return the trace in a text; {@code file} is for messages} */
    public static Trace read(String text, String file) {
        JsonNode version = JsonFiles.tree(text, file).path("traceVersion");
        if (!version.isInt()) {
            throw new InputException(InputException.Place.of(file), "no traceVersion: this is not a traced chart",
                    "give a file that was saved from “Trace a chart”");
        }
        if (version.intValue() != SCHEMA_VERSION) {
            throw new InputException(InputException.Place.of(file), "trace version " + version.intValue()
                    + " is not known to this program, which reads version " + SCHEMA_VERSION,
                    "use the version of the program that wrote it, or a newer one");
        }
        TraceFile read = JsonFiles.read(text, TraceFile.class, file, 1);
        return new Trace(read.picture(), read.axes(), read.curves());
    }

    /** {@return the trace for people to read, indented} */
    public static String indented(Trace trace) {
        return JsonFiles.indented(new TraceFile(SCHEMA_VERSION, trace.picture(), trace.axes(), trace.curves()));
    }
}
