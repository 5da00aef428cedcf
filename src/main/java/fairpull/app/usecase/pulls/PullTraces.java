package fairpull.app.usecase.pulls;

import fairpull.domain.InputException;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.Export;
import fairpull.io.table.ExportColumn;
import fairpull.io.table.GuessedColumn;
import fairpull.io.table.MappedExport;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Reads an export for the checks: the columns that its mapping uses, and beside them whatever else is plain. */
final class PullTraces {
    private static final Pattern UNCORRECTED = Pattern.compile("(?i).*(\\buncorr|\\braw\\b|\\bunkorr|\\bmeasured\\b).*");
    /** A corrected column says so, or names its standard. */
    private static final Pattern CORRECTED =
            Pattern.compile("(?i).*(\\bcorr|\\bkorr|\\bnorm|\\b(sae|din|iso|ece|eec|ewg|std)(\\b|\\d)).*");
    private static final Pattern HOW_CORRECTED = Pattern.compile(
            "(?i)\\b(corr|korr|norm)\\p{L}*\\.?|\\b(sae|din|iso|ece|eec|ewg|std)[\\d\\-/ ]*\\b|[^\\p{L}]+");
    private static final Set<Quantity> CORRECTABLE = Set.of(Quantity.POWER, Quantity.TORQUE);

    private final Export export;
    private final Mapping mapping;
    private final List<GuessedColumn> guessed;
    private final int[] rows;

    private PullTraces(Export export, Mapping mapping, List<GuessedColumn> guessed, int[] rows) {
        this.export = export;
        this.mapping = mapping;
        this.guessed = guessed;
        this.rows = rows;
    }

    private static int[] completeRows(Export export, Mapping mapping) {
        List<Samples> needed = mapping.columns().stream().filter(MappedExport::mustBeThere)
                .map(column -> column(export, column.index()).numbers()).toList();
        return MappedExport.completeRows(needed, export.rows());
    }

    /**
     * {@return what an export holds}
     *
     * @throws InputException if its mapping does not fit it
     */
    static ReadPull read(Export export, Mapping mapping) {
        Channels mapped = MappedExport.channels(export, mapping);
        List<GuessedColumn> guessed = ColumnGuess.guess(export).columns();
        PullTraces traces = new PullTraces(export, mapping, guessed, completeRows(export, mapping));
        Map<Quantity, Samples> channels = new EnumMap<>(mapped.all());
        Map<Quantity, Unit> units = new EnumMap<>(Quantity.class);
        for (Mapping.Column column : traces.columns()) {
            channels.computeIfAbsent(column.quantity(), beside -> traces.samples(column.index()).map(column.unit()::toSi));
            units.put(column.quantity(), column.unit());
        }
        boolean readsThrottle = mapping.columns().stream().anyMatch(column -> column.quantity() == Quantity.FRACTION);
        return new ReadPull(mapped, new Channels(channels), units, readsThrottle, traces.correctedOverMeasured());
    }

    /** What the mapping says, and what else one column alone is guessed to be, by name and by unit. */
    private List<Mapping.Column> columns() {
        List<Mapping.Column> columns = new ArrayList<>(mapping.columns());
        for (Quantity quantity : Quantity.values()) {
            List<GuessedColumn> candidates = guessed.stream()
                    .filter(guess -> guess.quantity().equals(Optional.of(quantity)) && guess.unit().isPresent())
                    .filter(guess -> guess.column().numbers().size() == export.rows()).toList();
            boolean open = mapping.columns().stream().noneMatch(column -> column.quantity() == quantity);
            if (open && candidates.size() == 1 && quantity != Quantity.OTHER) {
                GuessedColumn one = candidates.get(0);
                columns.add(new Mapping.Column(one.column().index(), one.column().name(), quantity, one.unit().orElseThrow()));
            }
        }
        return columns;
    }

    private OptionalDouble correctedOverMeasured() {
        return pair().map(pair -> ratio(pair.raw(), pair.corrected())).orElse(OptionalDouble.empty());
    }

    private record Pair(GuessedColumn raw, GuessedColumn corrected) {
    }

    private Optional<Pair> pair() {
        for (Quantity quantity : CORRECTABLE) {
            Optional<GuessedColumn> corrected = of(quantity).filter(PullTraces::isCorrected).findFirst();
            Optional<GuessedColumn> raw = of(quantity).filter(PullTraces::isRaw).findFirst()
                    .or(() -> corrected.flatMap(column -> plain(quantity, column)));
            if (raw.isPresent() && corrected.isPresent()) {
                return Optional.of(new Pair(raw.get(), corrected.get()));
            }
        }
        return Optional.empty();
    }

    /** {@return that columns of power, or of torque, cannot be told apart; empty where one alone stands there, or two that are a pair} */
    static Optional<String> unpaired(List<GuessedColumn> guessed, Export export, Mapping mapping) {
        PullTraces traces = new PullTraces(export, mapping, guessed, new int[0]);
        return traces.pair().isPresent() ? Optional.empty() : CORRECTABLE.stream().sorted()
                .map(quantity -> traces.of(quantity).map(column -> column.column().label()).toList())
                .filter(labels -> labels.size() > 1).findFirst()
                .map(labels -> "whether the values were corrected twice or not at all cannot be checked: of the columns "
                        + String.join(", ", labels) + " no two are named corrected and uncorrected");
    }

    private Stream<GuessedColumn> of(Quantity quantity) {
        return guessed.stream().filter(guess -> guess.quantity().equals(Optional.of(quantity)) && guess.unit().isPresent());
    }

    private static boolean isRaw(GuessedColumn column) {
        return UNCORRECTED.matcher(column.column().name()).matches();
    }

    private static boolean isCorrected(GuessedColumn column) {
        return !isRaw(column) && CORRECTED.matcher(column.column().name()).matches();
    }

    /** The column that has the name of the corrected one but for the word that says so; power at the wheel is none beside engine power. */
    private Optional<GuessedColumn> plain(Quantity quantity, GuessedColumn corrected) {
        return of(quantity).filter(column -> !isCorrected(column) && bareName(column).equals(bareName(corrected))).findFirst();
    }

    private static String bareName(GuessedColumn column) {
        return HOW_CORRECTED.matcher(column.column().name()).replaceAll("").toLowerCase(Locale.ROOT);
    }

    private OptionalDouble ratio(GuessedColumn raw, GuessedColumn corrected) {
        Samples below = samples(raw.column().index()).map(raw.unit().orElseThrow()::toSi);
        Samples above = samples(corrected.column().index()).map(corrected.unit().orElseThrow()::toSi);
        double half = below.stream().filter(Double::isFinite).max().orElse(0) / 2;
        double[] ratios = IntStream.range(0, rows.length).filter(row -> below.at(row) > half)
                .mapToDouble(row -> above.at(row) / below.at(row)).filter(Double::isFinite).sorted().toArray();
        return ratios.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(ratios[ratios.length / 2]);
    }

    private static ExportColumn column(Export export, int index) {
        return export.columns().stream().filter(column -> column.index() == index).findFirst().orElseThrow();
    }

    private Samples samples(int index) {
        Samples numbers = column(export, index).numbers();
        return Samples.of(Arrays.stream(rows).mapToDouble(numbers::at).toArray());
    }
}
