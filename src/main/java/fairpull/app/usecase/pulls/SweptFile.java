package fairpull.app.usecase.pulls;

import fairpull.domain.InputException;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.SweptParts;
import fairpull.io.table.ExportFile;
import fairpull.io.table.MappedExport;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A log in which the engine sweeps several times, as several pulls. */
final class SweptFile {
    private static final int MOST_NAMED = 12;
    private static final Set<Quantity> PARTING = EnumSet.of(Quantity.TIME, Quantity.ENGINE_SPEED, Quantity.FRACTION);

    private SweptFile() {
    }

    /** {@return whether nothing in the table itself says that it holds other than one pull, so that its sweeps decide} */
    static boolean isForSweeps(ExportFile file) {
        return file.trouble().isEmpty() && file.pulls() == 1 && file.named().isEmpty() && !file.isParted();
    }

    /**
     * {@return the file with a pull for each sweep; the same file where it holds one and nothing like one beside it, or where a column
     *     cannot be read: whoever takes values from it says so} Only time, engine speed and throttle part it, so that pulls keep their
     *     numbers when power is read from another column.
     *
     * @param mapping how its columns are read
     */
    static ExportFile parted(ExportFile file, Mapping mapping) {
        List<Mapping.Column> columns = mapping.columns().stream().filter(column -> PARTING.contains(column.quantity())).toList();
        Set<Quantity> there = columns.stream().map(Mapping.Column::quantity).collect(Collectors.toSet());
        if (!isForSweeps(file) || !there.containsAll(EnumSet.of(Quantity.TIME, Quantity.ENGINE_SPEED))) {
            return file;
        }
        SweptParts swept;
        try {
            swept = SweptParts.of(MappedExport.everyRow(file.table(),
                    new Mapping(mapping.fingerprint(), columns, mapping.corrected(), mapping.decimalMark())));
        } catch (InputException unreadable) {
            return file;
        }
        if (swept.parts().isEmpty() || swept.parts().size() + swept.passedOver().size() < 2) {
            return file;
        }
        String rises = there.contains(Quantity.FRACTION) ? "engine speed rises at full throttle" : "engine speed rises";
        return file.parted(rises + " at " + spans(swept.parts().stream().map(SweptParts.Part::sweep).toList()),
                swept.parts().stream().map(part -> new ExportFile.Rows(part.from(), part.to())).toList(),
                swept.passedOver().isEmpty() ? Optional.empty() : Optional.of(rises + " at " + spans(swept.passedOver())
                        + " as well; too low, too quick or too slow beside the others for a pull, that is passed over"));
    }

    private static String spans(List<SweptParts.Span> spans) {
        return spans.stream().limit(MOST_NAMED).map(span -> String.format(Locale.ROOT, "%.1f–%.1f s", span.fromS(), span.toS()))
                .collect(Collectors.joining(", ", "", spans.size() > MOST_NAMED ? " …" : ""));
    }
}
