package fairpull.engine.tracing;

import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PixelPoint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The line at a click: its colour, the ground beneath it, and its width.
 *
 * <p>The ground is the most frequent colour around the click (16 levels a channel). The colour is that of the pixel by the click that is
 * least like the ground, refined to the mean of the strongest third of the strongest pixels of the columns nearby. The width across the
 * line is the median of its extents down those columns divided by √(1 + s²), s the slope of a straight line through their centres.
 *
 * @param ink colour and ground
 * @param column where the line is entered
 * @param run the line there
 * @param widthPx across the line
 */
record LineStart(Ink ink, int column, Run run, double widthPx) {
    private static final int GROUND_PX = 60;
    private static final int NEAR_PX = 4;
    private static final int AROUND_COLUMNS = 15;
    private static final int MOST_HEIGHT = 200;
    /** ΔE*ab below which a pixel is no more than the ground with some noise. */
    private static final double LIKE_GROUND = 12;
    /** Above it the click hit a line plainly, and there is no need to look further away. */
    private static final double PLAIN = 30;
    private static final double STRONG = 0.6;

    /** {@return the line at a click; empty where there is none} */
    static Optional<LineStart> at(Picture picture, PixelPoint click) {
        if (!picture.holds(click.column(), click.row())) {
            return Optional.empty();
        }
        int ground = ground(picture, click);
        return colour(picture, click, ground).flatMap(line -> enter(new Ink(picture, line, ground), click)).map(LineStart::refined);
    }

    /** {@return the colour that the line is drawn on} */
    static int ground(Picture picture, PixelPoint click) {
        Map<Integer, int[]> bins = new HashMap<>();
        for (int row = Math.max(0, click.row() - GROUND_PX); row < Math.min(picture.height(), click.row() + GROUND_PX); row++) {
            for (int column = Math.max(0, click.column() - GROUND_PX); column < Math.min(picture.width(), click.column() + GROUND_PX);
                    column++) {
                int rgb = picture.rgb(column, row);
                int[] sums = bins.computeIfAbsent(rgb & 0xF0F0F0, none -> new int[4]);
                sums[0]++;
                sums[1] += rgb >> 16 & 255;
                sums[2] += rgb >> 8 & 255;
                sums[3] += rgb & 255;
            }
        }
        int[] most = new TreeMap<>(bins).values().stream().max(Comparator.comparingInt(sums -> sums[0])).orElseThrow();
        return most[1] / most[0] << 16 | most[2] / most[0] << 8 | most[3] / most[0];
    }

    private static Optional<Integer> colour(Picture picture, PixelPoint click, int ground) {
        int best = ground;
        for (int reach = 1; reach <= NEAR_PX && unlike(best, ground) < PLAIN; reach++) {
            for (int row = click.row() - reach; row <= click.row() + reach; row++) {
                for (int column = click.column() - reach; column <= click.column() + reach; column++) {
                    if (picture.holds(column, row) && unlike(picture.rgb(column, row), ground) > unlike(best, ground)) {
                        best = picture.rgb(column, row);
                    }
                }
            }
        }
        return unlike(best, ground) > LIKE_GROUND ? Optional.of(best) : Optional.empty();
    }

    private static double unlike(int one, int other) {
        return Lab.of(one).distance(Lab.of(other));
    }

    private static Optional<LineStart> enter(Ink ink, PixelPoint click) {
        LineStart best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int column = click.column() - NEAR_PX; column <= click.column() + NEAR_PX; column++) {
            for (Run run : Run.within(ink, column, click.row() - NEAR_PX, click.row() + NEAR_PX + 1)) {
                double away = Math.abs(column + 0.5 - click.xPx()) + Math.max(0, Math.abs(run.centre() - click.yPx()) - run.height() / 2.0);
                if (away < least && run.height() <= MOST_HEIGHT && run.strongest() >= STRONG) {
                    least = away;
                    best = new LineStart(ink, column, run, run.mass());
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The same place seen with the colour of the strongest pixels around it, which noise and faint edges move less. */
    private LineStart refined() {
        List<Seen> seen = around();
        List<Integer> strong = new ArrayList<>();
        for (Seen one : seen) {
            int row = strongest(one);
            if (ink.share(one.column(), row) >= STRONG) {
                strong.add(ink.picture().rgb(one.column(), row));
            }
        }
        if (strong.isEmpty()) {
            return this;
        }
        Ink better = new Ink(ink.picture(), strongest(strong), ink.ground());
        LineStart again = enter(better, new PixelPoint(column + 0.5, run.centre())).orElse(this);
        return new LineStart(again.ink, again.column, again.run, again.width());
    }

    private int strongest(Seen one) {
        int best = one.run().top();
        for (int row = one.run().top(); row < one.run().bottom(); row++) {
            best = ink.share(one.column(), row) > ink.share(one.column(), best) ? row : best;
        }
        return best;
    }

    /** The mean of the third that is least like the ground. */
    private int strongest(List<Integer> colours) {
        List<Integer> third = colours.stream().sorted(Comparator.comparingDouble((Integer rgb) -> unlike(rgb, ink.ground())).reversed())
                .limit((colours.size() + 2) / 3).toList();
        return mean(third, 16) << 16 | mean(third, 8) << 8 | mean(third, 0);
    }

    private static int mean(List<Integer> colours, int shift) {
        return (int) Math.round(colours.stream().mapToInt(rgb -> rgb >> shift & 255).average().orElseThrow());
    }

    private record Seen(int column, Run run) {
    }

    /** The line in the columns on both sides, as long as each touches the one before and nothing else does. */
    private List<Seen> around() {
        List<Seen> seen = new ArrayList<>(List.of(new Seen(column, run)));
        for (int direction : new int[] {-1, 1}) {
            Run last = run;
            for (int step = 1; step <= AROUND_COLUMNS; step++) {
                int next = column + direction * step;
                List<Run> touching = new ArrayList<>(Run.within(ink, next, last.top() - 1, last.bottom() + 1));
                if (touching.size() != 1) {
                    break;
                }
                last = touching.get(0);
                seen.add(new Seen(next, last));
            }
        }
        return seen;
    }

    private double width() {
        List<Seen> seen = around();
        double[] widths = new double[seen.size()];
        double slope = seen.size() < 3 ? 0 : StraightLine.through(seen.stream().map(one -> new PixelPoint(one.column() + 0.5,
                one.run().centre())).toList()).slope();
        for (int place = 0; place < widths.length; place++) {
            widths[place] = seen.get(place).run().mass() / Math.hypot(1, slope);
        }
        Arrays.sort(widths);
        return Math.max(0.5, widths[widths.length / 2]);
    }
}
