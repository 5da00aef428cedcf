package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
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
    abstract Optional<Reading> read(Traced pull);

    /** {@return whether a pull is one that the check is about: one whose value counts} */
    boolean looksAt(Traced pull) {
        return pull.pull().used();
    }

    /** {@return what a pull shows if the check is about it} */
    final Optional<Reading> readUsed(Traced pull) {
        return looksAt(pull) ? read(pull) : Optional.empty();
    }

    @Override
    public final CheckOutcome of(List<Traced> pulls) {
        return of(pulls, pulls.stream().map(this::readUsed).toList());
    }

    /** {@return what came of the check for some pulls, each of which was read} */
    final CheckOutcome of(List<Traced> pulls, List<Optional<Reading>> readings) {
        List<String> names = new ArrayList<>();
        Reading worst = null;
        for (int place = 0; place < pulls.size(); place++) {
            Optional<Reading> seen = readings.get(place);
            if (seen.isPresent()) {
                Reading reading = seen.get();
                worst = worst == null || isWorse(reading, worst) ? reading : worst;
                if (reading.raised()) {
                    names.add(pulls.get(place).pull().pull() + (reading.detail().isEmpty() ? "" : " (" + reading.detail() + ")"));
                }
            }
        }
        return worst == null ? CheckOutcome.notApplicable(code) : CheckOutcome.naming(code, worst.figures(), names);
    }

    private static boolean isWorse(Reading reading, Reading other) {
        return reading.raised() == other.raised() ? reading.weight() > other.weight() : reading.raised();
    }
}
