package fairpull.app.usecase.conditions;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.day.DayClock;
import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.unit.Unit;
import fairpull.report.chart.CoolDownChart;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.PlanStrip;
import fairpull.report.chart.StartTemperatureChart;
import fairpull.report.wording.HeatNoticeWords;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.SoakWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The heat of the planned day, from a logged cool-down or typed time constants.
 *
 * @param heading what was found, in a sentence; or what is wrong or missing
 * @param sentences what follows
 * @param charts the start of every pull, and the fit where there is a log
 * @param strip the start temperatures for the day strip; empty where nothing is known
 */
public record HeatCheck(String heading, List<String> sentences, List<Drawing> charts, Optional<PlanStrip.Heat> strip) {
    /** Common practice, no source: the gate on intake air that plans begin with. */
    private static final double USUAL_TOLERANCE_K = 2;

    /**
     * What was typed.
     *
     * @param log a logged cool-down; empty where a time constant is typed
     * @param timeConstant in minutes or with its unit
     * @param pullRise what one pull adds
     * @param ambient what the car cools down to
     */
    public record Typed(Optional<Path> log, String timeConstant, String pullRise, String ambient) {
        boolean isEmpty() {
            return log.isEmpty() && (timeConstant + pullRise).isBlank();
        }
    }

    public HeatCheck {
        sentences = List.copyOf(sentences);
        charts = List.copyOf(charts);
    }

    /** {@return what heat asks of the planned day} */
    public static HeatCheck of(Plan plan, Typed typed) {
        if (typed.isEmpty()) {
            return said("");
        }
        try {
            return of(plan, PlanSoak.plan(request(plan, typed)));
        } catch (UsageException misunderstood) {
            return said(misunderstood.problem());
        } catch (InputException impossible) {
            return said(impossible.oneLine(Surface.WINDOW));
        }
    }

    private static HeatCheck said(String words) {
        return new HeatCheck(words, List.of(), List.of(), Optional.empty());
    }

    private static PlanSoak.Request request(Plan plan, Typed typed) {
        Sequence sequence = plan.sequence();
        Unit unit = plan.question().deciding().unit();
        Optional<String> level = text(plan.question().expectedLevelSi(), si -> unit.fromSi(si), unit);
        return new PlanSoak.Request(typed.log(), List.of(), Optional.empty(),
                typed.log().isPresent() || typed.timeConstant().isBlank() ? List.of() : List.of(typed.timeConstant()), Optional.empty(),
                given(typed.ambient()), given(typed.pullRise()), Numbers.given(tolerance(plan)) + "K",
                sequence.sessions().get(0).installs().stream().map(install -> install.part().name()).reduce("", String::concat),
                sequence.installs().mapToInt(Install::countedPulls).max().orElse(1), Numbers.given(sequence.pullIntervalS()) + "s",
                Numbers.given(sequence.swapS()) + "s", Optional.empty(), level,
                level.flatMap(known -> text(plan.question().worthwhileGainSi(), unit::differenceFromSi, unit)));
    }

    private interface Scale {
        double of(double si);
    }

    private static Optional<String> text(OptionalDouble si, Scale scale, Unit unit) {
        return si.isEmpty() ? Optional.empty() : Optional.of(Numbers.given(scale.of(si.getAsDouble())) + unit.symbol());
    }

    private static Optional<String> given(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
    }

    private static double tolerance(Plan plan) {
        return plan.gates().stream().filter(gate -> gate.condition() == Condition.INTAKE_AIR)
                .flatMap(gate -> gate.limit() instanceof Gate.NearReference near ? Optional.of(near.toleranceSi()).stream()
                        : Optional.<Double>empty().stream()).findFirst().orElse(USUAL_TOLERANCE_K);
    }

    private static HeatCheck of(Plan plan, SoakAnswer answer) {
        List<Drawing> charts = new ArrayList<>(answer.cannotSay() ? List.of() : List.of(StartTemperatureChart.draw(answer)));
        answer.log().ifPresent(log -> {
            charts.add(CoolDownChart.curve(log, answer.choice().orElseThrow().chosen()));
            charts.add(CoolDownChart.residuals(log, answer.choice().orElseThrow().chosen()));
        });
        List<String> sentences = new ArrayList<>(SoakWords.plan(answer, Surface.WINDOW));
        SoakWords.bias(answer, Surface.WINDOW).forEach(said -> sentences.add(said.head() + ": " + said.text()));
        answer.notices().stream().map(notice -> HeatNoticeWords.sentence(notice, Surface.WINDOW)).forEach(sentences::add);
        return new HeatCheck(SoakWords.heading(answer), sentences, charts, answer.cannotSay() ? Optional.empty()
                : Optional.of(strip(plan, answer)));
    }

    /** The starts of the first day, placed on its planned clock pull by pull. */
    private static PlanStrip.Heat strip(Plan plan, SoakAnswer answer) {
        List<PullStart> pulls = answer.plan().pulls();
        double reference = pulls.stream().filter(pull -> !pull.warmUp()).findFirst().orElse(pulls.get(0)).riseK();
        DayClock day = DayClock.of(plan.sequence()).get(0);
        double first = day.installs().get(0).startS();
        List<PlanStrip.Start> starts = pulls.stream()
                .map(pull -> new PlanStrip.Start(first + pull.timeS(), pull.riseK() - reference)).toList();
        return new PlanStrip.Heat(List.of(starts), answer.question().toleranceK());
    }
}
