package fairpull.report.chart;

import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The day: installs as blocks over the clock, A open and B hatched, warm-up pulls as rings, counted pulls as ticks, swaps as gaps;
 * beneath it, on the same clock, the values with the mean of each install.
 */
public final class DayStrip {
    private static final double BLOCK_HEIGHT = 46;
    private static final double PANEL_HEIGHT = 150;
    private static final double CLOCK_HEIGHT = 24;
    private static final double RIGHT = ValueStrip.ROOM_AT_RIGHT;

    private final Day day;
    private final ValueAxis axis;
    private final Scale clock;
    private final double top;
    private final List<Shape> shapes = new ArrayList<>();

    private DayStrip(Day day, ValueAxis axis, double left) {
        this.day = day;
        this.axis = axis;
        double from = day.blocks().stream().mapToDouble(Day.Block::start).min().orElse(0);
        double to = day.blocks().stream().mapToDouble(Day.Block::end).max().orElse(1);
        this.clock = new Scale(from, Math.max(to, from + 1), left, Drawing.WIDTH - RIGHT);
        this.top = day.name().isEmpty() ? 6 : 28;
    }

    /** {@return the strip of a day, with its values beneath} */
    public static Drawing draw(Day day, ValueAxis axis) {
        boolean withValues = ValueAxis.values(day).findAny().isPresent();
        double left = withValues ? ValueStrip.leftMargin(day, axis) : 10;
        return new DayStrip(day, axis, left).draw(withValues);
    }

    private Drawing draw(boolean withValues) {
        double panelTop = top + BLOCK_HEIGHT + 34;
        double bottom = withValues ? panelTop + PANEL_HEIGHT : top + BLOCK_HEIGHT + 6;
        if (!day.name().isEmpty()) {
            String name = LetterWidths.fit(day.name(), Shape.Type.STRONG, Drawing.WIDTH - 4);
            shapes.add(new Shape.Words(new Point(2, 15), name, Role.INK, Shape.Type.STRONG, Shape.Anchor.START));
        }
        clockLines(bottom);
        day.blocks().forEach(this::block);
        swaps();
        if (withValues) {
            shapes.addAll(ValueStrip.titled(day, axis, clock, new Bounds(clock.start(), panelTop, clock.end() - clock.start(),
                    PANEL_HEIGHT)));
        }
        String title = (day.name().isEmpty() ? "The day" : day.name()) + ": installs, pulls and values over the clock";
        return new Drawing(Drawing.WIDTH, bottom + CLOCK_HEIGHT, title, description(), shapes);
    }

    private String description() {
        return day.blocks().stream().map(block -> block.label() + ": " + block.marks().size() + " pulls"
                + (block.mean().isPresent() ? ", mean of those used " + axis.numbers().with(block.mean().getAsDouble()) : ""))
                .collect(Collectors.joining("; "));
    }

    private void clockLines(double bottom) {
        double zero = day.clockOfZero().orElse(0);
        double minutesPerLabel = (clock.to() - clock.from()) / Math.max(1, (clock.end() - clock.start()) / 76);
        int step = ClockSteps.atLeast(minutesPerLabel);
        for (double at : new Scale(clock.from() + zero, clock.to() + zero, clock.start(), clock.end()).multiples(step)) {
            double x = clock.at(at - zero);
            Shape.Words label = clockLabel(at, x, bottom);
            if (label.bounds().x() >= 0 && label.bounds().right() <= Drawing.WIDTH) {
                shapes.add(new Shape.Line(new Point(x, top), new Point(x, bottom), Role.LINE, 1, Shape.Dash.SOLID));
                shapes.add(label);
            }
        }
    }

    private Shape.Words clockLabel(double minutes, double x, double bottom) {
        long whole = Math.round(minutes);
        long ofDay = Math.floorMod(whole, 1440L);
        String text = day.clockOfZero().isPresent() ? ofDay / 60 + ":" + (ofDay % 60 < 10 ? "0" : "") + ofDay % 60
                : whole + "\u202fmin";
        return new Shape.Words(new Point(x, bottom + 17), text, Role.SOFT, Shape.Type.SMALL, Shape.Anchor.MIDDLE);
    }

    private void block(Day.Block block) {
        Role role = block.part() == Part.A ? Role.A : Role.B;
        Bounds bounds = boundsOf(block);
        shapes.add(new Shape.Area(bounds, 4, block.part() == Part.A ? Role.CARD : Role.B_FILL));
        if (block.part() == Part.B) {
            shapes.add(new Shape.Hatch(bounds, 8, Role.B));
        }
        shapes.add(new Shape.Frame(bounds, 4, role, 1.6));
        labelOf(block, bounds, role);
        double closest = closest(block);
        for (Day.Mark mark : block.marks()) {
            shapes.addAll(PullMarks.onStrip(mark, new Point(clock.at(mark.minutes()), bounds.bottom() - 12), role, closest));
        }
    }

    /** The letter and number stand on the ground of the part, so that hatching does not run through them. */
    private void labelOf(Day.Block block, Bounds bounds, Role role) {
        double width = LetterWidths.of(block.label(), Shape.Type.STRONG);
        boolean inside = bounds.width() >= width + 12;
        double x = inside ? bounds.x() + 7 : bounds.middle() - width / 2;
        if (block.part() == Part.B) {
            shapes.add(new Shape.Area(new Bounds(x - 2, bounds.y() + 3, width, 16), 2, Role.B_FILL));
        }
        shapes.add(new Shape.Words(new Point(x, bounds.y() + 16), block.label(), role, Shape.Type.STRONG, Shape.Anchor.START));
    }

    /** A block is never narrower than its label, if its neighbours leave it that room. */
    private Bounds boundsOf(Day.Block block) {
        double own = Math.max(2, clock.at(block.end()) - clock.at(block.start()));
        double least = Math.min(LetterWidths.of(block.label(), Shape.Type.STRONG) + 8, roomAround(block));
        double width = Math.max(own, least);
        double x = Math.min(clock.at((block.start() + block.end()) / 2) - width / 2, Drawing.WIDTH - 1 - width);
        return new Bounds(x, top, width, BLOCK_HEIGHT);
    }

    private double roomAround(Day.Block block) {
        double middle = clock.at((block.start() + block.end()) / 2);
        double room = Double.POSITIVE_INFINITY;
        for (Day.Block other : day.blocks()) {
            double distance = Math.abs(clock.at((other.start() + other.end()) / 2) - middle);
            room = other == block ? room : Math.min(room, distance - 2);
        }
        return Math.max(2, room);
    }

    private double closest(Day.Block block) {
        double[] places = block.marks().stream().mapToDouble(mark -> clock.at(mark.minutes())).sorted().toArray();
        double closest = 20;
        for (int place = 1; place < places.length; place++) {
            closest = Math.min(closest, places[place] - places[place - 1]);
        }
        return Math.max(2, closest);
    }

    private void swaps() {
        for (int place = 1; place < day.blocks().size(); place++) {
            Bounds before = boundsOf(day.blocks().get(place - 1));
            Bounds after = boundsOf(day.blocks().get(place));
            if (after.x() - before.right() >= LetterWidths.of("swap", Shape.Type.SMALL) + 6) {
                Shape.Words word = new Shape.Words(new Point((before.right() + after.x()) / 2, top + BLOCK_HEIGHT / 2 + 4), "swap",
                        Role.SOFT, Shape.Type.SMALL, Shape.Anchor.MIDDLE);
                shapes.addAll(List.of(word.ground(), word));
            }
        }
    }
}
