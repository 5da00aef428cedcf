package fairpull.engine.tracing;

import fairpull.domain.tracing.LineEnd;
import fairpull.domain.tracing.LineEnd.Reason;
import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.PixelPoint;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * A line followed in one direction, column by column. The graph of a function shows one run of its colour in every column, and that run
 * touches the one before; whatever departs from this is bridged where the line goes on as it went, or ends the walk with the reason.
 */
final class Walk {
    /** Columns from which the direction is taken. */
    private static final int BEHIND = 14;
    /** A run of less than so much of the line's width is a speck. */
    private static final double SPECK = 0.4;
    /** Beside another colour, which hides the rest, less will do. */
    private static final double SLIVER = 0.2;
    /** No pixel of a run that is a line is fainter than this, as grid lines and what JPEG leaves around a line are. */
    private static final double FAINT = 0.55;
    /** Of a run beside another colour that shows less of the line than this, a part is hidden. */
    private static final double WHOLE = 0.85;
    private static final double TELLING = 0.45;
    /** Behind a gap the line must be seen over this share of its length. */
    private static final double SHOWN = 0.25;
    /** The slanted end of a dash shows less of the line than this. */
    private static final double PARTLY = 0.65;
    /** Columns of such an end. */
    private static final int SLANTED = 3;
    /** A run that holds less than this share of another one's colour is noise beside it. */
    private static final double PLAINLY_LESS = 0.75;
    /** Where two lines run into each other they grow thicker than this before it is seen that they are two. */
    private static final double SWOLLEN = 1.2;
    /** A covered stretch is longer than a missing one may be: lines that cross at a small angle hide each other for long. */
    private static final int COVERED_TIMES = 5;

    private final LineStart start;
    private final Ink ink;
    private final double width;
    private final int direction;
    private final int longestGap;
    private final Deque<PixelPoint> behind = new ArrayDeque<>();
    private final List<Read> reads = new ArrayList<>();
    private final List<LineGap> gaps = new ArrayList<>();
    private Run last;
    private int column;
    private int missing;
    private boolean covered;
    private Reason ended;

    /** What was read in a column. */
    record Read(PixelPoint at, double mass) {
    }

    Walk(LineStart start, int direction, int longestGap) {
        this.start = start;
        ink = start.ink();
        width = start.widthPx();
        this.direction = direction;
        this.longestGap = longestGap;
        last = start.run();
        column = start.column();
        behind.add(new PixelPoint(column + 0.5, last.centre()));
    }

    /** Walks until the line ends. */
    Walk done() {
        while (ended == null) {
            column += direction;
            if (column < 0 || column >= ink.picture().width()) {
                ended = Reason.EDGE_OF_PICTURE;
            } else {
                step(candidates());
            }
        }
        withdraw();
        return this;
    }

    /** A gap behind which too little was read to show that the line goes on there was no gap: it ends before it. */
    private void withdraw() {
        while (!gaps.isEmpty()) {
            LineGap gap = gaps.get(gaps.size() - 1);
            List<Read> behindIt = reads.stream()
                    .filter(read -> direction > 0 ? read.at().xPx() > gap.toPx() : read.at().xPx() < gap.fromPx()).toList();
            if (behindIt.size() >= Math.max(2, SHOWN * (gap.toPx() - gap.fromPx()))) {
                return;
            }
            reads.removeAll(behindIt);
            gaps.remove(gap);
            ended = gap.reason() == LineGap.Reason.COVERED && ended == Reason.NO_MORE_LINE ? Reason.LOST_UNDER_ANOTHER : ended;
        }
    }

    /** {@return what was read, in the order of the walk, without the start} */
    List<Read> reads() {
        return reads;
    }

    List<LineGap> gaps() {
        return gaps;
    }

    LineEnd end() {
        return new LineEnd(reads.isEmpty() ? new PixelPoint(start.column() + 0.5, start.run().centre()) : reads.get(reads.size() - 1).at(),
                ended);
    }

    private StraightLine ahead() {
        return StraightLine.through(List.copyOf(behind));
    }

    private double slope() {
        return behind.size() < 3 ? 0 : ahead().slope();
    }

