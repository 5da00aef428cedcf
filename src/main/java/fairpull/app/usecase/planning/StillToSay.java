package fairpull.app.usecase.planning;

import fairpull.domain.plan.Plan;
import fairpull.engine.planning.PlanSizing;
import fairpull.report.wording.OutlookWords;

/**
 * What a plan must still say before anything can be reckoned from it.
 *
 * @param gain whether the gain that matters is missing
 * @param scatter whether a scatter of the rig is missing
 * @param words both in a sentence; empty where nothing is missing
 */
public record StillToSay(boolean gain, boolean scatter, String words) {
    /** {@return what is missing in a plan} */
    public static StillToSay of(Plan plan) {
        boolean nothing = PlanSizing.question(plan).isPresent();
        boolean gain = !nothing && plan.question().worthwhileGainSi().isEmpty();
        boolean scatter = !nothing && (plan.rig().pullScatter().isEmpty() || plan.rig().refitScatter().isEmpty());
        return new StillToSay(gain, scatter, gain || scatter ? OutlookWords.missing(plan) : "");
    }

    /** {@return whether nothing is missing} */
    public boolean isNothing() {
        return !gain && !scatter;
    }
}
