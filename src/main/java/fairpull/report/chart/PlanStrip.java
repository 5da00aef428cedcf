package fairpull.report.chart;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import fairpull.report.wording.DayWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The planned days, from left to right: installs as blocks over the clock, A open and B hatched, warm-up pulls as rings, counted pulls
 * as ticks, swaps and breaks as gaps with a word, the end of day as a line, and beneath it the start temperature in its gate.
 *
 * @param drawing the strip
 * @param regions where each install stands on it, in the order in which they are run
 * @param pulls where each pull stands within them
 */
public record PlanStrip(Drawing drawing, List<Region> regions, List<Spot> pulls) {
    private static final double BLOCK_HEIGHT = 46;
    private static final double TOP = 14;
    private static final double GATE_TOP = TOP + BLOCK_HEIGHT + 24;
    private static final double GATE_HEIGHT = 16;
    private static final double CLOCK_TOP = GATE_TOP + GATE_HEIGHT + 14;
    private static final double HEIGHT = CLOCK_TOP + 22;
    private static final double LEFT = 84;
    private static final double RIGHT = 26;
    private static final double BETWEEN_DAYS = 40;
    private static final int[] CLOCK_STEPS_MIN = {5, 10, 15, 30, 60, 120, 240, 480};
    private static final double MINUTE = 60;

    /**
     * Where an install stands.
     *
     * @param install its label
     * @param bounds its block
     */
    public record Region(String install, Bounds bounds) {
    }

    /**
     * Where a pull stands.
     *
     * @param pull which one
     * @param bounds what a click on it hits
     */
    public record Spot(PullId pull, Bounds bounds) {
        private static final double MARGIN = 2;

        /** {@return a frame around it, where it is marked} */
        Shape.Frame frame() {
            return new Shape.Frame(new Bounds(bounds.x() - MARGIN, bounds.y() - MARGIN, bounds.width() + 2 * MARGIN,
                    bounds.height() + 2 * MARGIN), 3, Role.INK, 2);
        }
    }

    /**
     * A start temperature.
     *
     * @param timeS when, on the clock of its day
     * @param riseK above the reference pull
     */
    public record Start(double timeS, double riseK) {
    }

    /**
     * What is known of start temperatures.
     *
     * @param days the predicted start of every pull, one list a day
     * @param toleranceK half the width of the gate
     */
    public record Heat(List<List<Start>> days, double toleranceK) {
        public Heat {
            days = List.copyOf(days);
        }
    }

    /**
     * What is known of a day under way.
     *
     * @param session the place of its session among the days
     * @param nowS the time now, on its clock
     * @param driven the pulls that were driven
     * @param values of the pulls that came in; none where they are not to be seen
     */
    public record Running(int session, double nowS, Set<PullId> driven, Map<PullId, Double> values) {
        public Running {
            driven = Set.copyOf(driven);
            values = Map.copyOf(values);
        }
    }

    public PlanStrip {
        regions = List.copyOf(regions);
        pulls = List.copyOf(pulls);
    }

    /**
     * Draws the days of a plan.
     *
     * @param days their clocks
     * @param heat the start temperatures; empty where no cool-down is known
     * @param chosen the install or pull that is marked; empty for none
     * @param width of the drawing
     * @return the strip
     */
    public static PlanStrip draw(List<DayClock> days, Optional<Heat> heat, Optional<Marked> chosen, double width) {
        return new Layout(days, heat, chosen, width, Optional.empty()).draw();
    }

    /** Draws the same while the day is run: what was driven in full, what is to come thinly, a line at the time now. */
    public static PlanStrip draw(List<DayClock> days, Optional<Heat> heat, Optional<Marked> chosen, double width, Running running) {
        return new Layout(days, heat, chosen, width, Optional.of(running)).draw();
    }

    private static final class Layout {
        private final List<DayClock> days;
        private final Optional<Heat> heat;
        private final Optional<Marked> chosen;
        private final double width;
        private final List<Shape> shapes = new ArrayList<>();
        private final List<Region> regions = new ArrayList<>();
        private final List<Spot> spots = new ArrayList<>();

        private final Optional<Running> running;

        Layout(List<DayClock> days, Optional<Heat> heat, Optional<Marked> chosen, double width, Optional<Running> running) {
            this.running = running;
            this.days = days;
            this.heat = heat;
            this.chosen = chosen;
            this.width = width;
        }

        PlanStrip draw() {
            double room = width - LEFT - RIGHT - BETWEEN_DAYS * (days.size() - 1);
            double all = days.stream().mapToDouble(day -> spanS(day)).sum();
            double x = LEFT;
            words(LEFT - 12, GATE_TOP + GATE_HEIGHT / 2 + 4, "start temp", Role.GATE, Shape.Anchor.END);
            for (int place = 0; place < days.size(); place++) {
                DayClock day = days.get(place);
                double share = Math.max(60, room * spanS(day) / all);
                Scale clock = new Scale(day.startS(), day.startS() + spanS(day), x, x + share);
                new OneDay(day, clock, place).draw();
                x += share + BETWEEN_DAYS;
            }
            String title = "The day as planned: installs, pulls and start temperature over the clock";
            return new PlanStrip(new Drawing(width, HEIGHT, title, description(), shapes), regions, spots);
        }

