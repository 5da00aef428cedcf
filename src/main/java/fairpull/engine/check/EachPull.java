package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A check that looks at one used pull at a time: names those for which it is raised, with the figures of the worst. */
abstract class EachPull implements PullCheck {
    private final Code code;

    EachPull(Code code) {
        this.code = code;
    }

    /**
     * What one pull shows.
     *
     * @param raised whether the check fails
     * @param weight how bad it is, larger being worse
     * @param figures as the code documents them
     * @param detail stands in brackets behind the pull's name, symbols only; may be empty
     */
    record Reading(boolean raised, double weight, List<Double> figures, String detail) {
        static Reading of(boolean raised, double weight, Double... figures) {
            return new Reading(raised, weight, Arrays.asList(figures), "");
        }
    }

    /** {@return what a pull shows; empty where it does not hold enough for the check} */
    abstract Optional<Reading> read(PullTrace pull);

    @Override
    public final CheckOutcome check(List<PullTrace> pulls) {
        List<String> names = new ArrayList<>();
        Reading worst = null;
        for (PullTrace pull : pulls) {
            Optional<Reading> seen = pull.used() ? read(pull) : Optional.empty();
            if (seen.isPresent()) {
                Reading reading = seen.get();
                worst = worst == null || isWorse(reading, worst) ? reading : worst;
                if (reading.raised()) {
                    names.add(pull.pull() + (reading.detail().isEmpty() ? "" : " (" + reading.detail() + ")"));
                }
            }
        }
        return worst == null ? CheckOutcome.notApplicable(code) : CheckOutcome.naming(code, worst.figures(), names);
    }

    private static boolean isWorse(Reading reading, Reading other) {
        return reading.raised() == other.raised() ? reading.weight() > other.weight() : reading.raised();
    }
}
