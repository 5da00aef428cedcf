package fairpull.engine.air;

import fairpull.domain.air.AmbientWindow.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/** Finds the stretch of a quantity that is allowed, its ends by halving. */
final class Stretch {
    private static final int STEPS = 1000;
    private static final int HALVINGS = 40;

    private final DoublePredicate allowed;
    private final List<Double> points = new ArrayList<>();
    private final int start;

    private Stretch(Range within, double now, DoublePredicate allowed) {
        this.allowed = allowed;
        double step = (within.high() - within.low()) / STEPS;
        int below = step > 0 ? (int) Math.max(0, Math.ceil((now - within.low()) / step)) : 0;
        int above = step > 0 ? (int) Math.max(0, Math.ceil((within.high() - now) / step)) : 0;
        for (int i = below; i > 0; i--) {
            points.add(Math.max(within.low(), now - i * step));
        }
        this.start = points.size();
        points.add(now);
        for (int i = 1; i <= above; i++) {
            points.add(Math.min(within.high(), now + i * step));
        }
    }

    /**
     * The stretch that holds the present value, or else the nearest one to it.
     *
     * @param within where to look; the present value is looked at besides
     * @param now the present value: it is in what is returned exactly when it is allowed
     * @param allowed what is allowed
     * @return from where to where, both allowed; empty where nothing is
     */
    static Optional<Range> around(Range within, double now, DoublePredicate allowed) {
        return new Stretch(within, now, allowed).find();
    }

    private Optional<Range> find() {
        for (int distance = 0; distance < points.size(); distance++) {
            for (int at : new int[] {start - distance, start + distance}) {
                if (isAllowed(at)) {
                    return Optional.of(new Range(end(at, -1), end(at, 1)));
                }
            }
        }
        return Optional.empty();
    }

    private boolean isAllowed(int at) {
        return at >= 0 && at < points.size() && allowed.test(points.get(at));
    }

    private double end(int from, int direction) {
        int at = from;
        while (isAllowed(at + direction)) {
            at += direction;
        }
        int beyond = at + direction;
        return beyond < 0 || beyond >= points.size() ? points.get(at) : edge(points.get(at), points.get(beyond));
    }

    private double edge(double inside, double outside) {
        double good = inside;
        double bad = outside;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (good + bad) / 2;
            if (allowed.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}