        /** From the start of the day to its end, or to the last pull where that is later. */
        private static double spanS(DayClock day) {
            return Math.max(MINUTE, day.finishS() - day.startS());
        }

        private String description() {
            List<String> texts = days.stream().map(DayWords::day).toList();
            return String.join(" ", texts);
        }

        private void words(double x, double y, String text, Role role, Shape.Anchor anchor) {
            shapes.add(new Shape.Words(new Point(x, y), text, role, Shape.Type.SMALL, anchor));
        }

        /** One day on its own clock. */
        private final class OneDay {
            private final DayClock day;
            private final Scale clock;
            private final int place;

            OneDay(DayClock day, Scale clock, int place) {
                this.day = day;
                this.clock = clock;
                this.place = place;
            }

            void draw() {
                clockLines();
                gate();
                if (days.size() > 1) {
                    words(clock.start(), TOP - 4, day.session(), Role.SOFT, Shape.Anchor.START);
                }
                day.installs().forEach(this::install);
                gaps();
                heat.ifPresent(this::trace);
                end();
                running.filter(known -> known.session() == place).ifPresent(this::now);
            }

            private void clockLines() {
                double perLabel = (clock.to() - clock.from()) / MINUTE / Math.max(1, (clock.end() - clock.start()) / 70);
                int step = CLOCK_STEPS_MIN[CLOCK_STEPS_MIN.length - 1];
                for (int k = CLOCK_STEPS_MIN.length - 1; k >= 0 && CLOCK_STEPS_MIN[k] >= perLabel; k--) {
                    step = CLOCK_STEPS_MIN[k];
                }
                for (double at : clock.multiples(step * MINUTE)) {
                    double x = clock.at(at);
                    shapes.add(new Shape.Line(new Point(x, TOP - 2), new Point(x, CLOCK_TOP), Role.LINE, 1, Shape.Dash.SOLID));
                    words(x, CLOCK_TOP + 15, DayWords.at(day, at), Role.SOFT, Shape.Anchor.MIDDLE);
                }
            }

            private void gate() {
                double x = clock.start();
                double right = clock.end();
                if (heat.isEmpty()) {
                    if (place == 0) {
                        words(x + 8, GATE_TOP + GATE_HEIGHT / 2 + 4, "known once a cool-down is taken, on Limits", Role.SOFT,
                                Shape.Anchor.START);
                    }
                    return;
                }
                shapes.add(new Shape.Area(new Bounds(x, GATE_TOP, right - x, GATE_HEIGHT), 0, Role.GATE_FILL));
                for (double y : new double[] {GATE_TOP, GATE_TOP + GATE_HEIGHT}) {
                    shapes.add(new Shape.Line(new Point(x, y), new Point(right, y), Role.GATE, 1, Shape.Dash.BROKEN));
                }
            }

            private void install(DayClock.Span span) {
                Part part = span.install().startsWith("A") ? Part.A : Part.B;
                Role role = part == Part.A ? Role.A : Role.B;
                Bounds bounds = new Bounds(clock.at(span.startS()), TOP, Math.max(3, clock.at(span.endS()) - clock.at(span.startS())),
                        BLOCK_HEIGHT);
                regions.add(new Region(span.install(), bounds));
                shapes.add(new Shape.Area(bounds, 4, part == Part.A ? Role.CARD : Role.B_FILL));
                if (part == Part.B) {
                    shapes.add(new Shape.Hatch(bounds, 8, Role.B));
                }
                shapes.add(new Shape.Frame(bounds, 4, role, 1.6));
                if (chosen.filter(mark -> mark.isWhole(span.install())).isPresent()) {
                    shapes.add(new Shape.Frame(new Bounds(bounds.x() - 3, bounds.y() - 3, bounds.width() + 6, bounds.height() + 6), 6,
                            Role.INK, 2));
                }
                label(span, bounds, part, role);
                pulls(span, bounds, role);
            }

            private void label(DayClock.Span span, Bounds bounds, Part part, Role role) {
                double wide = LetterWidths.of(span.install(), Shape.Type.STRONG);
                if (bounds.width() < wide + 4) {
                    return;
                }
                double x = Math.min(bounds.x() + 7, bounds.middle() - wide / 2);
                x = Math.max(x, bounds.x() + 2);
                if (part == Part.B) {
                    shapes.add(new Shape.Area(new Bounds(x - 2, bounds.y() + 3, Math.min(wide, bounds.right() - x), 17), 2, Role.B_FILL));
                }
                shapes.add(new Shape.Words(new Point(x, bounds.y() + 16), span.install(), role, Shape.Type.STRONG, Shape.Anchor.START));
            }

