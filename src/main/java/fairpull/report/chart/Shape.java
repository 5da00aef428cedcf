package fairpull.report.chart;

import java.util.List;

/** One mark of a drawing. Its role says what it stands for; measures are in the drawing's own units. */
public sealed interface Shape {
    /** {@return what {@code cases} makes of this shape} */
    <R> R match(Cases<R> cases);

    /** One answer a kind of shape. */
    interface Cases<R> {
        R line(Line line);

        R area(Area area);

        R frame(Frame frame);

        R hatch(Hatch hatch);

        R disc(Disc disc);

        R ring(Ring ring);

        R polygon(Polygon polygon);

        R path(Path path);

        R words(Words words);
    }

    /** Whether a line is drawn through or broken. */
    enum Dash {
        SOLID(1, 0), BROKEN(5, 3), DOTTED(2, 3);

        private final double on;
        private final double off;

        Dash(double on, double off) {
            this.on = on;
            this.off = off;
        }

        /** {@return how far it is drawn, in units of the drawing} */
        public double on() {
            return on;
        }

        /** {@return how far it is left out; 0 for a line without gaps} */
        public double off() {
            return off;
        }
    }

    /** Where a text stands against its point. */
    enum Anchor {
        START, MIDDLE, END
    }

    /** The sizes of text in a chart. */
    enum Type {
        SMALL(11.5, false), STRONG(13, true);

        private final double size;
        private final boolean bold;

        Type(double size, boolean bold) {
            this.size = size;
            this.bold = bold;
        }

        /** {@return the size in units of the drawing} */
        public double size() {
            return size;
        }

        /** {@return whether it is bold} */
        public boolean bold() {
            return bold;
        }
    }

    /** A straight line. */
    record Line(Point from, Point to, Role role, double width, Dash dash) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.line(this);
        }
    }

    /** A filled rectangle. */
    record Area(Bounds bounds, double radius, Role role) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.area(this);
        }
    }

    /** The outline of a rectangle. */
    record Frame(Bounds bounds, double radius, Role role, double width) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.frame(this);
        }
    }

    /** A rectangle filled with parallel slanting lines. */
    record Hatch(Bounds bounds, double distance, Role role) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.hatch(this);
        }
    }

    /** A filled circle. */
    record Disc(Point centre, double radius, Role role) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.disc(this);
        }
    }

    /** An open circle, filled with the card so that lines do not shine through. */
    record Ring(Point centre, double radius, Role role, double width) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.ring(this);
        }
    }

    /** A filled polygon. */
    record Polygon(List<Point> corners, Role role) implements Shape {
        public Polygon {
            corners = List.copyOf(corners);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.polygon(this);
        }
    }

    /** A line through several points. */
    record Path(List<Point> points, Role role, double width, Dash dash) implements Shape {
        public Path {
            points = List.copyOf(points);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.path(this);
        }
    }

    /** A line of text; the point is on its base line. */
    record Words(Point at, String text, Role role, Type type, Anchor anchor) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.words(this);
        }

        /** {@return the rectangle that the text takes, reckoned generously} */
        public Bounds bounds() {
            double width = LetterWidths.of(text, type);
            double left = switch (anchor) {
                case START -> at.x();
                case MIDDLE -> at.x() - width / 2;
                case END -> at.x() - width;
            };
            return new Bounds(left, at.y() - 0.8 * type.size(), width, type.size());
        }

        /** {@return the same text, moved so far sideways that a drawing of that width does not cut it} */
        public Words within(double width) {
            Bounds bounds = bounds();
            double right = Math.min(0, width - bounds.right());
            double left = Math.max(0, -(bounds.x() + right));
            return new Words(new Point(at.x() + right + left, at.y()), text, role, type, anchor);
        }

        /** {@return a ground of the card to stand on, so that grid lines do not run through the text} */
        public Area ground() {
            Bounds bounds = bounds();
            return new Area(new Bounds(bounds.x() - 2, bounds.y() - 1, bounds.width() + 4, bounds.height() + 2), 0, Role.CARD);
        }
    }
}
