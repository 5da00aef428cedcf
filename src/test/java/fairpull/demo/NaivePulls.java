package fairpull.demo;

import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Judgement;
import org.apache.commons.math3.stat.inference.TTest;

/** What somebody gets who takes the pulls for independent: a pooled two-sample t-test, here by Commons Math 3.6.1. */
final class NaivePulls {
    private NaivePulls() {
    }

    static double pValue(Judgement judgement) {
        return new TTest().homoscedasticTTest(values(judgement, 'A'), values(judgement, 'B'));
    }

    private static double[] values(Judgement judgement, char part) {
        String measure = judgement.plan().question().deciding().name();
        return judgement.pulls().stream()
                .filter(pull -> pull.fate() == Fate.USED && pull.pull().install().charAt(0) == part)
                .mapToDouble(pull -> pull.values().get(measure))
                .toArray();
    }
}
