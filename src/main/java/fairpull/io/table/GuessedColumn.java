package fairpull.io.table;

import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.Optional;

/**
 * What a column seems to be.
 *
 * @param column the column
 * @param quantity what it seems to measure, where anything speaks for it
 * @param unit the unit of its numbers, where that is known
 * @param evidence how much speaks for it
 * @param reason why, in a short phrase
 */
public record GuessedColumn(ExportColumn column, Optional<Quantity> quantity, Optional<Unit> unit, Evidence evidence, String reason) {
    /** What speaks for a guess, the weakest first. */
    public enum Evidence {
        NOTHING, UNIT_ALONE, NAME_ALONE, NAME_AND_UNIT
    }

    /** {@return the same column with its unit told by something else than its header} */
    GuessedColumn withUnit(Unit told, String why) {
        return new GuessedColumn(column, quantity, Optional.of(told), evidence, reason + "; " + why);
    }

    /** {@return the same column, no longer read as a quantity, for a reason} */
    GuessedColumn without(Quantity taken, String why) {
        return quantity.equals(Optional.of(taken))
                ? new GuessedColumn(column, Optional.empty(), unit, Evidence.NOTHING, why)
                : this;
    }

    /** {@return whether all its numbers are the same} */
    boolean isConstant() {
        double first = Double.NaN;
        for (int row = 0; row < column.numbers().size(); row++) {
            double value = column.numbers().at(row);
            if (!Double.isNaN(value) && !Double.isNaN(first) && Double.compare(value, first) != 0) {
                return false;
            }
            first = Double.isNaN(first) ? value : first;
        }
        return true;
    }

    /** {@return a quantity as a column of an export is said to be: the one share that is looked for there is the throttle} */
    public static String words(Quantity quantity) {
        return quantity == Quantity.FRACTION ? "throttle" : quantity.words();
    }
}
