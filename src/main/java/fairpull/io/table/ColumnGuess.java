package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.io.table.GuessedColumn.Evidence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Guesses what the columns of an export are, says why, and makes the mapping by which they are read. What is open is asked. */
public final class ColumnGuess {
    /** What the measures of a pull are made of. */
    private static final Set<Quantity> USUAL =
            EnumSet.of(Quantity.TIME, Quantity.ENGINE_SPEED, Quantity.POWER, Quantity.TORQUE, Quantity.SPEED);

    private static final Set<Quantity> THROTTLE_TOO =
            EnumSet.of(Quantity.TIME, Quantity.ENGINE_SPEED, Quantity.POWER, Quantity.TORQUE, Quantity.SPEED, Quantity.FRACTION);

    private ColumnGuess() {
    }

    /**
     * What was guessed of an export.
     *
     * @param columns its columns
     * @param proposal the mapping of what is settled; empty if nothing is
     * @param told what is not certain, one sentence each
     * @param questions what has to be decided before a quantity can be used
     */
    public record Guess(List<GuessedColumn> columns, Optional<Mapping> proposal, List<Remedy> told,
                        Map<Quantity, InputException> questions) {
        public Guess {
            columns = List.copyOf(columns);
            told = List.copyOf(told);
            questions = Collections.unmodifiableMap(new EnumMap<>(questions));
        }

        /** {@return what is not certain, in the words of the command line} */
        public List<String> doubts() {
            return doubts(Surface.COMMAND_LINE);
        }

        /** {@return what is not certain, in the words of a surface} */
        public List<String> doubts(Surface surface) {
            return told.stream().map(doubt -> doubt.on(surface)).toList();
        }
    }

    /** {@return what the columns of an export seem to be; never fails, what is open stands among the questions} */
    public static Guess guess(Export export) {
        return guess(export, Map.of());
    }

    /**
     * {@return what the columns of an export seem to be, but for those that were chosen by hand}
     *
     * @throws InputException if a choice does not fit
     */
    public static Guess guess(Export export, Map<Quantity, ColumnChoice> overrides) {
        Settlement settlement = Settlement.of(export, columns(export), overrides);
        settlement.settleThrottle();
        Set<Quantity> read = EnumSet.copyOf(USUAL);
        if (overrides.containsKey(Quantity.FRACTION) || settlement.tellsThrottle()) {
            read.add(Quantity.FRACTION);
        }
        List<Mapping.Column> chosen = settlement.chosen(read);
        List<Remedy> doubts = new ArrayList<>(export.doubts().stream().map(Remedy::everywhere).toList());
        doubts.addAll(settlement.doubts(THROTTLE_TOO));
        Optional<Mapping> proposal = chosen.isEmpty()
                ? Optional.empty()
                : Optional.of(new Mapping(export.fingerprint(), chosen, Optional.empty(), Optional.empty()));
        return new Guess(settlement.columns(), proposal, doubts, settlement.questions(USUAL));
    }

    /**
     * Makes the mapping for the usual quantities: time, engine speed, power, torque, speed.
     *
     * @param overrides the columns that were chosen by hand
     * @param corrected the standard the values are already corrected to; empty if not known
     * @throws InputException if engine speed, power or torque are there but open, or if a choice does not fit
     */
    public static Mapping mapping(Export export, Map<Quantity, ColumnChoice> overrides, Optional<Correction> corrected) {
        Settlement settlement = Settlement.of(export, columns(export), overrides);
        settlement.ask(EnumSet.of(Quantity.ENGINE_SPEED, Quantity.POWER, Quantity.TORQUE));
        return mapping(export, settlement, USUAL, corrected);
    }

    /**
     * Makes the mapping for what a test needs. Power and torque stand in for each other where one is absent; time comes along, and so does
     * the throttle for what is read off a sweep, where one column is plainly it.
     *
     * @param needed the quantities that the measures of the test are made of
     * @param overrides the columns that were chosen by hand
     * @param corrected the standard the values are already corrected to; empty if not known
     * @throws InputException if a needed quantity is there but open, if nothing needed is there, or if a choice does not fit
     */
    public static Mapping mapping(Export export, Set<Quantity> needed, Map<Quantity, ColumnChoice> overrides,
                                  Optional<Correction> corrected) {
        Settlement settlement = Settlement.of(export, columns(export), overrides);
        Set<Quantity> asked = EnumSet.copyOf(needed);
        if (needed.contains(Quantity.POWER) && !settlement.holds(Quantity.POWER)) {
            asked.add(Quantity.TORQUE);
        }
        if (needed.contains(Quantity.TORQUE) && !settlement.holds(Quantity.TORQUE)) {
            asked.add(Quantity.POWER);
        }
        settlement.ask(asked);
        Set<Quantity> taken = EnumSet.copyOf(asked);
        taken.add(Quantity.TIME);
        settlement.settleThrottle();
        if (needed.contains(Quantity.ENGINE_SPEED) && (overrides.containsKey(Quantity.FRACTION) || settlement.tellsThrottle())) {
            taken.add(Quantity.FRACTION);
        }
        return mapping(export, settlement, taken, corrected);
    }

