package fairpull.app.usecase.conditions;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.HeatNotice;
import fairpull.domain.heat.Mode;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakPlan.OptionalEnds;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.engine.heat.HeatNotices;
import fairpull.engine.heat.HoldingInterval;
import fairpull.engine.heat.SoakPlanning;
import fairpull.engine.heat.TimeConstants;
import fairpull.io.folder.Outputs;
import fairpull.io.table.ColumnChoice;
import fairpull.io.table.CoolDownReader;
import fairpull.report.write.SoakReport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fits a logged cool-down, or takes typed time constants, and plans the heat of a day. */
public final class PlanSoak {
    /** The reference of the correction standards stands for an ambient that nobody gave. */
    private static final double REFERENCE_K = Units.CELSIUS.toSi(25);

    private final Request request;
    private final SoakTyped typed;
    private final List<HeatNotice> notices = new ArrayList<>();

    private PlanSoak(Request request) {
        this.request = request;
        this.typed = new SoakTyped(request);
    }

    /**
     * What is asked, as typed.
     *
     * @param log a logged cool-down; empty where time constants are typed
     * @param columns which column is which quantity
     * @param from where the cool-down begins in the log
     * @param timeConstants typed, one or two
     * @param share of the first of two in a pull's rise
     * @param ambient what the car cools down to
     * @param pullRise what one pull adds
     * @param tolerance how far a counted pull may start from the reference pull
     * @param sequence installs in order
     * @param pulls counted pulls of each
     * @param interval from pull to pull
     * @param swap what a swap adds
     * @param sensitivity of the measure to temperature
     * @param level expected of the measure
     * @param worthwhile the smallest gain that matters
     */
    public record Request(Optional<Path> log, List<String> columns, Optional<String> from, List<String> timeConstants,
                          Optional<String> share, Optional<String> ambient, Optional<String> pullRise, String tolerance, String sequence,
                          int pulls, String interval, String swap, Optional<String> sensitivity, Optional<String> level,
                          Optional<String> worthwhile) {
    }

    /** {@return the answer to a request} */
    public static SoakAnswer plan(Request request) {
        if (request.log().isPresent() == !request.timeConstants().isEmpty()) {
            throw new UsageException("soak", request.log().isPresent()
                    ? new Remedy("a log and --time-constant contradict each other; give one of them",
                            "a log and a time constant contradict each other; give one of them")
                    : new Remedy("give a logged cool-down, or --time-constant with --pull-rise",
                            "give a logged cool-down, or a time constant with what one pull adds"));
        }
        return request.log().map(log -> new PlanSoak(request).fromLog(log)).orElseGet(() -> new PlanSoak(request).fromTyped());
    }

    /** Writes the page of an answer. */
    public static void write(SoakAnswer answer, Path target) throws IOException {
        Outputs.write(target, SoakReport.html(answer));
    }

    private SoakAnswer fromLog(Path file) {
        CoolDownLog log = CoolDownReader.read(file, choices(), typed.from());
        OptionalDouble ambient = typed.ambientK();
        ambient.ifPresent(given -> refuseAmbientAboveLog(file, log, given));
        ModeChoice choice = TimeConstants.choose(log, ambient);
        CoolDownFit fit = choice.chosen();
        if (!(fit.told() && fit.startExcessK() > 0 && fit.ambientK() >= SoakTyped.COLDEST_AMBIENT_K)) {
            throw new InputException(Place.of(file.toString()), "the readings tell no time constant: they are too straight or too few",
                    ambient.isPresent() ? Remedy.everywhere("log until the temperature hardly falls")
                            : new Remedy("log until the temperature hardly falls, or give --ambient",
                                    "log until the temperature hardly falls, or give the ambient"));
        }
        OptionalDouble rise = typed.pullRiseK();
        SoakQuestion question = typed.question(rise.orElse(fit.startExcessK()), fit.ambientK());
        OptionalEnds ends = HoldingInterval.of(fit, rise, question.toleranceK());
        notices.addAll(HeatNotices.ofFit(log, fit, question.toleranceK()));
        if (rise.isEmpty()) {
            notices.add(HeatNotice.of(HeatNotice.Code.RISE_TAKEN_FROM_LOG, fit.startExcessK()));
        }
        return answer(Optional.of(log), Optional.of(choice), fit.shares(), question, ends);
    }

    private SoakAnswer fromTyped() {
        double rise = typed.pullRiseK().orElseThrow(() -> new UsageException("--pull-rise", new Remedy(
                "is missing: typed time constants need what one pull adds, such as --pull-rise 6K",
                "A typed time constant needs what one pull adds, such as 6 K.")));
        if (typed.ambientK().isEmpty()) {
            notices.add(HeatNotice.of(HeatNotice.Code.AMBIENT_ASSUMED));
        }
        notices.add(HeatNotice.of(HeatNotice.Code.TYPED_NOT_FITTED));
        return answer(Optional.empty(), Optional.empty(), typed.modes(), typed.question(rise, typed.ambientK().orElse(REFERENCE_K)),
                OptionalEnds.none());
    }

    private SoakAnswer answer(Optional<CoolDownLog> log, Optional<ModeChoice> choice, List<Mode> modes, SoakQuestion question,
            OptionalEnds ends) {
        SoakPlan plan = SoakPlanning.plan(modes, question, ends);
        SoakAnswer answer = new SoakAnswer(log, choice, modes, question, plan, notices);
        if (!answer.cannotSay()) {
            notices.addAll(HeatNotices.ofPlan(plan));
        }
        return new SoakAnswer(log, choice, modes, question, plan, notices);
    }

    private Map<Quantity, ColumnChoice> choices() {
        Map<Quantity, ColumnChoice> choices = new EnumMap<>(Quantity.class);
        for (String column : request.columns()) {
            Map.Entry<Quantity, ColumnChoice> choice = ColumnChoice.parse(column).orElseThrow(() -> new UsageException("--column",
                    "expected QUANTITY=NAME[:UNIT], such as temperature=\"Intake Air\":C; found “" + column + "”"));
            choices.put(choice.getKey(), choice.getValue());
        }
        return choices;
    }

    private static void refuseAmbientAboveLog(Path file, CoolDownLog log, double ambientK) {
        double last = log.temperaturesK().at(log.size() - 1);
        if (ambientK > last + SoakTyped.AMBIENT_SLACK_K) {
            throw new InputException(Place.of(file.toString()), "the log ends at " + SoakTyped.degrees(last) + ", below the ambient of "
                    + SoakTyped.degrees(ambientK) + " that was given",
                    "give the temperature that the car cools down to, or check the units");
        }
    }
}
