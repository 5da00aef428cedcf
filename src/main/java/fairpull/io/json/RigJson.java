package fairpull.io.json;

import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What a rig record says, as JSON. Scatter is in percent of the level. */
public final class RigJson {
    private static final double PERCENT = 100;

    private RigJson() {
    }

    /** {@return a table that was added, and what its key comes to now} */
    public static String added(String file, RigRecord record, RigEvidence evidence, List<String> sentences) {
        return Tree.empty().text("file", file).text("source", record.source())
                .number("levelSi", record.levelSi()).number("meanPercent", PERCENT * record.mean())
                .trees("scatter", record.scatter(), RigJson::fill)
                .tree("together", tree(evidence, List.of())).texts("sentences", sentences).document();
    }

    /** {@return everything in a folder of records} */
    public static String shown(List<RigEvidence> all, List<List<String>> sentences) {
        return Tree.empty().trees("records", all, (tree, one) -> fill(tree, one, sentences.get(all.indexOf(one)))).document();
    }

    /** {@return a report that was written} */
    public static String written(String file, int keys) {
        return Tree.empty().text("file", file).whole("records", keys).document();
    }

    private static void fill(Tree tree, LayerScatter scatter) {
        tree.texts("layers", scatter.layers().stream().map(RigJson::name).toList()).number("percent", PERCENT * scatter.share())
                .number("degreesOfFreedom", scatter.degreesOfFreedom()).number("percentAtMost", PERCENT * scatter.shareAtMost());
    }

    private static Tree tree(RigEvidence evidence, List<String> sentences) {
        Tree tree = Tree.empty();
        fill(tree, evidence, sentences);
        return tree;
    }

    private static void fill(Tree tree, RigEvidence evidence, List<String> sentences) {
        key(tree, evidence.key());
        tree.texts("sources", evidence.records().stream().map(RigRecord::source).toList());
        for (Layer layer : Layer.values()) {
            evidence.of(layer).ifPresentOrElse(pooled -> tree.tree(name(layer), layer(pooled)), () -> tree.nothing(name(layer)));
        }
        tree.tree("repeatabilityLimitPercent", Tree.empty().number("oneInstall", percent(evidence.repeatabilityLimit(Layer.PULL)))
                .number("refitted", percent(evidence.repeatabilityLimit(Layer.REFIT)))
                .number("anotherDay", percent(evidence.repeatabilityLimit(Layer.DAY))));
        evidence.chart().ifPresentOrElse(chart -> tree.tree("chart", chart(chart)), () -> tree.nothing("chart"));
        evidence.change().ifPresentOrElse(change -> tree.tree("change", Tree.empty().flag("looksChanged", change.looksChanged())
                .text("fromSession", change.fromSession()).number("pValue", change.pValue())
                .number("beforePercent", PERCENT * change.before()).number("afterPercent", PERCENT * change.after())
                .whole("sessions", change.sessions())), () -> tree.nothing("change"));
        if (!sentences.isEmpty()) {
            tree.texts("sentences", sentences);
        }
    }

    private static Tree layer(RigEvidence.Pooled pooled) {
        return Tree.empty().number("percent", PERCENT * pooled.share()).number("degreesOfFreedom", pooled.degreesOfFreedom())
                .number("level", RigEvidence.Pooled.LEVEL).number("lowPercent", PERCENT * pooled.low())
                .number("highPercent", PERCENT * pooled.high()).whole("tables", pooled.records())
                .whole("tablesAtZero", pooled.recordsAtZero());
    }

    private static void key(Tree tree, RigKey key) {
        OptionalDouble width = key.bandwidthRadPerS();
        tree.text("rig", key.rig()).record("measure", key.definition()).text("typedName", key.typedName())
                .text("correction", key.correction().id())
                .number("bandwidthRpm", width.isPresent() ? Units.RPM.differenceFromSi(width.getAsDouble()) : Double.NaN)
                .flag("restrapped", key.unstrapped());
    }

    private static Tree chart(RigEvidence.Chart chart) {
        return Tree.empty().number("centrePercent", PERCENT * chart.centre()).number("sigmaPercent", PERCENT * chart.sigma())
                .number("lowPercent", PERCENT * chart.low()).number("highPercent", PERCENT * chart.high())
                .trees("points", chart.points(), (tree, point) -> tree.text("session", point.session()).text("install", point.install())
                        .number("percent", PERCENT * point.value()).flag("beyond", point.beyond()))
                .whole("runFromPoint", chart.runFrom().map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(PERCENT * share.getAsDouble()) : share;
    }

    private static String name(Layer layer) {
        return layer.name().toLowerCase(Locale.ROOT);
    }
}
