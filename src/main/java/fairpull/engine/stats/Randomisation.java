package fairpull.engine.stats;

import java.util.SplittableRandom;
import org.apache.commons.numbers.combinatorics.BinomialCoefficientDouble;

/**
 * The randomisation test on |mean of all B − mean of all A|, B and A exchanged freely within each session.
 *
 * @param pValue share of orders with a difference at least as large
 * @param orders how many orders there are, or were drawn
 * @param exact whether all were counted
 */
public record Randomisation(double pValue, long orders, boolean exact) {
    /** Up to so many orders all are counted. */
    public static final int COUNTED_UP_TO = 1_000_000;
    /** So many are drawn where there are more. */
    public static final int DRAWN = 199_999;
    /** The draw is always the same one. */
    public static final long SEED = 20_011_946L;

    /** Differences closer than this share of the largest deviation are ties. */
    private static final double TIE = 1e-9;

    /**
     * The test.
     *
     * @param session for each unit the index of its session: 0 … number of sessions − 1
     * @param isB for each unit whether it is B
     * @param values for each unit its value
     * @return the p-value: exact up to {@link #COUNTED_UP_TO} orders, otherwise (1 + #)/(1 + {@link #DRAWN}) from drawn ones
     */
    public static Randomisation of(int[] session, boolean[] isB, double[] values) {
        Exchange exchange = new Exchange(session, isB, values);
        double orders = numberOfOrders(session, isB);
        if (orders <= COUNTED_UP_TO) {
            exchange.countAll();
            return new Randomisation((double) exchange.atLeastAsLarge / exchange.seen, exchange.seen, true);
        }
        exchange.draw();
        return new Randomisation((1.0 + exchange.atLeastAsLarge) / (1.0 + exchange.seen), exchange.seen, false);
    }

    /**
     * How many orders with the same counts in each session there are.
     *
     * @param session for each unit the index of its session
     * @param isB for each unit whether it is B
     * @return Π of the binomial coefficients
     */
    public static double numberOfOrders(int[] session, boolean[] isB) {
        int[][] counts = counts(session, isB);
        double orders = 1;
        for (int[] count : counts) {
            orders *= BinomialCoefficientDouble.value(count[0] + count[1], count[1]);
        }
        return orders;
    }

    /**
     * The smallest p-value that any data could reach: 1 over the number of orders, 2 over it where A and B are equal in number in every
     * session, since exchanging all of them gives the same |difference|.
     *
     * @param session for each unit the index of its session
     * @param isB for each unit whether it is B
     * @return the least attainable p-value
     */
    public static double leastPValue(int[] session, boolean[] isB) {
        boolean mirrored = true;
        for (int[] count : counts(session, isB)) {
            mirrored &= count[0] == count[1];
        }
        return (mirrored ? 2 : 1) / numberOfOrders(session, isB);
    }

    /** For each session the number of A and of B. */
    private static int[][] counts(int[] session, boolean[] isB) {
        int sessions = 0;
        for (int s : session) {
            sessions = Math.max(sessions, s + 1);
        }
        int[][] counts = new int[sessions][2];
        for (int i = 0; i < session.length; i++) {
            counts[session[i]][isB[i] ? 1 : 0]++;
        }
        return counts;
    }

    /** The sum over B fixes the statistic, as the sum over all is the same in every order. */
    private static final class Exchange {
        private final int[][] counts;
        private final double[][] bySession;
        private final double perUnitOfB;
        private final double offset;
        private final double observed;
        private long seen;
        private long atLeastAsLarge;

        Exchange(int[] session, boolean[] isB, double[] values) {
            counts = counts(session, isB);
            double centre = Sums.mean(values);
            int b = 0;
            double total = 0;
            double sumOfB = 0;
            double largest = 0;
            bySession = new double[counts.length][];
            for (int s = 0; s < counts.length; s++) {
                bySession[s] = new double[counts[s][0] + counts[s][1]];
            }
            int[] next = new int[counts.length];
            for (int i = 0; i < values.length; i++) {
                double value = values[i] - centre;
                bySession[session[i]][next[session[i]]++] = value;
                total += value;
                largest = Math.max(largest, Math.abs(value));
                sumOfB += isB[i] ? value : 0;
                b += isB[i] ? 1 : 0;
            }
            int a = values.length - b;
            perUnitOfB = 1.0 / b + 1.0 / a;
            offset = total / a;
            observed = Math.abs(sumOfB * perUnitOfB - offset) - TIE * largest;
        }

        void countAll() {
            choose(0, 0, counts[0][1], 0);
        }

        /** Chooses {@code left} more B from unit {@code from} of a session on, then goes to the next session. */
        private void choose(int session, int from, int left, double sumOfB) {
            if (left == 0) {
                if (session + 1 < counts.length) {
                    choose(session + 1, 0, counts[session + 1][1], sumOfB);
                } else {
                    look(sumOfB);
                }
                return;
            }
            double[] units = bySession[session];
            for (int i = from; i <= units.length - left; i++) {
                choose(session, i + 1, left - 1, sumOfB + units[i]);
            }
        }

        void draw() {
            SplittableRandom random = new SplittableRandom(SEED);
            for (int n = 0; n < DRAWN; n++) {
                double sumOfB = 0;
                for (int s = 0; s < counts.length; s++) {
                    double[] units = bySession[s];
                    for (int i = 0; i < counts[s][1]; i++) {
                        int other = i + random.nextInt(units.length - i);
                        double picked = units[other];
                        units[other] = units[i];
                        units[i] = picked;
                        sumOfB += picked;
                    }
                }
                look(sumOfB);
            }
        }

        private void look(double sumOfB) {
            seen++;
            if (Math.abs(sumOfB * perUnitOfB - offset) >= observed) {
                atLeastAsLarge++;
            }
        }
    }
}
