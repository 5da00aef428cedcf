package fairpull.app.usecase.running;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Plan;
import fairpull.domain.running.GateNow;
import fairpull.domain.running.NextAction;
import fairpull.domain.unit.UnitSystem;
import fairpull.report.wording.PlanWords;
import fairpull.report.wording.RunWords;
import fairpull.report.wording.SafetyWords;
import java.time.OffsetDateTime;

/**
 * What the page of a day says of the next action at one moment.
 *
 * @param next the action
 * @param head it in a few words
 * @param beside what belongs to it; may be empty
 * @param counting what the count-down counts
 * @param clock the count-down; empty where nothing is due
 * @param sign wait, now or late; empty where nothing is due
 * @param window between which times it may start; may be empty
 */
public record RunFace(NextAction next, String head, String beside, String counting, String clock, String sign, String window) {

    /** {@return the face of a day by the clock of the computer; a blind one does not name parts} */
    public static RunFace of(RunDay day, OffsetDateTime computer, boolean blind) {
        OffsetDateTime now = day.onItsClock(computer);
        NextAction next = day.next(now);
        return new RunFace(next, RunWords.head(next), RunWords.beside(next, day.plan(), blind), RunWords.counting(next, now),
                RunWords.clock(next, now), RunWords.sign(next, now),
                RunWords.elsewhere(window(day, next, now), now, computer));
    }

    private static String window(RunDay day, NextAction next, OffsetDateTime now) {
        if (day.isAhead(now)) {
            return RunWords.clockSetBack();
        }
        return day.leftAt(now).filter(left -> next.pull().isPresent()).map(left -> left.withOffsetSameInstant(now.getOffset()))
                .map(RunWords::left).orElseGet(() -> RunWords.window(next));
    }

    /** {@return a reading as typed, in the unit that its band is shown in where it names none} */
    public static String withUnit(Condition condition, String typed, UnitSystem system) {
        return typed.matches("[-+−]?[0-9.,]+") ? typed + " " + PlanWords.unitOf(condition, system).symbol() : typed;
    }

    /** {@return the cautions that stay in view while a plan is run} */
    public static String cautions(Plan plan) {
        return SafetyWords.onTheDay(plan.rig().kind());
    }

    /**
     * A gate in words.
     *
     * @param band between what it holds
     * @param typed what was read, as it stands in its field
     * @param standing whether it holds, or what is off
     */
    public record GateFace(String band, String typed, String standing) {
        /** {@return the words of a gate} */
        public static GateFace of(GateNow gate, UnitSystem system) {
            return new GateFace(RunWords.band(gate, system), RunWords.typed(gate, system), RunWords.standing(gate, system));
        }
    }
}
