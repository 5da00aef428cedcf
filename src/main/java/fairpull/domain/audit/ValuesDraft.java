package fairpull.domain.audit;

import fairpull.domain.audit.Publication.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Values that were published one by one while they are typed, row by row as they stand in a table of two columns.
 *
 * @param rows up to the last one in which something stands
 * @param paired whether each after belongs to the before in its row
 * @param each what each of them is of; empty where it was not disclosed
 */
public record ValuesDraft(List<Row> rows, boolean paired, Optional<Values.Each> each) {
    /** That none were published, or none typed yet. */
    public static final ValuesDraft NONE = new ValuesDraft(List.of(), false, Optional.empty());

    /** One row; a value that is not typed yet, or not there, is empty. */
    public record Row(Optional<Printed> before, Optional<Printed> after) {
        private static final Row BLANK = new Row(Optional.empty(), Optional.empty());

        private Row with(Side side, Optional<Printed> value) {
            return side == Side.BEFORE ? new Row(value, after) : new Row(before, value);
        }

        private boolean isHalf() {
            return before.isPresent() != after.isPresent();
        }
    }

    /** A column of the table. */
    public enum Side {
        BEFORE, AFTER
    }

    /** @throws IllegalArgumentException if there are more of them than a publication holds */
    public ValuesDraft {
        Objects.requireNonNull(each, "each");
        List<Row> kept = new ArrayList<>(rows);
        while (!kept.isEmpty() && kept.get(kept.size() - 1).equals(Row.BLANK)) {
            kept.remove(kept.size() - 1);
        }
        rows = List.copyOf(kept);
        if (rows.size() > Values.MOST) {
            throw new IllegalArgumentException("values are at most " + Values.MOST + " on each side, were " + rows.size());
        }
    }

    /** {@return values that were published as a draft} */
    public static ValuesDraft of(Values values) {
        ValuesDraft draft = new ValuesDraft(List.of(), values.paired(), values.each());
        return draft.with(0, Side.BEFORE, values.printedBefore().stream().map(Optional::of).toList())
                .with(0, Side.AFTER, values.printedAfter().stream().map(Optional::of).toList());
    }

    /** {@return the same with another value in a cell} */
    public ValuesDraft with(int row, Side side, Optional<Printed> value) {
        return with(row, side, List.of(value));
    }

    /** {@return the same with other values in the cells of a column from a row on; rows are added as they are needed} */
    public ValuesDraft with(int row, Side side, List<Optional<Printed>> values) {
        List<Row> others = new ArrayList<>(rows);
        while (others.size() < row + values.size()) {
            others.add(Row.BLANK);
        }
        for (int next = 0; next < values.size(); next++) {
            others.set(row + next, others.get(row + next).with(side, values.get(next)));
        }
        return new ValuesDraft(others, paired, each);
    }

    /** {@return the same, paired or not} */
    public ValuesDraft paired(boolean other) {
        return new ValuesDraft(rows, other, each);
    }

    /** {@return the same of something else} */
    public ValuesDraft of(Optional<Values.Each> other) {
        return new ValuesDraft(rows, paired, other);
    }

    /** {@return the value in a cell} */
    public Optional<Printed> at(int row, Side side) {
        return row >= rows.size() ? Optional.empty() : side == Side.BEFORE ? rows.get(row).before() : rows.get(row).after();
    }

    /** {@return the values of a column from above, without its empty cells} */
    public List<Printed> column(Side side) {
        Function<Row, Optional<Printed>> cell = side == Side.BEFORE ? Row::before : Row::after;
        return rows.stream().flatMap(row -> cell.apply(row).stream()).toList();
    }

    /** {@return all values} */
    public Stream<Printed> all() {
        return rows.stream().flatMap(row -> Stream.concat(row.before().stream(), row.after().stream()));
    }

    /** {@return whether no value was typed yet} */
    public boolean isBlank() {
        return rows.isEmpty();
    }

    /** {@return the values, once there are two on each side and, where they are paired, none is alone in its row} */
    public Optional<Values> values() {
        List<Printed> before = column(Side.BEFORE);
        List<Printed> after = column(Side.AFTER);
        boolean isWhole = before.size() >= 2 && after.size() >= 2 && !(paired && rows.stream().anyMatch(Row::isHalf));
        return isWhole ? Optional.of(new Values(before, after, paired, each)) : Optional.empty();
    }
}
