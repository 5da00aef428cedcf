package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.io.table.GuessedColumn.Evidence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Decides which column stands for each quantity: by hand where one was chosen, else by evidence; what stays open becomes a question. */
final class Settlement {
    private static final double HALF_OPEN = 0.5;
    private static final double NEARLY_ALL = 0.9;

    private final Export export;
    private final List<GuessedColumn> columns;
    private final Map<Quantity, GuessedColumn> settled = new EnumMap<>(Quantity.class);
    private final Map<Quantity, InputException> questions = new EnumMap<>(Quantity.class);
    private final Map<Quantity, Remedy> doubts = new EnumMap<>(Quantity.class);

    private Settlement(Export export, List<GuessedColumn> columns) {
        this.export = export;
        this.columns = new ArrayList<>(columns);
    }

    /** Settles all quantities; a choice by hand that names no column, or more than one, is refused. */
    static Settlement of(Export export, List<GuessedColumn> columns, Map<Quantity, ColumnChoice> overrides) {
        Settlement settlement = new Settlement(export, columns);
        overrides.forEach((quantity, choice) -> choice.column().ifPresentOrElse(
                column -> settlement.settled.put(quantity, settlement.byHand(quantity, column, choice.unit())),
                () -> settlement.columns.replaceAll(column -> column.without(quantity, "left out by hand"))));
        for (Quantity quantity : Quantity.values()) {
            if (quantity != Quantity.OTHER && !overrides.containsKey(quantity)) {
                settlement.byEvidence(quantity);
            }
        }
        settlement.unitsByIdentity();
        settlement.settled.forEach(settlement::askForUnit);
        return settlement;
    }

    /** {@return all columns, as far as they are known now} */
    List<GuessedColumn> columns() {
        return columns;
    }

    /** {@return whether a column stands for the quantity, or several could} */
    boolean holds(Quantity quantity) {
        return settled.containsKey(quantity) || questions.containsKey(quantity);
    }

    /**
     * {@return whether a column tells the throttle of nearly every row that has an engine speed} A sensor that never shows half of its
     * range is dead, and one that speaks in few rows cannot say where the throttle was lifted.
     */
    boolean tellsThrottle() {
        GuessedColumn throttle = settled.get(Quantity.FRACTION);
        GuessedColumn speed = settled.get(Quantity.ENGINE_SPEED);
        if (throttle == null || throttle.unit().isEmpty() || speed == null) {
            return false;
        }
        Samples opening = throttle.column().numbers();
        Samples speeds = speed.column().numbers();
        double widest = opening.stream().filter(Double::isFinite).map(throttle.unit().get()::toSi).max().orElse(0);
        int[] rows = IntStream.range(0, speeds.size()).filter(row -> Double.isFinite(speeds.at(row))).toArray();
        long told = Arrays.stream(rows).filter(row -> row < opening.size() && Double.isFinite(opening.at(row))).count();
        return widest >= HALF_OPEN && told >= NEARLY_ALL * rows.length;
    }

    /**
     * Settles which of several columns tells where the throttle is full, where that is all that is asked of them: the throttle plate, which
     * the engine breathes through, before the pedal, which is what the driver asks for. Where the names do not say, it stays open.
     */
    void settleThrottle() {
        if (!questions.containsKey(Quantity.FRACTION) || settled.containsKey(Quantity.FRACTION)) {
            return;
        }
        List<GuessedColumn> all = columns.stream().filter(column -> column.quantity().equals(Optional.of(Quantity.FRACTION))
                && column.unit().isPresent() && !column.isConstant()).toList();
        List<GuessedColumn> plates = all.stream().filter(column -> !ColumnWords.of(column.column().name()).isPedal()).toList();
        if (plates.size() == 1) {
            settled.put(Quantity.FRACTION, plates.get(0));
            questions.remove(Quantity.FRACTION);
            doubts.put(Quantity.FRACTION, Remedy.everywhere(label(plates.get(0)) + " tells where the throttle is full, not "
                    + labels(all.stream().filter(column -> column != plates.get(0)).toList()) + ", which is the pedal"));
        } else {
            String open = labels(all) + " could each be the throttle, so none of them tells where it is full; ";
            doubts.put(Quantity.FRACTION, new Remedy(open + "say it with "
                    + all.stream().map(column -> option(Quantity.FRACTION, column)).collect(Collectors.joining(" or ")),
                    open + "choose the one that does in the list of columns"));
        }
    }

