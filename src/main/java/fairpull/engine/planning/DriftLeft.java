package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.engine.stats.ContrastFit;
import fairpull.engine.stats.ScatterKnowledge;
import fairpull.engine.stats.VarianceComponents;

/**
 * What a drift passes for in the change: the estimate that the model of the question gives for pulls that differ by the drift alone. It
 * is reckoned by the fit that judges, at the scatter of the question.
 *
 * @param linear for a drift of 1 per hour
 * @param quadratic for a drift of 1 per hour², from the middle of the session
 */
record DriftLeft(double linear, double quadratic) {
    /** Smaller than this is rounding: times of a day are below 100 hours. */
    private static final double ROUNDING = 1e-10;

    /** Of a sequence whose change can be estimated. */
    static DriftLeft of(SizeQuestion question) {
        SequenceDesign sequence = SequenceDesign.of(question);
        double[] hours = sequence.centredHours();
        double[] squares = new double[hours.length];
        for (int k = 0; k < hours.length; k++) {
            squares[k] = hours[k] * hours[k];
        }
        return new DriftLeft(estimate(sequence, question, hours), estimate(sequence, question, squares));
    }

    private static double estimate(SequenceDesign sequence, SizeQuestion question, double[] values) {
        double pull = question.pullScatter() * question.pullScatter();
        double refit = question.refitScatter() * question.refitScatter();
        double estimate = ContrastFit.of(sequence.design().sumsOf(values), new VarianceComponents(pull, refit / pull),
                ScatterKnowledge.none(), sequence.partColumn()).estimate();
        return Math.abs(estimate) < ROUNDING ? 0 : estimate;
    }
}
