package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.ExportColumn.TextCell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One channel of a table in long form: its numbers pull by pull. */
final class LongChannel {
    private static final Series NOTHING = new Series();

    private final String name;
    private final int index;
    private final Keep keep;
    private final List<Series> pulls = new ArrayList<>();
    private String unit = "";
    private Optional<TextCell> firstText = Optional.empty();
    private int noValues;
    private int pull;
    private double began = Double.NaN;
    private double last = Double.NaN;

    LongChannel(String name, int index, Keep keep) {
        this.name = name;
        this.index = index;
        this.keep = keep;
    }

    String name() {
        return name;
    }

    /** {@return its place among the channels in the order of their first number, counted from 1; the time is 0} */
    int index() {
        return index;
    }

    String unit() {
        return unit;
    }

    /** Takes the unit that a row names; all rows must name the same. */
    void unit(String named, Place place) {
        if (!named.isEmpty() && !unit.isEmpty() && !named.equals(unit)) {
            throw new InputException(place, "the unit is “" + named + "” here and “" + unit + "” before", "give the channel one unit");
        }
        unit = unit.isEmpty() ? named : unit;
    }

    /** {@return the pull to which a number at that time belongs, counted from 0: the next one where the time starts again} */
    int pullAt(double time, double restartShare) {
        if (Double.isNaN(last)) {
            began = time;
        } else if (time < last && time - began <= restartShare * (last - began)) {
            pull++;
            began = time;
        }
        last = time;
        return pull;
    }

    /** Takes a cell. One that says there is no value stands among the numbers as NaN, so that nothing is interpolated across it. */
    void take(int ofPull, int line, double time, CharSequence cell, DecimalMark mark) {
        double value = NumberText.parse(cell, mark);
        boolean none = Double.isNaN(value) && NumberText.isNoValue(cell);
        noValues += none ? 1 : 0;
        if (Double.isNaN(value) && !none && firstText.isEmpty()) {
            String text = cell.toString().strip();
            firstText = Optional.of(new TextCell(line, ColumnCells.shortened(text)));
        }
        while (pulls.size() <= ofPull) {
            pulls.add(Series.keeping(keep.mostRows()));
        }
        if (none || !Double.isNaN(value)) {
            pulls.get(ofPull).add(time, value);
        }
    }

    Optional<TextCell> firstText() {
        return firstText;
    }

    /** {@return how many cells say that there is no value} */
    int noValues() {
        return noValues;
    }

    /** {@return how many pulls it has numbers of} */
    int pulls() {
        return pulls.size();
    }

    Series series(int ofPull) {
        return ofPull < pulls.size() ? pulls.get(ofPull) : NOTHING;
    }

    boolean isWhole() {
        return pulls.stream().allMatch(Series::isWhole);
    }

    int repeated() {
        return pulls.stream().mapToInt(Series::repeated).sum();
    }
}