    /** Throws the first question about one of these quantities. */
    void ask(Set<Quantity> quantities) {
        questions.forEach((quantity, question) -> {
            if (quantities.contains(quantity)) {
                throw question;
            }
        });
    }

    List<Mapping.Column> chosen(Set<Quantity> quantities) {
        return settled.entrySet().stream()
                .filter(entry -> quantities.contains(entry.getKey()) && !questions.containsKey(entry.getKey()))
                .map(entry -> new Mapping.Column(entry.getValue().column().index(), entry.getValue().column().label(), entry.getKey(),
                        entry.getValue().unit().orElseThrow()))
                .toList();
    }

    List<Remedy> doubts(Set<Quantity> quantities) {
        return doubts.entrySet().stream().filter(entry -> quantities.contains(entry.getKey())).map(Map.Entry::getValue).toList();
    }

    Map<Quantity, InputException> questions(Set<Quantity> quantities) {
        return questions.entrySet().stream().filter(entry -> quantities.contains(entry.getKey()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one,
                        () -> new EnumMap<>(Quantity.class)));
    }

    private GuessedColumn byHand(Quantity quantity, String column, Optional<Unit> said) {
        GuessedColumn found = find(column);
        Optional<Unit> unit = said.or(() -> found.unit().filter(guessed -> guessed.quantity() == quantity));
        if (unit.isPresent() && unit.get().quantity() != quantity) {
            throw new InputException(at(found), unit.get().symbol() + " is a unit of " + unit.get().quantity().words() + ", not of "
                    + quantity.words(), "give one of " + symbols(quantity));
        }
        if (!found.column().isNumeric()) {
            throw new InputException(at(found), "the column holds no numbers", "choose another one for " + quantity.words());
        }
        GuessedColumn chosen = new GuessedColumn(found.column(), Optional.of(quantity), unit, Evidence.NAME_AND_UNIT, "chosen by hand");
        columns.replaceAll(other -> other == found ? chosen
                : other.without(quantity, "another column was chosen for " + quantity.words()));
        return chosen;
    }

    private GuessedColumn find(String named) {
        List<GuessedColumn> matches = matching(column -> column.header().strip().equalsIgnoreCase(named.strip()));
        if (matches.isEmpty()) {
            matches = matching(column -> column.name().equalsIgnoreCase(named.strip()));
        }
        if (matches.isEmpty() && named.strip().matches("\\d{1,4}")) {
            int index = Integer.parseInt(named.strip()) - 1;
            matches = matching(column -> column.index() == index);
        }
        if (matches.size() == 1) {
            return matches.get(0);
        }
        Place place = Place.of(export.fileName(), export.dialect().headerLine());
        throw matches.isEmpty()
                ? new InputException(place, "there is no column “" + named + "”", "the columns are " + labels(columns))
                : new InputException(place, matches.size() + " columns are called “" + named + "”",
                        "choose by number: " + matches.stream().map(column -> String.valueOf(column.column().index() + 1))
                                .collect(Collectors.joining(" or ")));
    }

    private List<GuessedColumn> matching(Predicate<ExportColumn> condition) {
        return columns.stream().filter(column -> condition.test(column.column())).toList();
    }

    private void byEvidence(Quantity quantity) {
        List<GuessedColumn> candidates = columns.stream().filter(column -> column.quantity().equals(Optional.of(quantity))).toList();
        List<GuessedColumn> varying = candidates.stream().filter(column -> !column.isConstant()).toList();
        List<GuessedColumn> best = strongest(varying.isEmpty() ? candidates : varying);
        if (best.size() == 1 || best.size() > 1 && sameNumbers(best)) {
            settled.put(quantity, best.get(0));
            doubtAgainst(quantity, best.get(0), candidates);
        } else if (best.size() > 1) {
            questions.put(quantity, new InputException(at(best.get(0)), labels(best) + " could each be " + quantity.words(),
                    new Remedy("choose one: " + best.stream().map(column -> option(quantity, column)).collect(Collectors.joining(" or ")),
                    "choose the one that it is in the list of columns")));
        }
    }

