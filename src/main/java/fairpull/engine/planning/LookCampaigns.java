package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.Deviates;
import fairpull.engine.stats.MeansFit;
import fairpull.engine.stats.Roots;
import fairpull.engine.stats.ScatterKnowledge;
import fairpull.engine.stats.TQuantiles;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What planned looks find, by simulated campaigns judged at every look as on the day: t with the standard error and degrees of freedom of
 * that look against the level of its bound. Estimates, scatters and degrees of freedom of successive looks hang together in a way that no
 * recursion over a few numbers holds; a simulation does.
 *
 * <p>A campaign is drawn as its install means, normal with variance s_r² + s_p²/n, and one χ² within installs for each step from look to
 * look. A scatter that rests on a record is drawn from what the record leaves open, s² = ν·s₀²/χ²(ν). Only estimate and reach of each
 * look are kept, so that one set of campaigns answers for every gain, and each serves twice, with the signs of its means turned. The seed
 * is fixed: the same question has the same answer, with a standard error of at most half a percent in a chance.
 *
 * <p>Checked against: {@code engine.proving}, which draws every pull and has the judge itself look (LookPowerTest).
 */
final class LookCampaigns {
    private static final int PAIRS = 10_000;
    private static final long SEED = 20260511;
    private static final double ACCURACY = 1e-9;
    /** A gain this many times the standard error that is not found never will be. */
    private static final double OUT_OF_REACH = 1e9;

    private final SizeQuestion question;
    private final List<Fits> fits = new ArrayList<>();
    private final List<Look> looks = new ArrayList<>();

    /** The fits of all campaigns at one look. */
    private static final class Fits {
        private final int installs;
        private final MeansFit fit;
        private final double[] estimate = new double[PAIRS];
        private final double[] standardError = new double[PAIRS];
        private final double[] degreesOfFreedom = new double[PAIRS];

        Fits(int installs, MeansFit fit) {
            this.installs = installs;
            this.fit = fit;
        }

        void take(int campaign, double[] means, double withinSquares) {
            if (fit.canBeJudged()) {
                MeansFit.Fit found = fit.fit(means, withinSquares);
                estimate[campaign] = found.estimate();
                standardError[campaign] = found.standardError();
                degreesOfFreedom[campaign] = found.degreesOfFreedom();
            }
        }

        /** How far the interval and the test of equivalence reach in each campaign: to infinity where nothing can be judged. */
        Look at(double level, Sides sides) {
            TQuantiles ofInterval = new TQuantiles(sides == Sides.TWO ? level / 2 : level);
            TQuantiles ofEquivalence = new TQuantiles(level);
            double[] reach = new double[PAIRS];
            double[] margin = new double[PAIRS];
            for (int campaign = 0; campaign < PAIRS; campaign++) {
                double df = degreesOfFreedom[campaign];
                reach[campaign] = df > 0 ? standardError[campaign] * ofInterval.at(df) : Double.POSITIVE_INFINITY;
                margin[campaign] = df > 0 ? standardError[campaign] * ofEquivalence.at(df) : Double.POSITIVE_INFINITY;
            }
            return new Look(estimate, reach, margin);
        }
    }

    /** A look at a level: a gain is announced where the estimate passes the reach, no difference where it stays within a margin. */
    private record Look(double[] estimate, double[] reach, double[] margin) {
    }

    private LookCampaigns(SizeQuestion question, LookBounds bounds, int pulls) {
        this.question = question;
        for (int installs : bounds.afterInstalls()) {
            SequenceDesign design = SequenceDesign.of(question.withSequence(Looks.first(question.sequence(), installs)));
            fits.add(new Fits(installs, new MeansFit(design.designOfMeans(), design.partColumn(), pulls, knowledge())));
        }
        draw(pulls);
        for (int k = 0; k < bounds.count(); k++) {
            looks.add(fits.get(k).at(bounds.level(k), question.sides()));
        }
    }

    /** Campaigns of a question's order with its pulls. */
    static LookCampaigns of(SizeQuestion question, LookBounds bounds) {
        return new LookCampaigns(question, bounds, question.pulls());
    }

    /** The same with so many pulls, at the same times of the installs, that their scatter is gone. */
    static LookCampaigns withoutPullScatter(SizeQuestion question, LookBounds bounds) {
        return new LookCampaigns(question, bounds, 1_000_000);
    }

