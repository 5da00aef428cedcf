package fairpull.engine.planning;

import fairpull.domain.plan.Drift;
import fairpull.domain.search.SearchSpace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The orders that a search may try, gathered in classes of the same precision.
 *
 * <p>All installs being filled alike and equally spaced, the cross products of the design, and with them standard error and degrees of
 * freedom, depend on an order only
 * <ul>
 * <li>by its counts of A and B, where no drift is modelled;
 * <li>with a linear drift also by Σ position of B, its sign apart, as reversing the order turns the clock round;
 * <li>with a quadratic drift also by Σ squared position of B.
 * </ul>
 * Exchanging A and B turns the sign of the change and of both sums and leaves its precision alone. Of each class that order is kept in
 * which the least linear drift is left; then one with A at both ends; then the one with the least quadratic drift left; then the one that
 * comes first in the alphabet. The return to A stands before curvature: a day that ends in B never shows that what changed with the last
 * install changed back, whatever the model; curvature that is left is a figure beside the order. Of counterbalanced orders with two A or
 * more there is always one with A at both ends, the B standing mirrored about the middle.
 *
 * <p>Breaks part installs unequally. Without a drift in the model the classes stay, and of each that order is kept in which least drift is
 * left on the clock. With one, every order is a class of its own; they stand in the same preference, so that of days alike in length and
 * gain the first is the one to keep. Hardly an order is then exactly counterbalanced, so a little may be left.
 */
final class OrderClasses {
    private static final double ROUNDING = 1e-9;

    private final SearchSpace space;
    private final Drift drift;
    /** Those allowed but for their counterbalance, which is a matter of the clock. */
    private final List<OrderShape> open;

    /**
     * What orders of one class share.
     *
     * @param more the larger of the counts of A and B
     * @param fewer the smaller
     * @param lean |Σ position|, 0 without a drift
     * @param bow Σ squared position of the part with more installs, 0 without a quadratic drift
     */
    private record Key(int more, int fewer, int lean, int bow) {
        static Key of(OrderShape shape, Drift drift) {
            boolean moreB = shape.countB() > shape.countA();
            int bowOfMore = moreB ? shape.bow() : -shape.bow();
            boolean alike = shape.countA() == shape.countB();
            return new Key(Math.max(shape.countA(), shape.countB()), Math.min(shape.countA(), shape.countB()),
                    drift.terms() > 0 ? Math.abs(shape.lean()) : 0,
                    drift.terms() > 1 ? alike ? Math.abs(bowOfMore) : bowOfMore : 0);
        }
    }

    /** The preferred order of every class, and how many orders there are. */
    record Gathered(List<OrderShape> preferred, long orders) {
    }

    OrderClasses(SearchSpace space, Drift drift) {
        this.space = space;
        this.drift = drift;
        open = open(space);
    }

    /** Gathers the allowed orders of installs that follow one another equally. */
    Gathered equallySpaced() {
        return gathered(orders(space), preference(OrderShape::meanLean, OrderShape::meanBow));
    }

    /**
     * Gathers the allowed orders of installs parted by breaks.
     *
     * @param times of one install, of two, …
     * @param slackHours how far from equally late on average A and B may stand and count as counterbalanced
     */
    Gathered timed(List<InstallTimes> times, double slackHours) {
        ToDoubleFunction<OrderShape> lean = order -> times.get(order.letters().length() - 1).lean(order);
        Comparator<OrderShape> preference = preference(lean, order -> times.get(order.letters().length() - 1).bow(order));
        List<OrderShape> allowed = open.stream()
                .filter(order -> !space.counterbalanced() || Math.abs(lean.applyAsDouble(order)) <= slackHours + ROUNDING).toList();
        return drift == Drift.NONE ? gathered(allowed, preference)
                : new Gathered(allowed.stream().sorted(preference).toList(), allowed.size());
    }

    private Gathered gathered(List<OrderShape> allowed, Comparator<OrderShape> preference) {
        Map<Key, OrderShape> preferred = new LinkedHashMap<>();
        for (OrderShape shape : allowed) {
            preferred.merge(Key.of(shape, drift), shape, (one, other) -> preference.compare(one, other) <= 0 ? one : other);
        }
        return new Gathered(List.copyOf(preferred.values()), allowed.size());
    }

    /** Least linear drift, then back at A, then least curvature; a difference that is rounding is none. */
    private static Comparator<OrderShape> preference(ToDoubleFunction<OrderShape> lean, ToDoubleFunction<OrderShape> bow) {
        return Comparator.comparingDouble((OrderShape shape) -> Math.rint(Math.abs(lean.applyAsDouble(shape)) / ROUNDING))
                .thenComparing(shape -> !shape.startsAndEndsWithA())
                .thenComparingDouble(shape -> Math.rint(Math.abs(bow.applyAsDouble(shape)) / ROUNDING))
                .thenComparing(OrderShape::letters);
    }

    /** {@return whether two orders cannot differ in their precision} */
    static boolean sameClass(OrderShape one, OrderShape other, Drift drift) {
        return one.letters().length() == other.letters().length() && Key.of(one, drift).equals(Key.of(other, drift));
    }

    /** {@return every order of equally spaced installs that the space allows, from the shortest on} */
    static List<OrderShape> orders(SearchSpace space) {
        return open(space).stream().filter(shape -> shape.lean() == 0 || !space.counterbalanced()).toList();
    }

    private static List<OrderShape> open(SearchSpace space) {
        List<OrderShape> orders = new ArrayList<>();
        for (int installs = 2; installs <= space.mostInstalls(); installs++) {
            for (int bits = 0; bits < 1 << installs; bits++) {
                OrderShape shape = OrderShape.of(letters(bits, installs));
                if (allowed(shape, space)) {
                    orders.add(shape);
                }
            }
        }
        return orders;
    }

    private static String letters(int bits, int installs) {
        StringBuilder letters = new StringBuilder();
        for (int i = installs - 1; i >= 0; i--) {
            letters.append((bits >> i & 1) == 0 ? 'A' : 'B');
        }
        return letters.toString();
    }

    private static boolean allowed(OrderShape shape, SearchSpace space) {
        boolean startsWithA = shape.letters().startsWith("A");
        return shape.countA() > 0 && shape.countB() > 0
                && (startsWithA || !space.firstA())
                && (shape.exchanges() == 1 && startsWithA || !space.oneWay())
                && shape.exchanges() <= space.mostExchanges().orElse(Integer.MAX_VALUE);
    }
}
