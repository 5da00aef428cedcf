package fairpull.engine.planning;

import fairpull.domain.finding.Improvement;
import fairpull.domain.finding.Improvement.Kind;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What would improve a plan most: a few changes that are always open, each sized as the plan itself is. */
public final class Improvements {
    private static final double REFITS = 6;
    private static final int LONGEST_ORDER = 60;
    /** A change that brings less is not worth a sentence. */
    private static final double LEAST_SHARE = 0.02;

    private Improvements() {
    }

    /**
     * The changes that lower the detectable gain, the one that lowers it most first.
     *
     * @param question the plan as it is sized; planned looks are left out of the comparison, on both sides of it
     * @return the changes; none where nothing open to them helps by at least 2 %
     */
    public static List<Improvement> of(SizeQuestion question) {
        SizeQuestion plain = question.withLooks(Optional.empty());
        SizeAnswer now = Sizing.figures(plain);
        List<Improvement> found = new ArrayList<>();
        String longer = longer(plain.sequence());
        if (longer.length() <= LONGEST_ORDER) {
            offer(found, Kind.TWO_INSTALLS, now, plain.withSequence(longer));
        }
        offer(found, Kind.TWO_PULLS, now, plain.withPulls(plain.pulls() + 2));
        if (Double.isFinite(plain.refitDegreesOfFreedom())) {
            offer(found, Kind.SIX_REFITS_ON_RECORD, now, plain.withRefitDegreesOfFreedom(plain.refitDegreesOfFreedom() + REFITS - 1));
        }
        found.sort(Comparator.comparingDouble(Improvement::detectableGain));
        return found;
    }

    private static void offer(List<Improvement> found, Kind kind, SizeAnswer now, SizeQuestion changed) {
        SizeAnswer then = Sizing.figures(changed);
        if (then.detectableGain().isPresent()) {
            Improvement improvement = new Improvement(kind, then.detectableGain().getAsDouble(),
                    now.detectableGain().orElse(Double.POSITIVE_INFINITY), then.minutes() - now.minutes());
            if (improvement.share() >= LEAST_SHARE) {
                found.add(improvement);
            }
        }
    }

    /** The order with two installs more, the other part first. */
    private static String longer(String order) {
        char last = order.charAt(order.length() - 1);
        return order + (last == 'A' ? "BA" : "AB");
    }
}
