package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.pull.PullId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where one pull ends and the next begins among rows that pass by one after the other. Four things can say so, and the first that does
 * is believed: a column with the number of the pull, the header said again, a blank line, the time starting again.
 */
final class PullMarks {
    /** Fewer rows than these are no pull: a blank line after every row, or a time stamp out of order, begins none. */
    private static final int FEWEST_ROWS = 3;
    /** A file of more pulls is more likely one whose marks were misread. */
    static final int MOST_PULLS = 500;
    /** A time goes on over a blank line if its step there is at most so many steps before. */
    private static final int STEPS_OF_A_GAP = 3;
    private static final double RESTART_SHARE = 0.5;

    private final String file;
    private final int pullColumn;
    private final List<Mark> byNumber = new ArrayList<>();
    private final List<Mark> byHeader = new ArrayList<>();
    private final List<Mark> byBlank = new ArrayList<>();
    private final List<Mark> byTime = new ArrayList<>();
    private boolean blankInsidePull;
    private double began = Double.NaN;
    private double last = Double.NaN;
    private double step = Double.NaN;
    private int notRising;
    private int firstNotRising;

    /** A pull begins in a row, counted from 0; what it is called there. */
    private record Mark(int row, int line, String label) {
    }

    /** One pull: its name and its rows, the last one not in it. */
    record Stretch(String label, int from, int to) {
    }

    /** The pulls with what told them apart. */
    record Found(String how, List<Stretch> pulls) {
    }

    PullMarks(String file, int pullColumn) {
        this.file = file;
        this.pullColumn = pullColumn;
    }

    void headerAgain(int row, int line) {
        add(byHeader, new Mark(row, line, ""));
    }

    /** Takes a row with its time (NaN: none known) and whether a blank line stands before it. */
    void take(int row, Row cells, double time, boolean blankBefore) {
        if (pullColumn >= 0) {
            takeNumber(row, cells);
        }
        boolean first = Double.isNaN(last);
        if (blankBefore && row > 0) {
            boolean goesOn = time > last && time - last <= STEPS_OF_A_GAP * step;
            blankInsidePull |= goesOn;
            if (!goesOn) {
                add(byBlank, new Mark(row, cells.line(), ""));
            }
        }
        if (Double.isNaN(time)) {
            return;
        }
        if (!first && time < last && time - began <= RESTART_SHARE * (last - began)) {
            add(byTime, new Mark(row, cells.line(), ""));
            began = time;
        } else if (first) {
            began = time;
        } else if (time <= last) {
            notRising++;
            firstNotRising = notRising == 1 ? cells.line() : firstNotRising;
        } else {
            step = time - last;
        }
        last = time;
    }

    private void takeNumber(int row, Row cells) {
        CharSequence cell = cells.cell(pullColumn);
        boolean same = byNumber.isEmpty() ? false : same(byNumber.get(byNumber.size() - 1).label(), cell);
        if (!same && !NumberText.isBlank(cell) && !NumberText.isNoValue(cell)) {
            add(byNumber, new Mark(row, cells.line(), cell.toString().strip()));
        }
    }

    private static boolean same(String label, CharSequence cell) {
        return label.contentEquals(cell) || label.contentEquals(cell.toString().strip());
    }

    private static void add(List<Mark> marks, Mark mark) {
        if (marks.size() <= MOST_PULLS) {
            marks.add(mark);
        }
    }

    /** {@return the pulls in so many rows; empty where nothing says that there is more than one} */
    Optional<Found> found(int rows, String pullHeading) {
        boolean numbered = byNumber.size() > 1 || byNumber.size() == 1 && PullId.parse(byNumber.get(0).label()).isPresent();
        Optional<Found> found = numbered ? numbered(rows, pullHeading) : Optional.empty();
        return found.or(() -> marked("the header stands again", byHeader, rows))
                .or(() -> marked("blank lines stand between them", byBlank, rows))
                .or(() -> marked("the time starts again", byTime, rows));
    }

    private Optional<Found> numbered(int rows, String heading) {
        boolean tooMany = byNumber.size() > MOST_PULLS || byNumber.size() * 2 > rows;
        return tooMany || comesBack().isPresent()
                ? Optional.empty()
                : Optional.of(new Found("the column “" + heading + "” numbers them", stretches(byNumber, rows)));
    }

    /** {@return why the pulls cannot be told apart, if a pull comes back after another one} */
    Optional<InputException> trouble(int rows, String heading) {
        boolean few = byNumber.size() <= MOST_PULLS && byNumber.size() * 2 <= rows;
        return comesBack().filter(again -> few).map(again -> new InputException(Place.of(file, again.line(), heading),
                "pull " + again.label() + " comes back after another one",
                new Remedy("sort the rows by pull in a copy of the file, or import it with --one-pull",
                    "sort the rows by pull in a copy of the file, or choose below that each file is one pull")));
    }

    private Optional<Mark> comesBack() {
        Set<String> seen = new HashSet<>();
        return byNumber.stream().filter(mark -> !seen.add(mark.label())).findFirst();
    }

    private static Optional<Found> marked(String what, List<Mark> marks, int rows) {
        if (marks.isEmpty() || marks.size() >= MOST_PULLS) {
            return Optional.empty();
        }
        List<Mark> all = new ArrayList<>();
        if (marks.get(0).row() > 0) {
            all.add(new Mark(0, 0, ""));
        }
        all.addAll(marks);
        List<Stretch> stretches = stretches(all, rows);
        boolean longEnough = stretches.stream().allMatch(stretch -> stretch.to() - stretch.from() >= FEWEST_ROWS);
        String lines = marks.stream().limit(FEWEST_ROWS).map(mark -> String.valueOf(mark.line())).reduce((a, b) -> a + ", " + b).orElse("");
        String where = (marks.size() == 1 ? " at line " : " at lines ") + lines + (marks.size() > FEWEST_ROWS ? " …" : "");
        return longEnough && stretches.size() > 1 ? Optional.of(new Found(what + where, stretches)) : Optional.empty();
    }

    private static List<Stretch> stretches(List<Mark> marks, int rows) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            int from = i == 0 ? 0 : marks.get(i).row();
            int to = i + 1 < marks.size() ? marks.get(i + 1).row() : rows;
            stretches.add(new Stretch(marks.get(i).label(), from, to));
        }
        return stretches;
    }

    /** {@return what is doubtful about the order of the rows, one sentence each} */
    List<String> doubts(Optional<Found> found) {
        List<String> doubts = new ArrayList<>();
        boolean restarts = !byTime.isEmpty() && found.isEmpty();
        if (notRising > 0 || restarts) {
            int line = notRising > 0 ? firstNotRising : byTime.get(0).line();
            int count = notRising + (restarts ? byTime.size() : 0);
            doubts.add("the time does not rise in " + count + (count == 1 ? " row" : " rows") + ", first in line " + line);
        }
        if (blankInsidePull || found.isEmpty() && !byBlank.isEmpty()) {
            doubts.add("blank lines in the table are passed over");
        }
        return doubts;
    }
}
