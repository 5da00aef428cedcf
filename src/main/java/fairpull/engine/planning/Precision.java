package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.engine.stats.ContrastFit;
import fairpull.engine.stats.InstallDesign;
import fairpull.engine.stats.ScatterKnowledge;
import fairpull.engine.stats.VarianceComponents;
import java.util.Optional;

/**
 * How well a sequence would tell the change.
 *
 * @param standardError expected
 * @param degreesOfFreedom expected; infinity where both scatters are known
 */
record Precision(double standardError, double degreesOfFreedom) {

    /** At the scatter of the question; empty where the sequence could not be judged. */
    static Optional<Precision> of(SequenceDesign sequence, SizeQuestion question) {
        InstallDesign design = sequence.design();
        double refit = question.refitScatter() * question.refitScatter();
        double pull = question.pullScatter() * question.pullScatter();
        boolean noRefit = sequence.installDegreesOfFreedom() < 1 && question.refitDegreesOfFreedom() == 0;
        boolean noPull = design.pulls() - design.rank() < 1 && question.pullDegreesOfFreedom() == 0;
        if (noRefit || noPull || !design.estimable(sequence.partColumn())) {
            return Optional.empty();
        }
        ScatterKnowledge known = new ScatterKnowledge(refit, question.refitDegreesOfFreedom(), pull, question.pullDegreesOfFreedom());
        ContrastFit fit = ContrastFit.expected(design, new VarianceComponents(pull, refit / pull), known, sequence.partColumn());
        // with one pull per install the two scatters act as one, and there is one variance to estimate
        double df = question.pulls() == 1 && known.isNone() ? sequence.installDegreesOfFreedom() : fit.degreesOfFreedom();
        return Optional.of(new Precision(fit.standardError(), df));
    }

    /** With pull scatter gone: install means with refit scatter alone, install degrees of freedom and those of the record. */
    static Optional<Precision> withoutPullScatter(SequenceDesign sequence, SizeQuestion question) {
        double df = sequence.installDegreesOfFreedom() + question.refitDegreesOfFreedom();
        if (!(df > 0) || !sequence.designOfMeans().estimable(sequence.partColumn())) {
            return Optional.empty();
        }
        return Optional.of(new Precision(question.refitScatter() * sequence.standardErrorOnMeans(), df));
    }

    /** No larger standard error, no fewer degrees of freedom: no larger detectable gain either. */
    boolean isAtLeastAsGoodAs(Precision other) {
        return standardError <= other.standardError && degreesOfFreedom >= other.degreesOfFreedom;
    }
}