            private void pulls(DayClock.Span span, Bounds bounds, Role role) {
                List<DayEvent> pulls = day.events().stream()
                        .filter(event -> event.kind().isPull() && event.install().equals(span.install())).toList();
                double apart = bounds.width() / Math.max(1, pulls.size());
                double y = bounds.bottom() - 10;
                for (DayEvent pull : pulls) {
                    double x = clock.at((pull.startS() + pull.endS()) / 2);
                    double half = Math.min(6, apart / 2);
                    Spot spot = new Spot(idOf(pull), new Bounds(x - half, y - 11, 2 * half, 18));
                    spots.add(spot);
                    chosen.flatMap(Marked::pull).filter(spot.pull()::equals).ifPresent(marked -> shapes.add(spot.frame()));
                    if (pull.kind() == DayEvent.Kind.WARM_UP) {
                        shapes.add(new Shape.Ring(new Point(x, y), Math.min(2.8, apart * 0.35), role, 1.3));
                    } else {
                        double thick = isDriven(pull) ? Math.min(3, apart * 0.5) : 1;
                        shapes.add(new Shape.Line(new Point(x, y - 9), new Point(x, y + 6), role, thick, Shape.Dash.SOLID));
                        running.map(known -> known.values().get(idOf(pull))).ifPresent(value -> value(value, x, role, part(span)));
                    }
                }
            }

            private static PullId idOf(DayEvent pull) {
                return new PullId(pull.install(), pull.kind() == DayEvent.Kind.WARM_UP, pull.number());
            }

            private static Part part(DayClock.Span span) {
                return span.install().startsWith("A") ? Part.A : Part.B;
            }

            private boolean isDriven(DayEvent pull) {
                return running.map(known -> known.driven().contains(idOf(pull))).orElse(true);
            }

            /** A measured value in the upper half of its block, higher for more. */
            private void value(double value, double x, Role role, Part part) {
                double least = running.orElseThrow().values().values().stream().mapToDouble(one -> one).min().orElse(value);
                double most = running.orElseThrow().values().values().stream().mapToDouble(one -> one).max().orElse(value);
                double y = most > least ? new Scale(least, most, TOP + 23, TOP + 7).at(value) : TOP + 15;
                shapes.add(part == Part.A ? new Shape.Ring(new Point(x, y), 2.6, role, 1.3) : new Shape.Disc(new Point(x, y), 2.8, role));
            }

            private void now(Running known) {
                double x = Math.max(clock.start(), Math.min(clock.end(), clock.at(known.nowS())));
                shapes.add(new Shape.Line(new Point(x, TOP - 10), new Point(x, CLOCK_TOP), Role.INK, 2, Shape.Dash.SOLID));
                Shape.Words word = new Shape.Words(new Point(x + 5, TOP - 3), "now", Role.INK, Shape.Type.SMALL, Shape.Anchor.START)
                        .within(width);
                shapes.add(word.ground());
                shapes.add(word);
            }

            private void gaps() {
                for (DayEvent event : day.events()) {
                    String word = switch (event.kind()) {
                        case SWAP -> "swap";
                        case BREAK -> "break";
                        case SET_UP -> "set-up";
                        case WARM_UP, PULL -> "";
                    };
                    double wide = clock.at(event.endS()) - clock.at(event.startS());
                    if (!word.isEmpty() && wide > LetterWidths.of(word, Shape.Type.SMALL)) {
                        words(clock.at((event.startS() + event.endS()) / 2), TOP + BLOCK_HEIGHT / 2 + 4, word, Role.SOFT,
                                Shape.Anchor.MIDDLE);
                    }
                }
            }

            private void trace(Heat known) {
                if (place >= known.days().size()) {
                    return;
                }
                Scale rise = new Scale(-known.toleranceK(), known.toleranceK(), GATE_TOP + GATE_HEIGHT, GATE_TOP);
                Point before = null;
                for (Start start : known.days().get(place)) {
                    double y = Math.max(GATE_TOP - 8, Math.min(GATE_TOP + GATE_HEIGHT + 8, rise.at(start.riseK())));
                    Point here = new Point(clock.at(start.timeS()), y);
                    if (before != null) {
                        shapes.add(new Shape.Line(before, here, Role.INK, 1.3, Shape.Dash.SOLID));
                    }
                    before = here;
                }
            }

            private void end() {
                day.hours().flatMap(hours -> hours.end()).filter(end -> day.lateS() > 0).ifPresent(end -> {
                    double x = clock.at(end.toSecondOfDay());
                    shapes.add(new Shape.Line(new Point(x, 4), new Point(x, CLOCK_TOP), Role.INK, 1.6, Shape.Dash.SOLID));
                    Shape.Words word = new Shape.Words(new Point(x + 4, 11), "end of day " + end, Role.INK, Shape.Type.SMALL,
                            Shape.Anchor.START).within(width);
                    shapes.add(word.ground());
                    shapes.add(word);
                });
            }
        }
    }
}
