package fairpull.io.json;

import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Seal;
import java.util.List;
import java.util.OptionalInt;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What was done, as JSON: the answers of the verbs that write. */
public final class ReceiptJson {
    private ReceiptJson() {
    }

    /**
     * A pull that came in.
     *
     * @param pull which one
     * @param file the file it came from
     * @param values its measures in their own units
     * @param doubts what is not certain about them
     */
    public record Taken(PullId pull, String file, Map<Measure, Double> values, List<String> doubts) {
    }

    /** {@return a test that was made} */
    public static String made(String folder, Plan plan, int countedPulls, List<String> scatterSaid,
            List<String> warnings) {
        return Tree.empty().text("test", folder).text("title", plan.title()).text("sequence", plan.sequence().letters())
                .whole("countedPulls", countedPulls).tree("scatter", scatter(plan, scatterSaid)).texts("warnings", warnings).document();
    }

    private static Tree scatter(Plan plan, List<String> said) {
        Tree tree = Tree.empty();
        figure(tree, "pull", plan.rig().pullScatter());
        figure(tree, "refit", plan.rig().refitScatter());
        return tree.texts("sentences", said);
    }

    private static void figure(Tree tree, String key, Optional<Scatter> scatter) {
        scatter.ifPresentOrElse(known -> tree.tree(key, Tree.empty().number("standardDeviationSi", known.standardDeviationSi())
                .number("degreesOfFreedom", known.degreesOfFreedom())
                .text("origin", known.origin().name().toLowerCase(Locale.ROOT).replace('_', '-'))), () -> tree.nothing(key));
    }

    /** {@return a plan that was sealed} */
    public static String sealed(Seal seal) {
        return Tree.empty().text("code", seal.code()).text("planSha256", seal.planSha256()).text("at", seal.at().toString()).document();
    }

    /** {@return pulls that came in} */
    public static String taken(List<Taken> pulls) {
        return Tree.empty().trees("taken", pulls, (tree, taken) -> tree.text("pull", taken.pull().toString()).text("file", taken.file())
                .trees("values", List.copyOf(taken.values().entrySet()), (value, entry) -> value.text("measure", entry.getKey().name())
                        .number("value", entry.getValue()).text("unit", entry.getKey().unit().symbol()))
                .texts("doubts", taken.doubts())).document();
    }

    /** {@return pulls, installs or the test, beside which something was noted} */
    public static String noted(List<String> subjects) {
        return Tree.empty().texts("noted", subjects).document();
    }

    /** {@return a plan that was amended} */
    public static String amended(LogEntry.Amended amended) {
        return Tree.empty().text("because", amended.reason()).trees("changes", amended.changes(), (tree, change) ->
                tree.text("place", change.place()).text("before", change.before()).text("after", change.after())).document();
    }

    /** {@return a pull that was left out, or counts again} */
    public static String counted(PullId pull, boolean counts) {
        return Tree.empty().text("pull", pull.toString()).flag("counts", counts).document();
    }

    /** {@return a run sheet that was written} */
    public static String sheet(String file, int pages) {
        return Tree.empty().text("file", file).whole("pages", pages).document();
    }

    /** {@return what was written of a report: the first file, all of them, the pages of the PDF} */
    public static String reported(List<String> files, OptionalInt pages, String verdict) {
        return Tree.empty().text("file", files.get(0)).texts("files", files).whole("pages", pages).text("verdict", verdict).document();
    }
}
