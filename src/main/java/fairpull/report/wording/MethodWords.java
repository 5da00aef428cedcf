package fairpull.report.wording;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How the finding came about, so that it can be checked and in its core redone with a spreadsheet. */
public final class MethodWords {
    private MethodWords() {
    }

    /** {@return the methods in sentences} */
    public static List<String> paragraphs(Plan plan, Finding finding) {
        List<String> paragraphs = new ArrayList<>(List.of(measure(plan.question().deciding()), model(finding.settings()),
                inference(finding)));
        plan.looks().ifPresent(looks -> paragraphs.add(LookWords.planned(looks, plan.question().errorRate())
                + " The error rate above is that of this look alone; its bound is worked out for known scatter and applied through its "
                + "p-value, which with few degrees of freedom keeps the error rate of all looks only nearly."));
        paragraphs.add(shape(plan));
        return paragraphs;
    }

    private static String measure(Measure measure) {
        return "Deciding measure: " + measure.name() + " – " + PlanWords.definition(measure) + ", in "
                + (measure.unit().symbol().isBlank() ? "the unit as typed" : measure.unit().symbol()) + "; "
                + PlanWords.correction(measure.correction()) + "; " + PlanWords.better(measure.better()) + ".";
    }

    private static String model(JudgeSettings settings) {
        String drift = switch (settings.drift()) {
            case NONE -> "no drift";
            case LINEAR -> "a straight-line drift over the clock, in minutes centred within each session";
            case QUADRATIC -> "a curved (quadratic) drift over the clock, in minutes centred within each session";
        };
        String covariates = settings.covariates().isEmpty() ? "" : ", slopes for " + String.join(" and ", settings.covariates());
        return "Model: value = level of the session + change where B is fitted + " + drift + covariates + " + refit scatter (one draw per "
                + "install) + pull scatter (one draw per pull). The install is the unit that is compared, not the pull: pulls of one "
                + "install share a strap-down.";
    }

    private static String inference(Finding finding) {
        JudgeSettings settings = finding.settings();
        boolean record = settings.pullRecord().isPresent() || settings.refitRecord().isPresent();
        String mode = record ? "Both scatters are estimated by restricted maximum likelihood, together with the record: "
                + records(finding) + ". Degrees of freedom follow from the information in both."
                : "Both scatters are estimated from these data alone by restricted maximum likelihood; standard error and degrees of "
                + "freedom are those of Kenward and Roger.";
        return mode + " Error rate " + Numbers.percent(settings.errorRate()) + ", "
                + (settings.sides() == Sides.TWO ? "two-sided" : "one-sided, towards a gain") + ". "
                + (settings.worthwhileGain().isPresent() ? "“No difference that matters” is said when two one-sided tests against ± "
                + Numbers.given(settings.worthwhileGain().getAsDouble(), finding.unit()) + " both reject at that rate." : "");
    }

    private static String records(Finding finding) {
        JudgeSettings settings = finding.settings();
        List<String> records = new ArrayList<>();
        record("pull scatter", settings.pullRecord(), finding.unit()).ifPresent(records::add);
        record("refit scatter", settings.refitRecord(), finding.unit()).ifPresent(records::add);
        return String.join(", ", records);
    }

    private static Optional<String> record(String name, Optional<ScatterRecord> record, String unit) {
        return record.map(known -> name + " " + TippingWords.recordFigure(known, unit));
    }

    private static String shape(Plan plan) {
        String origin = switch (plan.sequence().origin()) {
            case CHOSEN -> "chosen";
            case DRAWN -> "drawn at random"
                    + (plan.sequence().seed().isPresent() ? ", seed " + plan.sequence().seed().getAsLong() : "");
        };
        String kind = PlanWords.kind(plan.rig().kind());
        return "Order " + plan.sequence().letters().replace("|", " | ") + ", " + origin + "; rig: " + kind
                + (plan.rig().gear().isBlank() ? "" : ", gear " + plan.rig().gear()) + ". Gates before a pull: "
                + (plan.gates().isEmpty() ? "none" : plan.gates().stream().map(gate -> gate.condition().words())
                .collect(Collectors.joining(", "))) + ".";
    }

    /** {@return the steps by which the test on install means is redone in a spreadsheet} */
    public static List<String> spreadsheet(Plan plan, Finding finding) {
        List<String> steps = new ArrayList<>();
        steps.add("Put the mean of each install (table of installs) in one column, one row an install.");
        steps.add("Beside it a column “B” that holds 1 for installs of B and 0 for installs of A.");
        if (plan.sequence().sessions().size() > 1) {
            steps.add("For each session after the first, a further column that holds 1 for its installs and 0 for all others.");
        }
        if (finding.settings().drift() != Drift.NONE) {
            steps.add("A column with the mean clock time of the install’s used pulls in minutes, less the mean of all used pulls of its "
                    + "session." + (finding.settings().drift() == Drift.QUADRATIC
                    ? " Another with the mean over the install’s pulls of the square of that difference." : ""));
        }
        steps.add("LINEST of the means on these columns, with a constant and with statistics, gives at column “B” the change and its "
                + "standard error, and the degrees of freedom: installs less columns less one.");
        boolean two = finding.settings().sides() == Sides.TWO;
        steps.add("Change over standard error is t; " + (two ? "T.DIST.2T" : "T.DIST.RT, in the better direction,") + " gives p, and "
                + "standard error times " + (two ? "T.INV.2T(error rate; degrees of freedom) the half-width of the interval."
                : "T.INV(1 − error rate; degrees of freedom) the distance to the near end of the interval."));
        if (!finding.settings().covariates().isEmpty()) {
            steps.add("Slopes for conditions that vary from pull to pull are not part of this simpler test.");
        }
        return steps;
    }
}
