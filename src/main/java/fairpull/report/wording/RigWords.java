package fairpull.report.wording;

import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.rig.Baseline;
import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigEvidence.Pooled;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What a rig record says, and what it cannot say. */
public final class RigWords {
    /** A mean this far from the level typed is worth a word. */
    private static final double FAR_FROM_LEVEL = 0.1;

    private RigWords() {
    }

    /** {@return what a record holds for} */
    public static String key(RigKey key) {
        return key.rig() + ": " + measure(key) + "; " + PlanWords.correction(key.correction()) + "; "
                + PlanWords.bandwidth(key.bandwidthRadPerS()) + "; " + straps(key.unstrapped());
    }

    /** {@return the kind of measure of a key, with its band} */
    public static String measure(RigKey key) {
        return key.definition() instanceof Definition.Typed ? key.typedName() + ", read off and typed in"
                : PlanWords.definition(key.definition());
    }

    /** {@return what a refit meant} */
    public static String straps(boolean unstrapped) {
        return unstrapped ? "strapped down anew at each refit" : "straps left alone at each refit";
    }

    /** {@return a part of a key in words} */
    public static String part(RigKey.Part part, RigKey key) {
        return switch (part) {
            case RIG -> "another rig (“" + key.rig() + "”)";
            case MEASURE -> "another measure (" + measure(key) + ")";
            case CORRECTION -> "another correction (" + PlanWords.correction(key.correction()) + ")";
            case BANDWIDTH -> "another bandwidth (" + PlanWords.bandwidth(key.bandwidthRadPerS()) + ")";
            case STRAPS -> "other straps (" + straps(key.unstrapped()) + ")";
        };
    }

    /** {@return what a table of baselines came to} */
    public static List<String> added(RigRecord record, Baseline baseline, Measure measure) {
        List<String> sentences = new ArrayList<>();
        Unit unit = measure.unit();
        sentences.add(size(baseline) + "; mean by the model of days, installs and pulls "
                + Numbers.given(unit.fromSi(record.mean() * record.levelSi()), unit.symbol()) + ", "
                + share(record.mean()) + " of the level " + Numbers.given(unit.fromSi(record.levelSi()), unit.symbol()) + ".");
        record.scatter().forEach(scatter -> sentences.add(scatter(scatter)));
        sentences.addAll(lacking(record, baseline));
        if (Math.abs(record.mean() - 1) > FAR_FROM_LEVEL) {
            sentences.add("The mean lies more than " + Numbers.percent(FAR_FROM_LEVEL) + " from the level typed: look whether level and "
                    + "values are in the same unit and of the same car.");
        }
        if (baseline.rowsOfB() > 0) {
            sentences.add(Numbers.count(baseline.rowsOfB(), "pull") + " of part B " + (baseline.rowsOfB() == 1 ? "was" : "were")
                    + " left out: a rig record is made from installs of A alone.");
        }
        return sentences;
    }

    private static String size(Baseline baseline) {
        return Numbers.count(baseline.pulls(), "pull") + " in " + Numbers.count(baseline.installs(), "install") + " on "
                + Numbers.count(baseline.sessions().size(), "session");
    }

    private static String scatter(LayerScatter scatter) {
        String name = capital(scatter.layers().stream().map(RigWords::layer).collect(Collectors.joining(" and ")))
                + (scatter.layers().size() > 1 ? " scatter together, which this table cannot tell apart" : " scatter");
        if (scatter.degreesOfFreedom() == 0) {
            return name + ": 0, the data show none; up to roughly " + percent(scatter.shareAtMost()) + " would not surprise (one-sided 95"
                    + Numbers.THIN + "%). It has no degrees of freedom and adds nothing to the record.";
        }
        return name + ": " + percent(scatter.share()) + " with " + Numbers.withDegreesOfFreedom(scatter.degreesOfFreedom()) + ".";
    }

    private static List<String> lacking(RigRecord record, Baseline baseline) {
        List<String> sentences = new ArrayList<>();
        boolean oneEach = baseline.installs() == baseline.sessions().size();
        if (baseline.pulls() == baseline.installs()) {
            sentences.add("Every install has one pull: pull scatter cannot be told from refit scatter. Two pulls or more an install "
                    + "would.");
        }
        if (baseline.sessions().size() > 1 && oneEach) {
            sentences.add("Every session has one install: refit scatter cannot be told from day scatter, and no refit scatter is "
                    + "taken from "
                    + "this table. Two installs on some days would.");
        }
        if (baseline.sessions().size() == 1) {
            sentences.add("There is one session: day scatter is not known. Baselines on another day would show it.");
        }
        if (baseline.installs() == 1) {
            sentences.add("There is one install: refit scatter is not known. A second install would show it.");
        }
        if (record.of(Layer.REFIT).filter(refit -> refit.degreesOfFreedom() < 4).isPresent()) {
            sentences.add("Fewer than 4 degrees of freedom are thin evidence for refit scatter: add baselines.");
        }
        return sentences;
    }

    /** {@return all that is known for a key} */
    public static List<String> evidence(RigEvidence evidence) {
        List<String> sentences = new ArrayList<>();
        sentences.add(Numbers.count(evidence.records().size(), "table") + ": "
                + evidence.records().stream().map(RigRecord::source).collect(Collectors.joining(", ")) + ".");
        sentences.addAll(layers(evidence));
        if (evidence.records().size() > 1) {
            sentences.add("Tables are pooled by adding: variances weighted by their degrees of freedom, degrees of freedom summed. "
                    + "A table that "
                    + "shows no scatter in a layer adds nothing there, so that the pooled figure is, if anything, too large.");
        }
        limits(evidence).ifPresent(sentences::add);
        sentences.add(chart(evidence));
        sentences.add(change(evidence));
        return sentences;
    }

