package fairpull.engine.heat;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.heat.HeatNotice;
import fairpull.domain.heat.HeatNotice.Code;
import fairpull.domain.heat.SoakPlan;
import java.util.ArrayList;
import java.util.List;

/** What a reader must know before relying on a fit or a plan. The limits are judgement, no source. */
public final class HeatNotices {
    private static final double FIFTY_CELSIUS_K = 323.15;
    private static final double LOOSE_FACTOR = 2;
    private static final double HOPELESS_FACTOR = 3;
    private static final double LARGE_SHARE = 0.1;
    /** Warm-ups that leave more than this of the bias do not serve it. */
    private static final double WORTH_HAVING = 0.9;
    /** A relative bias that is printed as nothing. */
    private static final double NOTHING = 5e-7;

    private HeatNotices() {
    }

    /**
     * What a fit is to be read with.
     *
     * @param toleranceK of the start temperature
     */
    public static List<HeatNotice> ofFit(CoolDownLog log, CoolDownFit fit, double toleranceK) {
        List<HeatNotice> notices = new ArrayList<>();
        FittedMode slowest = fit.modes().get(fit.modes().size() - 1);
        if (log.spanS() < slowest.timeConstantS()) {
            notices.add(HeatNotice.of(Code.LOG_SHORTER_THAN_TIME_CONSTANT, log.spanS(), slowest.timeConstantS()));
        }
        fit.modes().stream().filter(mode -> !(mode.highS() / mode.lowS() <= LOOSE_FACTOR * LOOSE_FACTOR))
                .forEach(mode -> notices.add(HeatNotice.of(mode.highS() / mode.lowS() <= HOPELESS_FACTOR * HOPELESS_FACTOR
                        ? Code.TIME_CONSTANT_LOOSE : Code.LOG_CANNOT_SAY, mode.lowS(), mode.highS())));
        if (fit.ambientErrorK() > toleranceK) {
            notices.add(HeatNotice.of(Code.AMBIENT_LOOSE, fit.ambientK(), fit.ambientErrorK()));
        }
        SerialCorrelation serial = new SerialCorrelation(fit.serialCorrelation(), log.size());
        if (serial.isSeen()) {
            notices.add(HeatNotice.of(Code.READINGS_FOLLOW_ONE_ANOTHER, serial.firstLag(), 1 / Math.sqrt(serial.worth())));
        }
        double lowest = log.temperaturesK().stream().min().orElseThrow();
        if (lowest > FIFTY_CELSIUS_K) {
            notices.add(HeatNotice.of(Code.FAHRENHEIT_SUSPECTED, lowest));
        }
        if (fit.modes().size() > 1) {
            notices.add(HeatNotice.of(Code.SHARES_TAKEN_FROM_LOG));
        }
        return notices;
    }

    /** {@return what a plan is to be read with} */
    public static List<HeatNotice> ofPlan(SoakPlan plan) {
        List<HeatNotice> notices = new ArrayList<>();
        if (!plan.isHeld()) {
            notices.add(HeatNotice.of(Code.NOT_HELD, (double) SoakPlan.MOST_WARM_UPS));
        }
        double with = Math.abs(plan.bias().relative());
        double without = Math.abs(plan.biasWithoutWarmUps().relative());
        if (plan.isHeld() && plan.warmUpsFirst().getAsInt() + plan.warmUpsAfterSwap().getAsInt() > 0 && without > NOTHING
                && with > WORTH_HAVING * without) {
            notices.add(HeatNotice.of(Code.WARM_UPS_SERVE_THE_GATE, with, without));
        }
        plan.bias().shareOfWorthwhile().stream().filter(share -> share > LARGE_SHARE)
                .forEach(share -> notices.add(HeatNotice.of(Code.BIAS_LARGE, share)));
        return notices;
    }
}
