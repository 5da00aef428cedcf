package fairpull.domain.audit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Where a published curve stands. */
public sealed interface CurveSource {
    /** The name of a file beside the publication, and nothing else: no folder, no way out. */
    Pattern FILE_NAME = Pattern.compile("[^/\\\\:\\x00-\\x1f]{1,200}");

    /**
     * A table with a column of engine speed and one of the quantity.
     *
     * @param name of the file, beside the publication
     * @param column header or number of the column of the quantity, where it has to be said
     */
    record Table(String name, Optional<String> column) implements CurveSource {
        public Table {
            requireName(name);
        }
    }

    /**
     * A traced chart; of its curves that of part A before and that of part B after, where it has both.
     *
     * @param name of the file, beside the publication
     */
    record Traced(String name) implements CurveSource {
        public Traced {
            requireName(name);
        }
    }

    /**
     * Points as they were printed.
     *
     * @param points from the lowest speed to the highest
     */
    record Points(List<Point> points) implements CurveSource {
        /** As many as anybody types. */
        public static final int MOST = 2000;

        public Points {
            points = List.copyOf(points);
            if (points.size() < 2 || points.size() > MOST) {
                throw new IllegalArgumentException("a curve has 2 to " + MOST + " points, was " + points.size());
            }
            for (int place = 1; place < points.size(); place++) {
                if (!(points.get(place).speed().si() > points.get(place - 1).speed().si())) {
                    throw new IllegalArgumentException("the points of a curve stand in the order of rising speed");
                }
            }
        }
    }

    /** A printed point. */
    record Point(Printed speed, Printed value) {
    }

    /** What is done for each kind of source. */
    interface Cases<T> {
        /** {@return the result for a table} */
        T table(Table table);

        /** {@return the result for a traced chart} */
        T traced(Traced traced);

        /** {@return the result for points} */
        T points(Points points);
    }

    /** {@return the result for this kind of source} */
    default <T> T match(Cases<T> cases) {
        if (this instanceof Table table) {
            return cases.table(table);
        }
        return this instanceof Traced traced ? cases.traced(traced) : cases.points((Points) this);
    }

    private static void requireName(String name) {
        if (!FILE_NAME.matcher(name).matches() || name.startsWith(".") || name.isBlank()) {
            throw new IllegalArgumentException("a curve is in a file beside the publication, named without a folder; was “" + name + "”");
        }
    }
}