    /** {@return each layer of scatter, and which are not known} */
    public static List<String> layers(RigEvidence evidence) {
        List<String> sentences = new ArrayList<>();
        evidence.pooled().forEach(pooled -> sentences.add(pooled(pooled)));
        for (Layer layer : Layer.values()) {
            if (evidence.of(layer).isEmpty()) {
                sentences.add(capital(layer(layer)) + " scatter: not known from these tables.");
            }
        }
        return sentences;
    }

    private static String pooled(Pooled pooled) {
        return capital(layer(pooled.layer())) + " scatter: " + percent(pooled.share()) + " (" + interval(pooled) + ") with "
                + Numbers.withDegreesOfFreedom(pooled.degreesOfFreedom()) + ", from " + Numbers.count(pooled.records(), "table")
                + (pooled.recordsAtZero() > 0 ? "; " + Numbers.count(pooled.recordsAtZero(), "table") + " showed none" : "") + ".";
    }

    /** {@return the interval of a scatter with its level} */
    public static String interval(Pooled pooled) {
        return Numbers.level(Pooled.LEVEL) + " interval " + ends(pooled);
    }

    /** {@return the ends of the interval of a scatter} */
    public static String ends(Pooled pooled) {
        return Numbers.brief(pooled.low() * 100, "") + " to " + percent(pooled.high());
    }

    private static Optional<String> limits(RigEvidence evidence) {
        List<String> limits = new ArrayList<>();
        limit(evidence.repeatabilityLimit(Layer.PULL), "in one install").ifPresent(limits::add);
        limit(evidence.repeatabilityLimit(Layer.REFIT), "refitted on one day").ifPresent(limits::add);
        limit(evidence.repeatabilityLimit(Layer.DAY), "on two days").ifPresent(limits::add);
        return limits.isEmpty() ? Optional.empty() : Optional.of("Two single pulls of an unchanged car lie this near to each other "
                + "19 times "
                + "in 20: " + String.join(", ", limits) + " (repeatability limit, 2.77 standard deviations).");
    }

    private static Optional<String> limit(OptionalDouble share, String where) {
        return share.isPresent() ? Optional.of(percent(share.getAsDouble()) + " " + where) : Optional.empty();
    }

    private static String chart(RigEvidence evidence) {
        if (evidence.chart().isEmpty()) {
            return "A chart needs two installs.";
        }
        RigEvidence.Chart chart = evidence.chart().get();
        String run = chart.runFrom().map(place -> "a run of eight on one side begins at " + point(chart.points().get(place)))
                .orElse("no run of eight on one side");
        String beyond = chart.beyond() == 0 ? "none of the " + chart.points().size() + " install means lies beyond 3 sigma"
                : "beyond 3 sigma: " + chart.points().stream().filter(RigEvidence.Point::beyond).map(RigWords::point)
                .collect(Collectors.joining(", "));
        return "Chart of install means, centre, their plain mean, " + share(chart.centre()) + ", limits " + share(chart.low()) + " and "
                + share(chart.high()) + " of the level: " + beyond + "; " + run + ".";
    }

    private static String point(RigEvidence.Point point) {
        return point.session() + " " + point.install();
    }

    /** {@return whether the rig has changed, in one sentence} */
    public static String change(RigEvidence evidence) {
        if (evidence.change().isEmpty()) {
            return "Whether the rig has changed is not looked for in fewer than four sessions.";
        }
        RigEvidence.Change change = evidence.change().get();
        String step = "from " + share(change.before()) + " to " + share(change.after()) + " of the level, " + Numbers.p(change.pValue());
        return change.looksChanged()
                ? "The rig looks changed from session " + change.fromSession() + " on: " + step + ". Its older figures may not hold "
                        + "any more."
                : "No change of the rig between its " + change.sessions() + " sessions is shown (best parting at session "
                + change.fromSession() + ", " + step + ").";
    }

    /** {@return how chart and change are reckoned} */
    public static List<String> method() {
        return List.of("Model: value = mean + day + refit + pull. The variances are estimated by restricted maximum likelihood, a "
                + "variance that "
                + "would be negative stands at 0; degrees of freedom are Satterthwaite’s, 2·s⁴ / var(s²), from the expected information.",
                "Chart: centre is the mean of the install means, sigma the mean moving range of neighbours / 1.128, limits at 3 "
                + "sigma. A point "
                + "is marked beyond a limit; a run is eight points in a row on one side (Western Electric rules). With known limits "
                + "a steady "
                + "rig raises either about once in 150 points. Installs of one day share that day: where days scatter, neighbours "
                + "of one day "
                + "lie closer than those of two, and points are marked more often than that.",
                "Change: the parting of the sessions into two levels that takes up most of their scatter; p is how often steady "
                + "normal session "
                + "means part as well (simulated). The rig is said to look changed at p ≤ 0.05. A car that changed looks the same.");
    }

    /** {@return the name of a layer within a sentence} */
    public static String layer(Layer layer) {
        return switch (layer) {
            case PULL -> "pull";
            case REFIT -> "refit";
            case DAY -> "day";
        };
    }

    /** {@return a share of the level with three digits} */
    public static String percent(double share) {
        return Numbers.brief(share * 100, "%");
    }

    /** A level as a share of the level, near 100 %: one hundredth of a percent counts. */
    private static String share(double share) {
        return Numbers.resolving(0.1, "%").with(share * 100);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
