package fairpull.engine.planning;

import fairpull.domain.plan.Drift;
import fairpull.domain.search.SearchSpace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
 * which the least drift is left: a linear one, then a quadratic one; then one with A at both ends; then with A first; then the one that
 * comes first in the alphabet.
 *
 * <p>Breaks part installs unequally. With a drift in the model, every order then is a class of its own; they stand in the same
 * preference, so that of days alike in length and gain the first is the one to keep.
 */
final class OrderClasses {
    private static final Comparator<OrderShape> PREFERENCE = Comparator
            .comparingDouble((OrderShape shape) -> Math.abs(shape.meanLean()))
            .thenComparingDouble(shape -> Math.abs(shape.meanBow()))
            .thenComparing(shape -> !shape.startsAndEndsWithA())
            .thenComparing(OrderShape::letters);

    private OrderClasses() {
    }

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

    /** Gathers the orders that are allowed; {@code unequal}: installs do not follow one another equally. */
    static Gathered within(SearchSpace space, Drift drift, boolean unequal) {
        Map<Key, OrderShape> preferred = new LinkedHashMap<>();
        List<OrderShape> all = orders(space);
        if (unequal && drift != Drift.NONE) {
            return new Gathered(all.stream().sorted(PREFERENCE).toList(), all.size());
        }
        for (OrderShape shape : all) {
            preferred.merge(Key.of(shape, drift), shape, (one, other) -> PREFERENCE.compare(one, other) <= 0 ? one : other);
        }
        return new Gathered(List.copyOf(preferred.values()), all.size());
    }

    /** {@return whether two orders cannot differ in their precision} */
    static boolean sameClass(OrderShape one, OrderShape other, Drift drift) {
        return one.letters().length() == other.letters().length() && Key.of(one, drift).equals(Key.of(other, drift));
    }

    /** {@return every order that the space allows, from the shortest on} */
    static List<OrderShape> orders(SearchSpace space) {
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
                && (shape.lean() == 0 || !space.counterbalanced())
                && (shape.exchanges() == 1 && startsWithA || !space.oneWay())
                && shape.exchanges() <= space.mostExchanges().orElse(Integer.MAX_VALUE);
    }
}
