package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.rig.Baseline;
import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Unit;
import fairpull.engine.rig.BaselineScatter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where the scatter figures of a plan may be from: a rig record, a labelled guess, or pilot pulls.
 *
 * @param pull pull scatter, where the source tells it
 * @param refit refit scatter, where the source tells it
 * @param said where the figures are from, in a paragraph
 */
public record ScatterSource(Optional<Scatter> pull, Optional<Scatter> refit, String said) {

    /** {@return the figures of the record in a folder that matches a plan} */
    public static ScatterSource record(Path records, Plan plan) throws IOException {
        return of(PlanScatter.of(typed(plan.rig(), records), plan.question().deciding(), plan.question().expectedLevelSi(),
                plan.bandwidthRadPerS(), unstraps(plan)));
    }

    /** {@return the labelled guess for a plan} */
    public static ScatterSource guess(Plan plan) {
        try {
            return of(PlanScatter.of(typed(plan.rig(), null), plan.question().deciding(), plan.question().expectedLevelSi(),
                    plan.bandwidthRadPerS(), unstraps(plan)));
        } catch (IOException nothingIsRead) {
            throw new IllegalStateException(nothingIsRead);
        }
    }

    private static ScatterSource of(PlanScatter scatter) {
        return new ScatterSource(scatter.pull(), scatter.refit(), String.join(" ", scatter.said()));
    }

    private static NewPlan.RigTyped typed(Rig rig, Path records) {
        return new NewPlan.RigTyped(rig.name(), rig.kind(), rig.gear(), null, null, null, null, records, records == null,
                new TypedMotion.Typing(null, null, null));
    }

    private static boolean unstraps(Plan plan) {
        return plan.sequence().installs().skip(1).anyMatch(install -> install.unstrapped());
    }

    /**
     * The figures of pilot pulls of an unchanged car: one line an install, its pulls parted by blanks or semicolons.
     *
     * @param text the pulls, in the unit of the deciding measure
     * @param plan whose deciding measure they are of
     * @return pull scatter, and refit scatter where there are several installs
     */
    public static ScatterSource pilot(String text, Plan plan) {
        List<Baseline.Install> installs = new ArrayList<>();
        for (String line : text.lines().filter(line -> !line.isBlank()).toList()) {
            installs.add(new Baseline.Install("A" + (installs.size() + 1), values(line)));
        }
        if (installs.isEmpty()) {
            throw new UsageException("", "paste the pulls of an unchanged car, one line an install: 201.3 201.9 201.1");
        }
        Baseline baseline = new Baseline(List.of(new Baseline.Session("pilot", installs)), 0);
        double level = installs.stream().flatMap(install -> install.values().stream()).mapToDouble(value -> value).average().orElse(1);
        BaselineScatter scatter = BaselineScatter.of(baseline, level);
        Unit unit = plan.question().deciding().unit();
        Optional<Scatter> pull = find(scatter, Layer.PULL, level, unit);
        Optional<Scatter> refit = find(scatter, Layer.REFIT, level, unit);
        if (pull.isEmpty() && refit.isEmpty()) {
            throw new UsageException("", "these pulls tell neither scatter: give two pulls or more of an install, unequal ones");
        }
        return new ScatterSource(pull, refit.or(() -> plan.rig().refitScatter()), "From " + baseline.pulls() + " pilot pulls in "
                + baseline.installs() + (baseline.installs() == 1 ? " install" : " installs") + " of an unchanged car"
                + (refit.isPresent() ? "." : "; refit scatter shows only between several installs, so its figure stays as it was."));
    }

    private static Optional<Scatter> find(BaselineScatter scatter, Layer layer, double level, Unit unit) {
        return scatter.scatter().stream().filter(found -> found.tells(layer)).findFirst().map((LayerScatter found) -> new Scatter(
                unit.differenceToSi(found.share() * level), found.degreesOfFreedom(), Scatter.Origin.PILOT_PULLS));
    }

    private static List<Double> values(String line) {
        return Arrays.stream(line.strip().split("[;\\s]+")).map(ScatterSource::value).collect(Collectors.toList());
    }

    private static double value(String text) {
        return Amount.parse(text).filter(Amount::isBare).orElseThrow(() -> new UsageException("", "“" + text
                + "” is no number; write one line an install, pulls parted by blanks")).value();
    }
}
