package fairpull.domain.pull;

import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How the columns of exports with one header are read.
 *
 * @param fingerprint the header this mapping is for
 * @param columns the columns that are used; all others are kept in the raw file only
 * @param corrected the standard the values are already corrected to ({@link Correction#NONE}: as measured); empty: not known
 * @param decimalMark the decimal mark, where a person had to say it; empty: each file tells its own
 */
public record Mapping(String fingerprint, List<Column> columns, Optional<Correction> corrected, Optional<DecimalMark> decimalMark) {
    /**
     * One column in use.
     *
     * @param index its place in the file, counted from 0
     * @param name its name in the header
     * @param quantity what it is
     * @param unit the unit its numbers are in
     */
    public record Column(int index, String name, Quantity quantity, Unit unit) {
        public Column {
            if (index < 0) {
                throw new IllegalArgumentException("a column is counted from 0, was " + index);
            }
            Objects.requireNonNull(name, "the name of a column");
            if (unit.quantity() != quantity) {
                throw new IllegalArgumentException("column “" + name + "” is a " + quantity.words() + " and cannot be in " + unit.symbol());
            }
        }
    }

    public Mapping {
        Objects.requireNonNull(fingerprint, "fingerprint");
        Objects.requireNonNull(corrected, "corrected");
        Objects.requireNonNull(decimalMark, "decimalMark");
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("no column is used");
        }
        Set<Quantity> seen = new HashSet<>();
        for (Column column : columns) {
            if (!seen.add(column.quantity())) {
                throw new IllegalArgumentException("two columns are read as " + column.quantity().words());
            }
        }
    }

    /** {@return the same columns, corrected otherwise} */
    public Mapping withCorrected(Optional<Correction> other) {
        return new Mapping(fingerprint, columns, other, decimalMark);
    }

    /** {@return the same columns, with a decimal mark that was said; what is not said stays as it was} */
    public Mapping withDecimalMark(Optional<DecimalMark> said) {
        return new Mapping(fingerprint, columns, corrected, said.or(() -> decimalMark));
    }
}
