package fairpull.engine.running;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.Cut;
import fairpull.engine.planning.PlanSizing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Which pulls to drop where the day no longer fits its hours: those whose loss raises the detectable gain least.
 *
 * <p>Tried are all ways of taking 0, 1, 2 … counted pulls from the ends of the installs still to be run, down to one each, and of leaving
 * out the last installs altogether where the day then still ends on A as planned. Above {@value #MOST_TRIED} ways the pulls are taken one
 * at a time, each time the cheapest.
 */
public final class CutSearch {
    private static final int MOST_TRIED = 3000;
    private static final double SAME = 1e-9;

    private final Plan plan;
    private final DayStanding day;
    private final OffsetDateTime now;
    private Optional<Candidate> best = Optional.empty();

    private record Candidate(Set<PullId> dropped, double cost, int spread) {
        boolean isBetterThan(Candidate other) {
            double margin = SAME * Math.max(1, Math.abs(other.cost));
            if (Math.abs(cost - other.cost) > margin) {
                return cost < other.cost;
            }
            return spread != other.spread ? spread < other.spread : dropped.size() < other.dropped.size();
        }
    }

    private CutSearch(Plan plan, DayStanding day, OffsetDateTime now) {
        this.plan = plan;
        this.day = day;
        this.now = now;
    }

    /**
     * The best cut of a day.
     *
     * @param plan the plan in force
     * @param log of the test
     * @param now the time
     * @return empty where the day fits its hours or has no end
     */
    public static Optional<Cut> of(Plan plan, DayLog log, OffsetDateTime now) {
        DayStanding day = new DayStanding(plan, log);
        List<DayClock> days = Retiming.of(day, now, Set.of());
        double late = days.stream().mapToDouble(DayClock::lateS).max().orElse(0);
        return late == 0 ? Optional.empty() : Optional.of(new CutSearch(plan, day, now).search(late, days));
    }

    private Cut search(double late, List<DayClock> days) {
        List<Install> ahead = day.installs().subList(day.reached(), day.installs().size());
        for (int kept = ahead.size(); kept >= 1; kept--) {
            if (kept == ahead.size() || endsAsPlanned(day.reached() + kept)) {
                Set<PullId> gone = new HashSet<>();
                ahead.subList(kept, ahead.size()).forEach(install -> gone.addAll(open(install)));
                thin(ahead.subList(0, kept), gone);
            }
        }
        OptionalDouble before = PlanSizing.detectableGainOn(plan, days);
        List<PullId> dropped = best.map(found -> PlannedClock.of(plan.sequence()).minutes().keySet().stream()
                .filter(found.dropped()::contains).toList()).orElse(List.of());
        OptionalDouble after = dropped.isEmpty() ? OptionalDouble.empty()
                : PlanSizing.detectableGainOn(plan, Retiming.of(day, now, Set.copyOf(dropped)));
        return new Cut(late, dropped, before, after);
    }

    /** A day that was to come back to A still has to. */
    private boolean endsAsPlanned(int installs) {
        List<Install> kept = day.installs().subList(0, installs);
        boolean both = kept.stream().map(Install::part).distinct().count() == Part.values().length;
        boolean toA = day.installs().get(day.installs().size() - 1).part() == Part.A;
        return both && (!toA || kept.get(installs - 1).part() == Part.A);
    }

    private List<PullId> open(Install install) {
        return PlannedClock.pullsOf(install).stream().filter(pull -> !pull.warmUp() && !day.driven().containsKey(pull)).toList();
    }

    /** Takes pulls from the ends of some installs, always leaving one that counts. */
    private void thin(List<Install> installs, Set<PullId> gone) {
        List<List<PullId>> spare = new ArrayList<>();
        double ways = 1;
        for (Install install : installs) {
            List<PullId> open = open(install);
            int least = open.size() == install.countedPulls() ? 1 : 0;
            spare.add(open.subList(Math.min(least, open.size()), open.size()));
            ways *= 1 + spare.get(spare.size() - 1).size();
        }
        if (ways <= MOST_TRIED) {
            all(spare, 0, gone);
        } else {
            greedy(spare, gone);
        }
    }

    private void all(List<List<PullId>> spare, int place, Set<PullId> gone) {
        if (place == spare.size()) {
            consider(gone);
            return;
        }
        List<PullId> own = spare.get(place);
        for (int taken = 0; taken <= own.size(); taken++) {
            Set<PullId> more = new HashSet<>(gone);
            more.addAll(own.subList(own.size() - taken, own.size()));
            all(spare, place + 1, more);
        }
    }

    private void greedy(List<List<PullId>> spare, Set<PullId> gone) {
        Set<PullId> taken = new HashSet<>(gone);
        while (!consider(taken)) {
            Optional<Candidate> cheapest = Optional.empty();
            for (List<PullId> own : spare) {
                Set<PullId> one = new HashSet<>(taken);
                own.stream().filter(pull -> !taken.contains(pull)).reduce((first, last) -> last).ifPresent(one::add);
                Candidate candidate = candidate(one);
                if (one.size() > taken.size() && (cheapest.isEmpty() || candidate.isBetterThan(cheapest.get()))) {
                    cheapest = Optional.of(candidate);
                }
            }
            if (cheapest.isEmpty()) {
                return;
            }
            taken.addAll(cheapest.get().dropped());
        }
    }

    private boolean consider(Set<PullId> gone) {
        boolean fits = Retiming.of(day, now, gone).stream().allMatch(clock -> clock.lateS() == 0);
        if (fits && !gone.isEmpty()) {
            Candidate candidate = candidate(gone);
            if (best.isEmpty() || candidate.isBetterThan(best.get())) {
                best = Optional.of(candidate);
            }
        }
        return fits;
    }

    private Candidate candidate(Set<PullId> gone) {
        List<DayClock> days = Retiming.of(day, now, gone);
        List<Integer> counts = days.stream().flatMap(clock -> clock.installs().stream().map(span -> (int) clock.events().stream()
                .filter(event -> event.kind() == DayEvent.Kind.PULL && event.install().equals(span.install())).count())).toList();
        int most = counts.stream().mapToInt(count -> count).max().orElse(0);
        int fewest = counts.stream().mapToInt(count -> count).min().orElse(0);
        return new Candidate(gone, PlanSizing.detectableGainOn(judged(), days).orElse(Double.MAX_VALUE), most - fewest);
    }

    /** Where scatter is not known, refitting is taken to scatter as much as pulls do: only which cut is cheapest follows from it. */
    private Plan judged() {
        Scatter one = new Scatter(1, 0, Scatter.Origin.STARTING_GUESS);
        boolean known = plan.rig().pullScatter().isPresent() && plan.rig().refitScatter().isPresent();
        return known ? plan : plan.with(plan.rig().scattering(Optional.of(one), Optional.of(one)));
    }
}