    private List<Run> candidates() {
        if (missing == 0) {
            return touching(last, column);
        }
        double expected = ahead().at(column + 0.5);
        double spare = spare();
        return Run.within(ink, column, (int) Math.floor(expected - spare), (int) Math.ceil(expected + spare)).stream()
                .filter(this::isNoSpeck).toList();
    }

    private List<Run> touching(Run run, int inColumn) {
        return Run.within(ink, inColumn, run.top() - 1, run.bottom() + 1).stream().filter(this::isNoSpeck).toList();
    }

    /** How far from its direction the line may come out of a gap, in pixels. */
    private double spare() {
        return width / 2 + 1 + 0.2 * missing * Math.hypot(1, slope());
    }

    private boolean isNoSpeck(Run run) {
        return run.mass() >= (run.isBesideAnother() ? SLIVER : SPECK) * width && run.strongest() >= FAINT;
    }

    private void step(List<Run> candidates) {
        List<Run> lasting = candidates.size() < 2 ? candidates : plainest(candidates);
        if (lasting.size() == 1) {
            single(lasting.get(0));
        } else if (lasting.isEmpty() || isOneCovered(lasting)) {
            miss();
        } else {
            end(missing == 0 ? Reason.MEETS_SAME_COLOUR : Reason.SEVERAL_AHEAD);
        }
    }

    /** Of several runs those that last, and of these the one that plainly holds most of the colour, if one does. */
    private List<Run> plainest(List<Run> candidates) {
        double[] strengths = candidates.stream().mapToDouble(run -> lasting(run, column, direction)).toArray();
        double most = Arrays.stream(strengths).max().orElse(0);
        List<Run> plain = new ArrayList<>();
        for (int place = 0; place < strengths.length; place++) {
            if (strengths[place] > 0 && strengths[place] >= PLAINLY_LESS * most) {
                plain.add(candidates.get(place));
            }
        }
        return plain;
    }

    /**
     * How strong the colour is, on average, in the columns that follow a run; 0 where they do not hold it on: noise and the letters of a
     * legend end within a few columns.
     */
    private double lasting(Run first, int from, int towards) {
        Run run = first;
        double sum = run.strongest();
        int columns = (int) Math.ceil(3 * width) + 6;
        for (int step = 1; step <= columns; step++) {
            List<Run> next = touching(run, from + towards * step);
            if (next.isEmpty()) {
                return 0;
            }
            run = next.get(0);
            sum += run.strongest();
        }
        return sum / (columns + 1);
    }

    private boolean lasts(Run run, int from, int towards) {
        return lasting(run, from, towards) > PLAINLY_LESS;
    }

    private void single(Run run) {
        if (missing == 0 && joinsAnother(run)) {
            end(Reason.MEETS_SAME_COLOUR);
        } else if (run.height() > tall()) {
            stroke(run);
        } else if (run.mass() < WHOLE * extent() && run.isBesideAnother()) {
            partlyHidden(run);
        } else if (missing > 0 && isSlanted(run.mass())) {
            miss();
        } else {
            accept(column, run, run.centre());
        }
    }

    /** The end of a dash stands square to the line and so shows less of it in a column. */
    private boolean isSlanted(double mass) {
        return mass < PARTLY * extent() && mass < extent() - 1.1;
    }

    /** How far the line reaches down a column. */
    private double extent() {
        return width * Math.hypot(1, slope());
    }

    /** The edge that is free still tells where the line is; that of a sliver only where it leads. */
    private void partlyHidden(Run run) {
        double centre = run.centreFromFreeEdge(extent());
        covered = true;
        if (Double.isNaN(centre) || Math.abs(centre - ahead().at(column + 0.5)) > spare()) {
            miss();
        } else if (run.mass() < TELLING * extent()) {
            miss();
            behind.addLast(new PixelPoint(column + 0.5, centre));
        } else {
            accept(column, run, centre);
        }
    }

    private double tall() {
        return 3 * width + 3 * Math.abs(slope()) + 4;
    }

    /** Another run of the column before touches this one: two lines of the colour come together. */
    private boolean joinsAnother(Run run) {
        return Run.within(ink, column - direction, run.top() - 1, run.bottom() + 1).stream().anyMatch(other -> isNoSpeck(other)
                && !other.touches(last) && other.mass() >= WHOLE * width && lasts(other, column - direction, -direction));
    }