    private ScatterKnowledge knowledge() {
        return new ScatterKnowledge(question.refitScatter() * question.refitScatter(), question.refitDegreesOfFreedom(),
                question.pullScatter() * question.pullScatter(), question.pullDegreesOfFreedom());
    }

    private void draw(int pulls) {
        Deviates deviates = new Deviates(SEED);
        double[] means = new double[fits.get(fits.size() - 1).installs];
        for (int campaign = 0; campaign < PAIRS; campaign++) {
            double pull = scatter(question.pullScatter(), question.pullDegreesOfFreedom(), deviates);
            double refit = scatter(question.refitScatter(), question.refitDegreesOfFreedom(), deviates);
            double ofMean = Math.sqrt(refit * refit + pull * pull / pulls);
            double within = 0;
            int before = 0;
            for (Fits look : fits) {
                for (int i = before; i < look.installs; i++) {
                    means[i] = ofMean * deviates.normal();
                }
                within += pulls == 1 ? 0 : pull * pull * deviates.chiSquare((pulls - 1.0) * (look.installs - before));
                before = look.installs;
                look.take(campaign, means, within);
            }
        }
    }

    private static double scatter(double planned, double degreesOfFreedom, Deviates deviates) {
        boolean open = degreesOfFreedom > 0 && Double.isFinite(degreesOfFreedom);
        return open ? planned * Math.sqrt(degreesOfFreedom / deviates.chiSquare(degreesOfFreedom)) : planned;
    }

    /** The chance that a gain, the worthwhile one, is announced at one of the looks, nothing else having been announced before. */
    double power(double gain) {
        return share(looks, gain);
    }

    /** The chance of finding a gain at a look taken alone, looks counted from 0; empty where it cannot be judged. */
    OptionalDouble chance(int look, double gain) {
        return fits.get(look).fit.canBeJudged() ? OptionalDouble.of(share(looks.subList(look, look + 1), gain)) : OptionalDouble.empty();
    }

    /** The smallest gain that is found with the power wanted; empty where none is. */
    OptionalDouble detectableGain() {
        return detectableGain(looks);
    }

    /** (detectable gain with the looks / that of one look at the end)², at least 1: the information they cost, over the same campaigns. */
    OptionalDouble inflation() {
        OptionalDouble looked = detectableGain(looks);
        OptionalDouble single = detectableGain(List.of(fits.get(fits.size() - 1).at(question.errorRate(), question.sides())));
        if (looked.isEmpty() || single.isEmpty() || single.getAsDouble() == 0) {
            return OptionalDouble.empty();
        }
        double ratio = looked.getAsDouble() / single.getAsDouble();
        return OptionalDouble.of(Math.max(1, ratio * ratio));
    }

    private OptionalDouble detectableGain(List<Look> taken) {
        double wanted = question.powerWanted();
        double step = question.refitScatter() + question.pullScatter();
        if (wanted <= question.errorRate()) {
            return OptionalDouble.of(0);
        }
        double low = 0;
        double high = step;
        while (share(taken, high) < wanted) {
            low = high;
            high *= 2;
            if (high > OUT_OF_REACH * step) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(Roots.between(gain -> share(taken, gain) < wanted ? -1 : 1, low, high, ACCURACY));
    }

    private double share(List<Look> taken, double gain) {
        int found = 0;
        for (int campaign = 0; campaign < PAIRS; campaign++) {
            found += (finds(taken, campaign, 1, gain) ? 1 : 0) + (finds(taken, campaign, -1, gain) ? 1 : 0);
        }
        return found / (2.0 * PAIRS);
    }

    /** A campaign ends with the first thing that is announced: a gain, a loss, or that there is no difference that matters. */
    private boolean finds(List<Look> taken, int campaign, int sign, double gain) {
        for (Look look : taken) {
            double seen = gain + sign * look.estimate[campaign];
            if (seen > look.reach[campaign]) {
                return true;
            }
            boolean loss = question.sides() == Sides.TWO && seen < -look.reach[campaign];
            if (loss || Math.abs(seen) + look.margin[campaign] < gain) {
                return false;
            }
        }
        return false;
    }
}
