package fairpull.report.chart;

import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The days as they were run, as high as {@link PlanStrip} and in its place once they are over: installs as blocks over the clock, and
 * beneath them the value of every pull with the mean of each install.
 */
public final class MeasuredStrip {
    private static final double TOP = 16;
    private static final double BLOCK_HEIGHT = 20;
    private static final double PANEL_TOP = TOP + BLOCK_HEIGHT + 14;
    private static final double PANEL_HEIGHT = 62;
    private static final double HEIGHT = 136;
    private static final double LEAST_ROOM = 60;
    /** Half the size of what a click on a pull hits. */
    private static final double HALF = 5;

    private final List<Day> days;
    private final ValueAxis axis;
    private final Optional<Marked> chosen;
    private final double width;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<PlanStrip.Region> regions = new ArrayList<>();
    private final List<PlanStrip.Spot> spots = new ArrayList<>();

    private MeasuredStrip(List<Day> days, ValueAxis axis, Optional<Marked> chosen, double width) {
        this.days = days;
        this.axis = axis;
        this.chosen = chosen;
        this.width = width;
    }

    /**
     * Draws the days of a test.
     *
     * @param days as they were run; one at least
     * @param axis of the values
     * @param chosen the install or pull that is marked; empty for none
     * @param width of the drawing
     * @return the strip
     */
    public static PlanStrip draw(List<Day> days, ValueAxis axis, Optional<Marked> chosen, double width) {
        return new MeasuredStrip(days, axis, chosen, width).draw();
    }

    private PlanStrip draw() {
        double margins = days.stream().mapToDouble(day -> ValueStrip.leftMargin(day, axis) + ValueStrip.ROOM_AT_RIGHT).sum();
        double all = days.stream().mapToDouble(MeasuredStrip::span).sum();
        double x = 0;
        for (Day day : days) {
            double start = x + ValueStrip.leftMargin(day, axis);
            double share = Math.max(LEAST_ROOM, (width - margins) * span(day) / all);
            Scale clock = new Scale(from(day), from(day) + span(day), start, start + share);
            title(day, x == 0, clock);
            clockLabels(day, clock);
            day.blocks().forEach(block -> block(block, clock));
            Bounds panel = new Bounds(start, PANEL_TOP, share, PANEL_HEIGHT);
            shapes.addAll(ValueStrip.shapes(day, axis, clock, panel));
            spots(day, clock, panel);
            x = start + share + ValueStrip.ROOM_AT_RIGHT;
        }
        return new PlanStrip(new Drawing(width, HEIGHT, "The day as measured: installs and the value of every pull over the clock",
                description(), shapes), regions, spots);
    }

    private void spots(Day day, Scale clock, Bounds panel) {
        for (Day.Block block : day.blocks()) {
            for (Day.Mark mark : block.marks()) {
                ValueStrip.place(mark, day, axis, clock, panel).ifPresent(at -> {
                    PlanStrip.Spot spot = new PlanStrip.Spot(mark.pull(), new Bounds(at.x() - HALF, at.y() - HALF, 2 * HALF, 2 * HALF));
                    spots.add(spot);
                    chosen.flatMap(Marked::pull).filter(mark.pull()::equals).ifPresent(marked -> shapes.add(spot.frame()));
                });
            }
        }
    }

    private static double from(Day day) {
        return day.blocks().stream().mapToDouble(Day.Block::start).min().orElse(0);
    }

    private static double span(Day day) {
        return Math.max(1, day.blocks().stream().mapToDouble(Day.Block::end).max().orElse(1) - from(day));
    }

    private String description() {
        return days.stream().flatMap(day -> day.blocks().stream()).map(block -> block.label() + ": " + block.marks().size() + " pulls"
                + (block.mean().isPresent() ? ", mean of those used " + axis.numbers().with(block.mean().getAsDouble()) : ""))
                .collect(Collectors.joining("; "));
    }

    /** The session where there are several; what is measured, over the first. */
    private void title(Day day, boolean first, Scale clock) {
        String session = day.name() + (first && !day.name().isEmpty() ? ": " : "");
        String text = LetterWidths.fit(session + (first ? axis.label() : ""), Shape.Type.SMALL, clock.end() - clock.start());
        if (!text.isEmpty()) {
            shapes.add(new Shape.Words(new Point(clock.start(), TOP - 5), text, Role.SOFT, Shape.Type.SMALL, Shape.Anchor.START));
        }
    }

    private void clockLabels(Day day, Scale clock) {
        double zero = day.clockOfZero().orElse(0);
        double perLabel = (clock.to() - clock.from()) / Math.max(1, (clock.end() - clock.start()) / 70);
        Scale ofDay = new Scale(clock.from() + zero, clock.to() + zero, clock.start(), clock.end());
        for (double at : ofDay.multiples(ClockSteps.atLeast(perLabel))) {
            double x = ofDay.at(at);
            shapes.add(new Shape.Line(new Point(x, TOP - 2), new Point(x, PANEL_TOP + PANEL_HEIGHT), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(new Shape.Words(new Point(x, HEIGHT - 7), clock(day, at), Role.SOFT, Shape.Type.SMALL, Shape.Anchor.MIDDLE)
                    .within(width));
        }
    }

    private static String clock(Day day, double minutes) {
        long whole = Math.round(minutes);
        return day.clockOfZero().isEmpty() ? whole + "\u202fmin"
                : String.format(Locale.ROOT, "%02d:%02d", Math.floorMod(whole / 60, 24L), Math.floorMod(whole, 60L));
    }

    private void block(Day.Block block, Scale clock) {
        Role role = block.part() == Part.A ? Role.A : Role.B;
        double start = clock.at(block.start());
        Bounds bounds = new Bounds(start, TOP, Math.max(3, clock.at(block.end()) - start), BLOCK_HEIGHT);
        regions.add(new PlanStrip.Region(block.label(), bounds));
        shapes.add(new Shape.Area(bounds, 4, block.part() == Part.A ? Role.CARD : Role.B_FILL));
        if (block.part() == Part.B) {
            shapes.add(new Shape.Hatch(bounds, 8, Role.B));
        }
        shapes.add(new Shape.Frame(bounds, 4, role, 1.6));
        if (chosen.filter(mark -> mark.isWhole(block.label())).isPresent()) {
            shapes.add(new Shape.Frame(new Bounds(bounds.x() - 3, bounds.y() - 3, bounds.width() + 6, bounds.height() + 6), 6, Role.INK,
                    2));
        }
        double wide = LetterWidths.of(block.label(), Shape.Type.STRONG);
        if (bounds.width() >= wide + 4) {
            if (block.part() == Part.B) {
                shapes.add(new Shape.Area(new Bounds(bounds.middle() - wide / 2 - 1, bounds.y() + 2, wide + 2, 16), 2, Role.B_FILL));
            }
            shapes.add(new Shape.Words(new Point(bounds.middle(), bounds.y() + 15), block.label(), role, Shape.Type.STRONG,
                    Shape.Anchor.MIDDLE));
        }
    }
}