    /** Two slivers of one line with another colour over its middle. */
    private boolean isOneCovered(List<Run> candidates) {
        Run first = candidates.get(0);
        Run second = candidates.get(candidates.size() - 1);
        boolean between = true;
        for (int row = first.bottom(); row < second.top(); row++) {
            between &= ink.isCovered(column, row) || ink.share(column, row) > 0;
        }
        covered |= between;
        return between && second.bottom() - first.top() <= 1.5 * extent() + 2;
    }

    private void accept(int at, Run run, double centre) {
        closeGap(at, covered ? LineGap.Reason.COVERED : LineGap.Reason.INTERRUPTED);
        PixelPoint point = new PixelPoint(at + 0.5, centre);
        reads.add(new Read(point, run.mass()));
        behind.addLast(point);
        if (behind.size() > BEHIND) {
            behind.removeFirst();
        }
        last = run;
    }

    private void closeGap(int at, LineGap.Reason reason) {
        if (missing > 0) {
            double here = at + 0.5 - direction;
            double back = at + 0.5 - direction * missing;
            gaps.add(new LineGap(Math.min(here, back) - 0.5, Math.max(here, back) + 0.5, reason));
        }
        missing = 0;
        covered = false;
    }

    private void miss() {
        missing++;
        while (missing <= SLANTED && !covered && reads.size() > SLANTED && isSlanted(reads.get(reads.size() - 1).mass())) {
            reads.remove(reads.size() - 1);
            missing++;
        }
        double expected = ahead().at(column + 0.5);
        int reach = (int) Math.ceil(width / 2) + 1;
        for (int row = (int) Math.floor(expected) - reach; row <= expected + reach; row++) {
            covered |= ink.isCovered(column, row);
        }
        if (missing > (covered ? COVERED_TIMES : 1) * longestGap) {
            end(covered ? Reason.LOST_UNDER_ANOTHER : Reason.NO_MORE_LINE);
        }
    }

    /**
     * A run much taller than the line so far: a stroke of the same colour straight across, such as a grid line, behind which the line goes
     * on as it went; or the line itself turning steep, which then goes on from the other end of the stroke.
     */
    private void stroke(Run first) {
        double expectedSlope = slope();
        StraightLine before = ahead();
        List<Run> strokes = new ArrayList<>(List.of(first));
        int longest = (int) Math.ceil(3 * width) + 4;
        for (int steps = 1; steps <= longest; steps++) {
            int next = column + direction * steps;
            Run stroke = strokes.get(strokes.size() - 1);
            List<Run> runs = touching(stroke, next);
            if (runs.stream().filter(run -> runs.size() > 1 && lasts(run, next, direction)).count() > 1) {
                end(Reason.MEETS_SAME_COLOUR);
                return;
            }
            if (runs.isEmpty()) {
                end(Reason.NO_MORE_LINE);
                return;
            }
            if (runs.get(0).height() <= tall()) {
                double away = Math.abs(runs.get(0).centre() - before.at(next + 0.5));
                boolean goesOn = away <= width + 2 + 0.5 * steps * Math.hypot(1, expectedSlope);
                leave(strokes, next, runs.get(0), goesOn);
                return;
            }
            strokes.add(runs.get(0));
        }
        end(Reason.NO_LINE_AHEAD);
    }

    private void leave(List<Run> strokes, int next, Run run, boolean goesOn) {
        if (goesOn) {
            missing += strokes.size();
            closeGap(next, LineGap.Reason.STROKE);
        } else {
            for (int place = 0; place < strokes.size(); place++) {
                accept(column + direction * place, strokes.get(place), strokes.get(place).centre());
            }
            behind.clear();
        }
        column = next;
        accept(next, run, run.centre());
    }

    private void end(Reason reason) {
        ended = reason;
        if (reason == Reason.MEETS_SAME_COLOUR) {
            double most = SWOLLEN * extent();
            while (!reads.isEmpty() && reads.get(reads.size() - 1).mass() > most) {
                reads.remove(reads.size() - 1);
            }
        }
    }
}