    private static List<GuessedColumn> strongest(List<GuessedColumn> candidates) {
        Evidence most = candidates.stream().map(GuessedColumn::evidence).max(Evidence::compareTo).orElse(Evidence.NOTHING);
        return candidates.stream().filter(column -> column.evidence() == most).toList();
    }

    private void doubtAgainst(Quantity quantity, GuessedColumn winner, List<GuessedColumn> candidates) {
        String against = candidates.stream()
                .filter(other -> other != winner)
                .map(other -> "not " + label(other) + ", " + whyNot(other, winner))
                .collect(Collectors.joining("; "));
        if (!against.isEmpty()) {
            doubts.put(quantity, Remedy.everywhere(label(winner) + " is taken as " + quantity.words() + ", " + against));
        } else if (winner.isConstant()) {
            doubts.put(quantity, Remedy.everywhere(label(winner) + " is taken as " + quantity.words()
                    + " although its numbers never change"));
        }
    }

    private static String whyNot(GuessedColumn other, GuessedColumn winner) {
        if (other.isConstant()) {
            return "whose numbers never change";
        }
        return other.evidence() == winner.evidence() ? "which holds the same numbers" : "for which less speaks";
    }

    private static boolean sameNumbers(List<GuessedColumn> best) {
        return best.stream().map(column -> column.column().numbers()).distinct().count() == 1
                && best.stream().map(GuessedColumn::unit).distinct().count() == 1;
    }

    private void unitsByIdentity() {
        GuessedColumn speed = settled.get(Quantity.ENGINE_SPEED);
        GuessedColumn power = settled.get(Quantity.POWER);
        GuessedColumn torque = settled.get(Quantity.TORQUE);
        boolean possible = speed != null && speed.unit().isPresent() && power != null && torque != null;
        if (possible && (power.unit().isEmpty() || torque.unit().isEmpty())) {
            Behaviour.unitsByIdentity(speed, power, torque).ifPresent(pair -> {
                tellUnit(Quantity.POWER, pair.power(), pair);
                tellUnit(Quantity.TORQUE, pair.torque(), pair);
            });
        }
    }

    private void tellUnit(Quantity quantity, Unit unit, Behaviour.UnitPair pair) {
        GuessedColumn before = settled.get(quantity);
        if (before.unit().isEmpty()) {
            String identity = "power is torque × speed in " + pair.power().symbol() + " and " + pair.torque().symbol();
            GuessedColumn after = before.withUnit(unit, identity);
            settled.put(quantity, after);
            columns.replaceAll(column -> column == before ? after : column);
            doubts.put(quantity, Remedy.everywhere(label(after) + " names no unit; " + unit.symbol() + " is taken because " + identity));
        }
    }

    private void askForUnit(Quantity quantity, GuessedColumn column) {
        if (column.unit().isEmpty()) {
            String unknown = column.column().unitText();
            questions.put(quantity, new InputException(at(column),
                    unknown.isEmpty() ? "the unit of " + quantity.words() + " is not named" : "the unit “" + unknown + "” is not known",
                    new Remedy("say it: " + option(quantity, column) + ":UNIT, the unit being one of " + symbols(quantity),
                    "choose its unit beneath the list of columns")));
        }
    }

    private String option(Quantity quantity, GuessedColumn column) {
        boolean unique = columns.stream().filter(other -> other.column().label().equalsIgnoreCase(column.column().label())).count() == 1;
        return "--column " + ColumnChoice.id(quantity) + "="
                + (unique ? "\"" + column.column().label() + "\"" : String.valueOf(column.column().index() + 1));
    }

    private Place at(GuessedColumn column) {
        return Place.of(export.fileName(), export.dialect().headerLine(), column.column().label());
    }

    private static String symbols(Quantity quantity) {
        return Units.of(quantity).stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }

    private static String labels(List<GuessedColumn> columns) {
        return columns.stream().map(Settlement::label).collect(Collectors.joining(", "));
    }

    private static String label(GuessedColumn column) {
        return "“" + column.column().label() + "”";
    }
}
