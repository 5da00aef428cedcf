package fairpull.app.usecase;

import fairpull.domain.InputException;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.SweptParts;
import fairpull.io.table.ExportFile;
import fairpull.io.table.MappedExport;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A log in which the engine sweeps several times, as several pulls. */
final class SweptFile {
    private static final int MOST_NAMED = 6;

    private SweptFile() {
    }

    /** {@return whether nothing in the table itself says that it holds other than one pull, so that its sweeps decide} */
    static boolean isForSweeps(ExportFile file) {
        return file.trouble().isEmpty() && file.pulls() == 1 && file.named().isEmpty();
    }

    /**
     * {@return the file with a pull for each sweep; the same file where it holds one and nothing like one beside it, or where a column
     *     cannot be read: whoever takes values from it says so}
     *
     * @param mapping how its columns are read
     */
    static ExportFile parted(ExportFile file, Mapping mapping) {
        if (!isForSweeps(file) || mapping.columns().stream().noneMatch(column -> column.quantity() == Quantity.ENGINE_SPEED)) {
            return file;
        }
        SweptParts swept;
        try {
            swept = SweptParts.of(MappedExport.everyRow(file.table(), mapping));
        } catch (InputException unreadable) {
            return file;
        }
        if (swept.parts().size() + swept.passedOver().size() < 2) {
            return file;
        }
        boolean byThrottle = mapping.columns().stream().anyMatch(column -> column.quantity() == Quantity.FRACTION);
        return file.parted(found(swept, byThrottle), swept.parts().stream()
                .map(part -> new ExportFile.Rows(part.from(), part.to())).toList());
    }

    private static String found(SweptParts swept, boolean byThrottle) {
        String pulls = (byThrottle ? "engine speed rises at full throttle, " : "engine speed rises, ")
                + spans(swept.parts().stream().map(SweptParts.Part::sweep).toList());
        return swept.passedOver().isEmpty() ? pulls
                : pulls + "; too short for a pull and passed over: " + spans(swept.passedOver());
    }

    private static String spans(List<SweptParts.Span> spans) {
        return spans.stream().limit(MOST_NAMED).map(span -> String.format(Locale.ROOT, "%.1f–%.1f s", span.fromS(), span.toS()))
                .collect(Collectors.joining(", ", "at ", spans.size() > MOST_NAMED ? " …" : ""));
    }
}
