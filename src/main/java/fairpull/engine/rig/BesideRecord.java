package fairpull.engine.rig;

import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigEvidence.Pooled;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.rig.TestsBeside;
import fairpull.domain.rig.TestsBeside.LayerBeside;
import fairpull.domain.rig.TestsBeside.OfTest;
import fairpull.engine.stats.ChiSquared;
import fairpull.engine.stats.FisherF;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Holds the installs of A of tests against the record of their rig. The scatter of each test has the interval s·√(ν/χ²); all together are
 * pooled as a record is, and compared with it by F = s²(tests)/s²(record), two-sided: twice the smaller tail.
 *
 * @see "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.9, F-test for equality of two variances (from memory)"
 */
public final class BesideRecord {
    private BesideRecord() {
    }

    /**
     * Compares tests with a record.
     *
     * @param record what is known of the rig
     * @param tests the installs of A of each test, as records
     * @return the comparison; empty where no test is of the record's key and not in the record already
     */
    public static Optional<TestsBeside> of(RigEvidence record, List<RigRecord> tests) {
        Set<String> taken = record.records().stream().map(RigRecord::dataSha256).collect(Collectors.toSet());
        Comparator<RigRecord> inTime = Comparator.comparing(test -> test.installs().get(0).session());
        List<RigRecord> fresh = tests.stream().filter(test -> test.key().matches(record.key()) && taken.add(test.dataSha256()))
                .sorted(inTime.thenComparing(RigRecord::source)).toList();
        if (fresh.isEmpty()) {
            return Optional.empty();
        }
        RigEvidence together = RigSummary.matching(record.key(), Stream.concat(record.records().stream(), fresh.stream()).toList())
                .orElseThrow();
        RigEvidence alone = RigSummary.matching(record.key(), fresh).orElseThrow();
        List<LayerBeside> layers = new ArrayList<>();
        for (Layer layer : List.of(Layer.PULL, Layer.REFIT)) {
            alone.of(layer).ifPresent(pooled -> record.of(layer).ifPresent(known -> layers.add(beside(layer, fresh, pooled, known))));
        }
        return Optional.of(new TestsBeside(together, fresh.size(), layers));
    }

    private static LayerBeside beside(Layer layer, List<RigRecord> tests, Pooled pooled, Pooled record) {
        double f = pooled.share() * pooled.share() / (record.share() * record.share());
        double above = FisherF.upperTail(f, pooled.degreesOfFreedom(), record.degreesOfFreedom());
        double below = FisherF.upperTail(1 / f, record.degreesOfFreedom(), pooled.degreesOfFreedom());
        return new LayerBeside(layer, tests.stream().flatMap(test -> ofTest(layer, test).stream()).toList(), pooled.share(),
                pooled.degreesOfFreedom(), record, f, Math.min(1, 2 * Math.min(above, below)));
    }

    private static Optional<OfTest> ofTest(Layer layer, RigRecord test) {
        return test.scatter().stream().filter(scatter -> scatter.layers().equals(List.of(layer))).findFirst()
                .map(scatter -> ofTest(test, scatter));
    }

    /** Where a test shows no scatter, its interval ends at the rough upper end. */
    private static OfTest ofTest(RigRecord test, LayerScatter scatter) {
        String session = test.installs().get(0).session();
        if (scatter.degreesOfFreedom() == 0) {
            return new OfTest(test.source(), session, 0, 0, scatter.shareAtMost());
        }
        double[] ends = ChiSquared.scatterFactors(Pooled.LEVEL, scatter.degreesOfFreedom());
        return new OfTest(test.source(), session, scatter.share(), scatter.share() * ends[0], scatter.share() * ends[1]);
    }
}
