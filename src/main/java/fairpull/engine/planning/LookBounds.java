package fairpull.engine.planning;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.SizeLooks;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.ErrorSpending;
import fairpull.engine.stats.GroupSequential;
import fairpull.engine.stats.Normal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The looks of a plan as bounds. The information at a look is 1 over the squared standard error of the change on install means, all
 * installs weighing alike, as a share of that of the whole order: it follows from the order, the drift and the clock alone, so that it is
 * fixed with the plan, whatever the scatter turns out to be. The bounds are those of Z with known scatter; a look is judged at the nominal
 * error rate p = 2·(1 − Φ(c)) (two-sided) of its bound c, which the t statement of the day then takes for its own. With few degrees of
 * freedom that keeps the error rate only nearly.
 *
 * <p>Checked against: {@code GroupSequentialTest} for the bounds, simulation for the error rate over all looks (ProofTest).
 */
public final class LookBounds {
    private final List<Integer> afterInstalls;
    private final double[] fractions;
    private final double[] bounds;
    private final double[] exits;
    private final boolean twoSided;

    private LookBounds(List<Integer> afterInstalls, double[] fractions, SizeQuestion question, Looks looks) {
        this.afterInstalls = afterInstalls;
        this.fractions = fractions;
        twoSided = question.sides() == Sides.TWO;
        bounds = GroupSequential.bounds(fractions, question.errorRate(), twoSided, spending(looks));
        exits = GroupSequential.exits(fractions, bounds, twoSided, 0);
    }

    /**
     * The bounds of planned looks.
     *
     * @param question order, pulls, clock, drift, error rate and sides; its scatter and gain play no part
     * @param looks the looks
     * @return their bounds
     * @throws IllegalArgumentException if the looks do not fit the order, or one of them cannot tell the change from sessions and drift
     */
    public static LookBounds of(SizeQuestion question, Looks looks) {
        looks.requireFit(question.sequence());
        double[] information = new double[looks.count()];
        for (int k = 0; k < information.length; k++) {
            int after = looks.afterInstalls().get(k);
            SequenceDesign design = SequenceDesign.of(question.withSequence(Looks.first(question.sequence(), after)));
            if (!design.designOfMeans().estimable(design.partColumn())) {
                throw new IllegalArgumentException("after " + after + " installs the change cannot be told from sessions and drift");
            }
            information[k] = 1 / (design.standardErrorOnMeans() * design.standardErrorOnMeans());
        }
        double[] fractions = new double[information.length];
        for (int k = 0; k < fractions.length; k++) {
            fractions[k] = k + 1 == fractions.length ? 1 : information[k] / information[information.length - 1];
        }
        return new LookBounds(looks.afterInstalls(), fractions, question, looks);
    }

    private static ErrorSpending spending(Looks looks) {
        return switch (looks.spending()) {
            case OBRIEN_FLEMING -> ErrorSpending.OBRIEN_FLEMING;
            case POCOCK -> ErrorSpending.POCOCK;
        };
    }

    /** {@return how many looks there are} */
    public int count() {
        return bounds.length;
    }

    /** {@return after how many installs each look falls} */
    public List<Integer> afterInstalls() {
        return afterInstalls;
    }

    /** {@return the error rate of a look alone, looks counted from 0} */
    public double level(int look) {
        return (twoSided ? 2 : 1) * Normal.upperTail(bounds[look]);
    }

    /** {@return where the looks fall and what they cost; {@code chances} of finding the gain at each alone} */
    SizeLooks asPlanned(OptionalDouble inflation, List<OptionalDouble> chances, List<Notice> notices) {
        List<SizeLooks.Place> places = new ArrayList<>();
        double spent = 0;
        for (int k = 0; k < count(); k++) {
            spent += exits[k];
            places.add(new SizeLooks.Place(afterInstalls.get(k), fractions[k], bounds[k], level(k), spent, chances.get(k)));
        }
        return new SizeLooks(inflation, places, notices);
    }
}
