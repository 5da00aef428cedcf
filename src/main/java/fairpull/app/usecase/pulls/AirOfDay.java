package fairpull.app.usecase.pulls;

import fairpull.domain.air.StandardLimits;
import fairpull.domain.finding.FactorSpread;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullCorrection;
import fairpull.domain.finding.PullCorrection.Carried;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.engine.air.Factor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** How the air went over the used pulls of a test, by the factor of the deciding measure's standard. */
final class AirOfDay {
    /** A larger step of the factor between neighbouring pulls is asked about; common practice, no source. */
    private static final double STEP = 0.005;
    /** A carried reading older than this is asked about; common practice, no source. */
    private static final double OLD_MINUTES = 60;

    private final Plan plan;
    private final List<PullSeen> used;
    private final List<PullSeen> brought;
    private final List<Notice> notices = new ArrayList<>();

    private AirOfDay(Plan plan, List<PullSeen> pulls) {
        this.plan = plan;
        this.used = pulls.stream().filter(pull -> pull.fate() == Fate.USED && pull.correction().isPresent()).toList();
        this.brought = used.stream().filter(pull -> of(pull).multiplier().isPresent()).toList();
    }

    /** {@return what a reader must know about the air of a test's pulls} */
    static List<Notice> notices(Plan plan, List<PullSeen> pulls) {
        AirOfDay day = new AirOfDay(plan, pulls);
        day.brought();
        day.carried();
        day.steps();
        day.range();
        FactorSpread.of(pulls).ifPresent(spread -> day.notices.add(Notice.of(Code.FACTOR_SPREAD, spread.leastA(), spread.largestA(),
                spread.leastB(), spread.largestB())));
        return List.copyOf(day.notices);
    }

    private void brought() {
        List<Double> multipliers = brought.stream().map(pull -> of(pull).multiplier().getAsDouble()).sorted().toList();
        if (!multipliers.isEmpty()) {
            notices.add(new Notice(Code.CORRECTED_HERE, List.of(multipliers.get(0), multipliers.get(multipliers.size() - 1)),
                    names(brought, pull -> true)));
        }
    }

    private void carried() {
        List<Carried> ages = brought.stream().flatMap(pull -> of(pull).carried().stream())
                .sorted(Comparator.comparingDouble(Carried::minutes)).toList();
        if (ages.isEmpty()) {
            return;
        }
        notices.add(Notice.of(Code.AIR_CARRIED, (double) ages.size(), ages.get(ages.size() - 1).minutes(),
                (double) ages.stream().filter(Carried::byPlannedClock).count()));
        List<String> old = names(brought, pull -> of(pull).carried().filter(age -> age.minutes() > OLD_MINUTES).isPresent());
        if (!old.isEmpty()) {
            notices.add(new Notice(Code.AIR_CARRIED_LONG, List.of(OLD_MINUTES), old));
        }
    }

    private void steps() {
        double largest = 0;
        List<String> steps = new ArrayList<>();
        for (Session session : plan.sequence().sessions()) {
            Set<String> installs = session.installs().stream().map(Install::label).collect(Collectors.toSet());
            List<PullSeen> ofDay = used.stream().filter(pull -> installs.contains(pull.pull().install())).toList();
            for (int i = 1; i < ofDay.size(); i++) {
                double step = Math.abs(of(ofDay.get(i)).factor() / of(ofDay.get(i - 1)).factor() - 1);
                if (step > STEP) {
                    steps.add(ofDay.get(i).pull().toString());
                    largest = Math.max(largest, step);
                }
            }
        }
        if (!steps.isEmpty()) {
            notices.add(new Notice(Code.FACTOR_STEP, List.of(largest), steps));
        }
    }

    private void range() {
        StandardLimits limits = Factor.limits(plan.question().deciding().correction());
        List<String> outside = names(used, pull -> !limits.holdsFactor(of(pull).factor()));
        if (!outside.isEmpty()) {
            notices.add(new Notice(Code.FACTOR_OUTSIDE, List.of(limits.lowFactor(), limits.highFactor()), outside));
        }
    }

    private static PullCorrection of(PullSeen pull) {
        return pull.correction().orElseThrow();
    }

    private static List<String> names(List<PullSeen> pulls, Predicate<PullSeen> wanted) {
        return pulls.stream().filter(wanted).map(pull -> pull.pull().toString()).toList();
    }
}
