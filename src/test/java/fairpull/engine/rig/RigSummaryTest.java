package fairpull.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.rig.Baseline;
import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.unit.Quantity;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Pooling by hand, what tables cannot tell, keys that must stay apart, and a rig that changed. */
class RigSummaryTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-05-09T18:30:00+02:00");

    @Test
    void poolsByAdding() {
        RigRecord first = record(key(true), "2026-01-01", layer(Layer.PULL, 0.006, 12), layer(Layer.REFIT, 0.008, 3));
        RigRecord second = record(key(true), "2026-02-01", layer(Layer.PULL, 0.009, 4), layer(Layer.REFIT, 0.012, 5));
        RigEvidence evidence = RigSummary.matching(key(true), List.of(first, second)).orElseThrow();

        // by hand: (12·0.36 + 4·0.81)/16 = 0.4725; (3·0.64 + 5·1.44)/8 = 1.14, in units of 1e-4
        RigEvidence.Pooled pull = evidence.of(Layer.PULL).orElseThrow();
        RigEvidence.Pooled refit = evidence.of(Layer.REFIT).orElseThrow();
        assertThat(pull.share() * pull.share()).isCloseTo(0.4725e-4, withinPercentage(1e-9));
        assertThat(pull.degreesOfFreedom()).isEqualTo(16);
        assertThat(refit.share() * refit.share()).isCloseTo(1.14e-4, withinPercentage(1e-9));
        assertThat(refit.degreesOfFreedom()).isEqualTo(8);
        assertThat(evidence.of(Layer.DAY)).isEmpty();
        // r = 2.77·s, and 2.77·√(s_p² + s_r²)
        assertThat(evidence.repeatabilityLimit(Layer.PULL).orElseThrow()).isCloseTo(2.77 * Math.sqrt(0.4725e-4), offset(1e-12));
        assertThat(evidence.repeatabilityLimit(Layer.REFIT).orElseThrow()).isCloseTo(2.77 * Math.sqrt(1.6125e-4), offset(1e-12));
        assertThat(evidence.repeatabilityLimit(Layer.DAY)).isEmpty();
    }

    @Test
    void aTableWithoutRefitScatterAddsNothingAndIsCounted() {
        RigRecord first = record(key(true), "2026-01-01", layer(Layer.PULL, 0.006, 12), layer(Layer.REFIT, 0.008, 3));
        RigRecord none = record(key(true), "2026-02-01", layer(Layer.PULL, 0.006, 12), layer(Layer.REFIT, 0, 0));
        RigRecord mixed = record(key(true), "2026-03-01", layer(Layer.PULL, 0.006, 12),
                new LayerScatter(List.of(Layer.REFIT, Layer.DAY), 0.02, 5, 0.03));
        RigEvidence.Pooled refit = RigSummary.matching(key(true), List.of(first, none, mixed)).orElseThrow().of(Layer.REFIT).orElseThrow();
        assertThat(List.of(refit.share(), refit.degreesOfFreedom(), refit.records(), refit.recordsAtZero())).isEqualTo(List.of(0.008, 3.0, 1, 1));
        // chi-squared with 3 degrees of freedom: 2.5 % below 0.216, 2.5 % above 9.348 (published/scatter)
        assertThat(refit.low()).isCloseTo(0.008 * Math.sqrt(3 / 9.348), offset(1e-6));
        assertThat(refit.high()).isCloseTo(0.008 * Math.sqrt(3 / 0.216), offset(5e-5));
    }

    @Test
    void otherKeysStayApart() {
        List<RigKey> keys = List.of(key(true), key(false),
                new RigKey("rollers 2", key(true).definition(), "", Correction.NONE, OptionalDouble.empty(), true),
                new RigKey("rollers 1", key(true).definition(), "", Correction.SAE_J1349, OptionalDouble.empty(), true),
                new RigKey("rollers 1", key(true).definition(), "", Correction.NONE, OptionalDouble.of(10), true),
                new RigKey("rollers 1", new Definition.MeanOverBand(Quantity.POWER, 300, 680), "", Correction.NONE,
                        OptionalDouble.empty(), true),
                new RigKey("rollers 1", new Definition.Peak(Quantity.POWER), "", Correction.NONE, OptionalDouble.empty(), true));
        List<RigRecord> records = keys.stream().map(one -> record(one, "2026-01-01", layer(Layer.PULL, 0.006, 12))).toList();

        assertThat(RigSummary.all(records)).extracting(RigEvidence::key).containsExactlyElementsOf(keys);
        assertThat(key(true).differences(key(false))).containsExactly(RigKey.Part.STRAPS);
        RigKey otherLetters = new RigKey("ROLLERS  1", key(true).definition(), "", Correction.NONE, OptionalDouble.empty(), true);
        assertThat(RigSummary.matching(otherLetters, records).orElseThrow().records()).hasSize(1);
    }

    @Test
    void saysWhatATableCannotTellApart() {
        assertThat(layers(baseline(3, 2, 2))).containsExactly(List.of(Layer.PULL), List.of(Layer.REFIT), List.of(Layer.DAY));
        assertThat(layers(baseline(1, 3, 2))).containsExactly(List.of(Layer.PULL), List.of(Layer.REFIT));
        assertThat(layers(baseline(4, 1, 2))).containsExactly(List.of(Layer.PULL), List.of(Layer.REFIT, Layer.DAY));
        assertThat(layers(baseline(3, 2, 1))).containsExactly(List.of(Layer.PULL, Layer.REFIT), List.of(Layer.DAY));
        assertThat(layers(baseline(1, 3, 1))).containsExactly(List.of(Layer.PULL, Layer.REFIT));
        assertThat(layers(baseline(4, 1, 1))).containsExactly(List.of(Layer.PULL, Layer.REFIT, Layer.DAY));
        assertThat(layers(baseline(1, 1, 4))).containsExactly(List.of(Layer.PULL));
    }

    @Test
    void aVarianceAtZeroHasNoDegreesOfFreedomAndAnUpperEnd() {
        Baseline still = new Baseline(List.of(new Baseline.Session("1", List.of(new Baseline.Install("A1", List.of(190.0, 191.0, 192.0)),
                new Baseline.Install("A2", List.of(190.2, 191.0, 191.8))))), 0);
        LayerScatter refit = BaselineScatter.of(still, 190).scatter().get(1);
        assertThat(refit.share()).isZero();
        assertThat(refit.degreesOfFreedom()).isZero();
        assertThat(refit.shareAtMost()).isPositive();
        assertThat(refit.tells(Layer.REFIT)).isFalse();
    }

    @Test
    void equalValuesAreRefused() {
        Baseline equal = new Baseline(List.of(new Baseline.Session("1", List.of(new Baseline.Install("A1", List.of(190.0)),
                new Baseline.Install("A2", List.of(190.0))))), 0);
        assertThatThrownBy(() -> BaselineScatter.of(equal, 190)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("equal");
    }

    @Test
    void findsTheDayOfAChangeInOrderOfDatesWhateverTheOrderOfTables() {
        double[] means = {1.002, 0.999, 1.001, 1.0, 0.981, 0.979, 0.982, 0.980};
        List<RigRecord> records = new ArrayList<>();
        for (int day = means.length - 1; day >= 0; day--) {
            records.add(record(key(true), "2026-01-0" + (day + 1), means[day]));
        }
        RigEvidence.Change change = RigSummary.matching(key(true), records).orElseThrow().change().orElseThrow();
        assertThat(change.looksChanged()).isTrue();
        assertThat(change.fromSession()).isEqualTo("2026-01-05");
        assertThat(change.before()).isCloseTo(1.0005, offset(1e-12));
        assertThat(change.after()).isCloseTo(0.9805, offset(1e-12));
    }

    @Test
    void threeSessionsAreTooFewForAChange() {
        List<RigRecord> records = List.of(record(key(true), "2026-01-01", 1.0), record(key(true), "2026-01-02", 1.001),
                record(key(true), "2026-01-03", 0.9));
        assertThat(RigSummary.matching(key(true), records).orElseThrow().change()).isEmpty();
    }

    private static List<List<Layer>> layers(Baseline baseline) {
        return BaselineScatter.of(baseline, 190).scatter().stream().map(LayerScatter::layers).toList();
    }

    private static Baseline baseline(int sessions, int installs, int pulls) {
        List<Baseline.Session> all = new ArrayList<>();
        for (int s = 0; s < sessions; s++) {
            List<Baseline.Install> ofSession = new ArrayList<>();
            for (int i = 0; i < installs; i++) {
                List<Double> values = new ArrayList<>();
                for (int k = 0; k < pulls; k++) {
                    values.add(190 + Math.sin(1 + 2.3 * s) + Math.sin(7 * i + s) + 0.4 * Math.sin(3 * k + 5 * i + 11 * s));
                }
                ofSession.add(new Baseline.Install("A" + i, values));
            }
            all.add(new Baseline.Session("day " + s, ofSession));
        }
        return new Baseline(all, 0);
    }

    private static RigKey key(boolean unstrapped) {
        return new RigKey("rollers 1", new Definition.MeanOverBand(Quantity.POWER, 314, 680), "", Correction.NONE, OptionalDouble.empty(),
                unstrapped);
    }

    private static LayerScatter layer(Layer layer, double share, double degreesOfFreedom) {
        return new LayerScatter(List.of(layer), share, degreesOfFreedom, 2 * share + 0.001);
    }

    private static RigRecord record(RigKey key, String session, LayerScatter... scatter) {
        return new RigRecord(key, "table", "0".repeat(64), NOW, 140_000, 1, List.of(scatter),
                List.of(new RigRecord.InstallMean(session, "A1", 3, 1)));
    }

    private static RigRecord record(RigKey key, String session, double mean) {
        return new RigRecord(key, "table", "0".repeat(64), NOW, 140_000, 1, List.of(layer(Layer.PULL, 0.006, 2)),
                List.of(new RigRecord.InstallMean(session, "A1", 3, mean)));
    }
}
