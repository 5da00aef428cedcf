package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.search.SearchQuestion;
import java.util.Optional;

/**
 * A day that a search may try.
 *
 * @param question of the search
 * @param order its installs
 * @param pulls counted pulls per install
 * @param warmUps warm-up pulls per install
 * @param minutes how long it takes
 * @param cost what it costs
 */
record SearchDay(SearchQuestion question, OrderShape order, int pulls, int warmUps, double minutes, double cost) {
    /** Lengths closer than this are the same, in minutes. */
    static final double SAME_MINUTES = 1e-6;
    private static final double SAME_COST = 1e-9;

    /** {@return whether hours and money suffice} */
    boolean isAffordable() {
        return minutes <= question.minutes() + SAME_MINUTES
                && cost <= question.money().orElse(Double.POSITIVE_INFINITY) * (1 + SAME_COST);
    }

    /** √((s_r² + s_p²/n)(1/k_A + 1/k_B)): that of the day without drift; a term more in the model never makes it smaller. */
    double standardErrorAtLeast() {
        double refit = question.asked().refitScatter();
        double pull = question.asked().pullScatter();
        return Math.sqrt((refit * refit + pull * pull / pulls) * (1.0 / order.countA() + 1.0 / order.countB()));
    }

    /** {@return how well it would tell the change; empty where it could not be judged} */
    Optional<Precision> precision() {
        SizeQuestion sizing = sizing();
        return Precision.of(SequenceDesign.of(sizing), sizing);
    }

    SizeQuestion sizing() {
        return question.sizing(order.letters(), pulls, warmUps);
    }
}