    private static Mapping mapping(Export export, Settlement settlement, Set<Quantity> quantities, Optional<Correction> corrected) {
        List<Mapping.Column> chosen = settlement.chosen(quantities);
        if (chosen.isEmpty()) {
            throw new InputException(InputException.Place.of(export.fileName(), export.dialect().headerLine()),
                    "no column is known as " + String.join(", ", quantities.stream().map(Quantity::words).toList()),
                    new Remedy("name one: --column power=\"its header\":hp",
                    "choose in the list of columns what each one is"));
        }
        return new Mapping(export.fingerprint(), chosen, corrected, Optional.empty());
    }

    private static List<GuessedColumn> columns(Export export) {
        return export.columns().stream().map(ColumnGuess::read).toList();
    }

    private static GuessedColumn read(ExportColumn column) {
        String name = ColumnWords.withoutSpeedNamed(column.name());
        ColumnWords words = ColumnWords.of(name);
        if (!column.isNumeric()) {
            String none = column.noValues() > 0 ? "never has a value" : "is empty";
            return nothing(column, column.firstText().isPresent() ? "holds text" : none);
        }
        if (column.clock()) {
            return new GuessedColumn(column, Optional.of(Quantity.TIME), Optional.of(Units.SECOND), Evidence.NAME_AND_UNIT,
                    "its cells are times of day");
        }
        Optional<Unit> unit = column.unitText().isEmpty() ? unitAmongWords(name, words) : UnitText.find(column.unitText());
        if (unit.isPresent()) {
            return byUnit(column, unit.get(), words);
        }
        Optional<UnitAtEnd> atEnd = column.unitText().isEmpty() ? UnitAtEnd.of(name) : Optional.empty();
        Optional<Quantity> contradicted = atEnd.flatMap(UnitAtEnd::contradicted);
        if (contradicted.isPresent()) {
            return nothing(column, "its words say " + GuessedColumn.words(contradicted.get()) + ", but its unit "
                    + atEnd.get().unit().symbol());
        }
        Optional<Quantity> quantity = words.quantity();
        if (quantity.isEmpty() && atEnd.filter(UnitAtEnd::isRatioOfSpeed).isPresent()) {
            return byUnit(column, atEnd.get().unit(), words);
        }
        if (quantity.isEmpty()) {
            return nothing(column, "neither name nor unit is known");
        }
        if (words.isElsewhere(quantity.get())) {
            return nothing(column, "the name speaks of something else");
        }
        Optional<Unit> named = column.unitText().isEmpty() ? words.unit(name) : Optional.empty();
        return named.filter(found -> found.quantity() == quantity.get())
                .map(found -> new GuessedColumn(column, quantity, named, Evidence.NAME_AND_UNIT,
                        "the name says " + GuessedColumn.words(quantity.get()) + " in " + found.symbol()))
                .orElseGet(() -> byName(column, quantity.get()));
    }

    /** The unit only counts where the words do not speak for another quantity. */
    private static Optional<Unit> unitAmongWords(String name, ColumnWords words) {
        if (words.isUnitOfTime()) {
            return Units.find(name);
        }
        boolean ofSpeed = words.quantity().map(named -> named == Quantity.ENGINE_SPEED || named == Quantity.SPEED).orElse(true);
        return ofSpeed ? UnitText.amongWords(name) : Optional.empty();
    }

    private static GuessedColumn byUnit(ExportColumn column, Unit unit, ColumnWords words) {
        boolean named = words.name(unit.quantity());
        boolean elsewhere = words.isElsewhere(unit.quantity()) || !named && unit.quantity() == Quantity.FRACTION;
        if (elsewhere) {
            return new GuessedColumn(column, Optional.empty(), Optional.of(unit), Evidence.NOTHING, "the name speaks of something else");
        }
        return new GuessedColumn(column, Optional.of(unit.quantity()), Optional.of(unit),
                named ? Evidence.NAME_AND_UNIT : Evidence.UNIT_ALONE,
                (named ? "name and unit say " : "its unit says ") + GuessedColumn.words(unit.quantity()) + " in " + unit.symbol());
    }

    private static GuessedColumn byName(ExportColumn column, Quantity quantity) {
        String reason = "the name says " + GuessedColumn.words(quantity);
        Optional<Unit> unit = Behaviour.unit(quantity, column.numbers());
        GuessedColumn guessed = new GuessedColumn(column, Optional.of(quantity), Optional.empty(), Evidence.NAME_ALONE, reason);
        return unit.map(told -> guessed.withUnit(told, "its numbers say " + told.symbol())).orElse(guessed);
    }

    private static GuessedColumn nothing(ExportColumn column, String reason) {
        return new GuessedColumn(column, Optional.empty(), Optional.empty(), Evidence.NOTHING, reason);
    }
}
