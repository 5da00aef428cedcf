package fairpull.engine.planning;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Looks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** What a sequence with planned looks can see: {@link Sizing} with every chance taken from {@link LookCampaigns}. */
final class LookSizing {
    private LookSizing() {
    }

    /** The figures of a question with looks, from those of a single look at the end. */
    static SizeAnswer figures(SizeQuestion question, SizeAnswer once) {
        LookBounds bounds = LookBounds.of(question, question.looks().orElseThrow());
        LookCampaigns campaigns = LookCampaigns.of(question, bounds);
        List<OptionalDouble> chances = new ArrayList<>();
        for (int k = 0; k < bounds.count(); k++) {
            chances.add(campaigns.chance(k, question.gain()));
        }
        boolean judged = once.power().isPresent();
        return new SizeAnswer(judged ? OptionalDouble.of(campaigns.power(question.gain())) : OptionalDouble.empty(),
                judged ? campaigns.detectableGain() : OptionalDouble.empty(), once.standardError(), once.degreesOfFreedom(), once.minutes(),
                once.limit().isPresent() ? LookCampaigns.withoutPullScatter(question, bounds).detectableGain() : OptionalDouble.empty(),
                once.leastRandomisationP(), once.pullsNeeded(), once.installsNeeded(),
                Optional.of(bounds.asPlanned(judged ? campaigns.inflation() : OptionalDouble.empty(), chances,
                        LookReview.of(question, chances))));
    }

    /** The fewest pulls that reach the power wanted; looks never need fewer than a single one at the end, and more pulls never hurt. */
    static OptionalInt pullsNeeded(SizeQuestion question, OptionalInt once, int most) {
        IntPredicate reaches = pulls -> reaches(question.withPulls(pulls));
        if (once.isEmpty() || !reaches.test(most)) {
            return OptionalInt.empty();
        }
        int low = once.getAsInt() - 1;
        int high = most;
        int step = 1;
        while (high - low > 1) {
            int middle = high == most ? Math.min(low + step, most - 1) : (low + high) / 2;
            step *= 2;
            if (reaches.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalInt.of(high);
    }

    /** The fewest installs A B A …, the looks before the end kept where the day is back at A, the last one moved to the new end. */
    static OptionalInt installsNeeded(SizeQuestion question, OptionalInt once, int most) {
        if (once.isEmpty() || !reaches(alternating(question, most))) {
            return OptionalInt.empty();
        }
        int installs = once.getAsInt();
        while (!reaches(alternating(question, installs))) {
            installs++;
        }
        return OptionalInt.of(installs);
    }

    private static SizeQuestion alternating(SizeQuestion question, int installs) {
        SizeQuestion longer = question.withSequence("AB".repeat(installs).substring(0, installs));
        Looks planned = question.looks().orElseThrow();
        List<Integer> kept = new ArrayList<>();
        for (int after : planned.afterInstalls().subList(0, planned.count() - 1)) {
            if (after < installs && after % 2 == 1 && isEstimable(longer.withSequence(Looks.first(longer.sequence(), after)))) {
                kept.add(after);
            }
        }
        kept.add(installs);
        return longer.withLooks(kept.size() > 1 ? Optional.of(new Looks(planned.spending(), kept)) : Optional.empty());
    }

    private static boolean isEstimable(SizeQuestion question) {
        SequenceDesign design = SequenceDesign.of(question);
        return design.designOfMeans().estimable(design.partColumn());
    }

    private static boolean reaches(SizeQuestion question) {
        if (question.looks().isEmpty()) {
            return Sizing.reaches(question);
        }
        LookBounds bounds = LookBounds.of(question, question.looks().get());
        return LookCampaigns.of(question, bounds).power(question.gain()) >= question.powerWanted();
    }
}
