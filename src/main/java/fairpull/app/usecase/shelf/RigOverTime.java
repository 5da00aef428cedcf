package fairpull.app.usecase.shelf;

import fairpull.domain.rig.Layer;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.rig.TestsBeside;
import fairpull.engine.rig.BesideRecord;
import fairpull.engine.rig.RigSummary;
import fairpull.io.record.RecordFolder;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.RigChart;
import fairpull.report.chart.ScatterOverTimeChart;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.RigTestWords;
import fairpull.report.wording.RigWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rig over time: what its record says, as {@code rig show} and {@code rig report} do, and how tests that were run on it lie beside that.
 *
 * @param keys one a rig, measure, correction, bandwidth and manner of strapping
 */
public record RigOverTime(List<OfKey> keys) {
    /** The heads of the layers. */
    public static final List<String> HEADS = List.of("Layer", "Scatter", "95\u202f% interval", "Degrees of freedom", "Tables");

    /**
     * What is known of one key.
     *
     * @param changed whether the rig has changed, in one sentence
     * @param key what it holds for
     * @param said all that {@code rig show} says
     * @param rest what of that is not said by the other parts
     * @param layers each layer of scatter, as {@link #HEADS} name its cells
     * @param chart install means over time
     * @param tests what the tests say beside it; empty where none was run under this key
     * @param testCharts their charts
     */
    public record OfKey(String changed, String key, List<String> said, List<String> rest, List<List<String>> layers,
            Optional<Drawing> chart, List<String> tests, List<Drawing> testCharts) {
        public OfKey {
            said = List.copyOf(said);
            rest = List.copyOf(rest);
            layers = List.copyOf(layers);
            tests = List.copyOf(tests);
            testCharts = List.copyOf(testCharts);
        }
    }

    public RigOverTime {
        keys = List.copyOf(keys);
    }

    /** {@return what a folder of records, or a single one, says, and the tests of a list beside it} */
    public static RigOverTime of(Path records, List<ListedTest> tests) throws IOException {
        List<RigEvidence> all = Files.isDirectory(records) ? RigRecords.all(records)
                : RigSummary.all(List.of(RecordFolder.record(records)));
        List<RigRecord> ofA = tests.stream().flatMap(test -> test.outcome().stream()).flatMap(outcome -> outcome.ofA().stream()).toList();
        return new RigOverTime(all.stream().map(evidence -> key(evidence, ofA)).toList());
    }

    private static OfKey key(RigEvidence evidence, List<RigRecord> tests) {
        Optional<TestsBeside> beside = BesideRecord.of(evidence, tests);
        List<Drawing> charts = new ArrayList<>();
        beside.ifPresent(found -> {
            found.layers().forEach(layer -> charts.add(ScatterOverTimeChart.draw(layer)));
            RigChart.draw(found.together()).ifPresent(charts::add);
        });
        List<String> said = RigWords.evidence(evidence);
        List<String> rest = new ArrayList<>(said);
        rest.removeAll(RigWords.layers(evidence));
        rest.remove(RigWords.change(evidence));
        return new OfKey(RigWords.change(evidence), RigWords.key(evidence.key()), said, rest, layers(evidence), RigChart.draw(evidence),
                beside.map(RigTestWords::sentences).orElse(List.of()), charts);
    }

    private static List<List<String>> layers(RigEvidence evidence) {
        List<List<String>> rows = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            rows.add(evidence.of(layer).map(pooled -> List.of(RigWords.layer(layer), RigWords.percent(pooled.share()),
                    RigWords.ends(pooled), Numbers.degreesOfFreedom(pooled.degreesOfFreedom()), String.valueOf(pooled.records())))
                    .orElse(List.of(RigWords.layer(layer), "not known", "", "", "")));
        }
        return rows;
    }
}
