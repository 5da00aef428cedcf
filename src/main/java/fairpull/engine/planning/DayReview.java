package fairpull.engine.planning;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayFit;
import fairpull.domain.day.Pace;
import fairpull.domain.day.Remedy;
import fairpull.domain.day.Remedy.Kind;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Holds a plan against its working hours; where it does not fit, finds the smallest change of each kind that makes it fit. */
public final class DayReview {
    /** Starts and ends of day are offered in steps of this, in minutes. */
    private static final int STEP_MINUTES = 5;
    private static final int MINUTES_A_DAY = 24 * 60;
    /** Beyond so many installs only the last ones are tried for leaving out. */
    private static final int INSTALLS_TRIED = 20;

    private final Plan plan;
    private final Sequence planned;
    private final Pace pace;
    private final OptionalDouble detectableGain;

    private DayReview(Plan plan) {
        this.plan = plan;
        planned = plan.sequence();
        pace = Pace.of(planned);
        detectableGain = PlanSizing.detectableGain(plan, planned);
    }

    /**
     * Whether a plan fits its days.
     *
     * @param plan the plan; sessions without an end of day always fit
     * @return its clock, and for a plan that does not fit: one warm-up or pull or install less and so on until it does, an earlier start,
     *     a later end (both in steps of 5 min), or a late session split in two, each with the gain that could then be found. A change
     *     after which the plan could not be judged is left out where it could be before, and so is one that loses the return to A or
     *     the place of a planned look.
     */
    public static DayFit of(Plan plan) {
        DayReview review = new DayReview(plan);
        List<DayClock> days = DayClock.of(plan.sequence());
        DayFit fit = new DayFit(days, review.detectableGain, List.of());
        return fit.fits() ? fit : new DayFit(days, review.detectableGain, review.remedies());
    }

    private List<Remedy> remedies() {
        List<Remedy> remedies = new ArrayList<>();
        offer(remedies, Kind.FEWER_WARM_UPS, fewerOf(install -> install.warmUpPulls() > 1
                ? Optional.of(filled(install, install.countedPulls(), install.warmUpPulls() - 1)) : Optional.empty()));
        offer(remedies, Kind.FEWER_PULLS, fewerOf(install -> install.countedPulls() > 1
                ? Optional.of(filled(install, install.countedPulls() - 1, install.warmUpPulls())) : Optional.empty()));
        offer(remedies, Kind.FEWER_INSTALLS, fewerInstalls());
        offer(remedies, Kind.START_EARLIER, withHours(this::startingEarlier));
        offer(remedies, Kind.END_LATER, withHours(this::endingLater));
        offer(remedies, Kind.SECOND_DAY, inTwo());
        return remedies;
    }

    private void offer(List<Remedy> remedies, Kind kind, Optional<Sequence> changed) {
        changed.ifPresent(sequence -> {
            OptionalDouble gain = PlanSizing.detectableGain(plan, sequence);
            if ((gain.isPresent() || detectableGain.isEmpty()) && keepsReturnAndLooks(sequence)) {
                remedies.add(new Remedy(kind, sequence, gain));
            }
        });
    }

    /** A day that never comes back to A, or has no place for the planned looks, is another test and no remedy. */
    private boolean keepsReturnAndLooks(Sequence sequence) {
        boolean losesReturn = PlanReview.returnsToA(planned) && !PlanReview.returnsToA(sequence);
        return !losesReturn && plan.looks().map(looks -> looks.fits(sequence.letters())).orElse(true);
    }

    private boolean fits(Session session) {
        return DayClock.of(session, pace).lateS() == 0;
    }

    private boolean fits(Sequence sequence) {
        return sequence.sessions().stream().allMatch(this::fits);
    }

    private static Install filled(Install install, int pulls, int warmUps) {
        return new Install(install.label(), install.part(), pulls, warmUps, install.unstrapped());
    }

    private interface Lessening {
        Optional<Install> of(Install install);
    }

    /** All installs give one up, again and again, until every day fits; empty where one has none left to give. */
    private Optional<Sequence> fewerOf(Lessening lessening) {
        Sequence sequence = planned;
        while (!fits(sequence)) {
            List<Session> sessions = new ArrayList<>();
            for (Session session : sequence.sessions()) {
                List<Install> less = session.installs().stream().map(lessening::of).flatMap(Optional::stream).toList();
                if (less.size() < session.installs().size()) {
                    return Optional.empty();
                }
                sessions.add(session.with(less));
            }
            sequence = planned.withSessions(sessions);
        }
        return Optional.of(sequence);
    }

    /** Late sessions give up one install at a time: the one whose loss costs least. */
    private Optional<Sequence> fewerInstalls() {
        Sequence sequence = planned;
        for (int place = 0; place < planned.sessions().size(); place++) {
            while (!fits(sequence.sessions().get(place))) {
                Optional<Sequence> fewer = withoutOne(sequence, place);
                if (fewer.isEmpty()) {
                    return Optional.empty();
                }
                sequence = fewer.get();
            }
        }
        return Optional.of(sequence);
    }

    private Optional<Sequence> withoutOne(Sequence sequence, int place) {
        List<Install> installs = sequence.sessions().get(place).installs();
        int first = installs.size() > INSTALLS_TRIED ? installs.size() - 1 : 0;
        Optional<Sequence> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int out = installs.size() - 1; out >= first; out--) {
            List<Install> rest = new ArrayList<>(installs);
            rest.remove(out);
            if (rest.stream().map(Install::part).distinct().count() < Part.values().length) {
                continue;
            }
            Sequence fewer = replaced(sequence, place, List.of(sequence.sessions().get(place).with(rest)));
            double cost = cost(fewer, rest);
            if (best.isEmpty() || cost < least) {
                best = Optional.of(fewer);
                least = cost;
            }
        }
        return best;
    }

    /** Above all the gain that can be found; where that is equal, a balanced order, and A at both ends. */
    private double cost(Sequence sequence, List<Install> session) {
        String letters = String.join("", session.stream().map(install -> install.part().name()).toList());
        OrderShape shape = OrderShape.of(letters);
        double gain = PlanSizing.detectableGain(plan, sequence).orElse(detectableGain.isPresent() ? Double.MAX_VALUE / 4 : 1);
        return gain * (1 + 1e-6 * Math.abs(shape.meanLean()) + (shape.startsAndEndsWithA() ? 0 : 1e-7));
    }

    private static Sequence replaced(Sequence sequence, int place, List<Session> by) {
        List<Session> sessions = new ArrayList<>(sequence.sessions());
        sessions.remove(place);
        sessions.addAll(place, by);
        return sequence.withSessions(sessions);
    }

    private interface Rehoured {
        Optional<Session> of(Session session);
    }

    private Optional<Sequence> withHours(Rehoured rehoured) {
        List<Session> sessions = new ArrayList<>();
        for (Session session : planned.sessions()) {
            Optional<Session> other = fits(session) ? Optional.of(session) : rehoured.of(session);
            if (other.isEmpty()) {
                return Optional.empty();
            }
            sessions.add(other.get());
        }
        return Optional.of(planned.withSessions(sessions));
    }

    private Optional<Session> startingEarlier(Session session) {
        Hours hours = session.hours().orElseThrow();
        int minute = (hours.start().toSecondOfDay() / 60 - 1) / STEP_MINUTES * STEP_MINUTES;
        return firstFitting(session, minute, -STEP_MINUTES, start -> hours.startingAt(start));
    }

    private Optional<Session> endingLater(Session session) {
        int finish = (int) Math.ceil(DayClock.of(session, pace).finishS() / 60 / STEP_MINUTES) * STEP_MINUTES;
        Hours hours = session.hours().orElseThrow();
        return firstFitting(session, finish, STEP_MINUTES, end -> hours.endingAt(end));
    }

    private Optional<Session> firstFitting(Session session, int fromMinute, int step, HoursAt hours) {
        for (int minute = fromMinute; minute >= 0 && minute < MINUTES_A_DAY; minute += step) {
            Session other = session.with(hours.at(LocalTime.ofSecondOfDay(minute * 60L)));
            if (fits(other)) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    private interface HoursAt {
        Hours at(LocalTime time);
    }

    /** Each late session on two days of the same hours, parted where most can still be found. */
    private Optional<Sequence> inTwo() {
        Sequence sequence = planned;
        for (int place = planned.sessions().size() - 1; place >= 0; place--) {
            Session session = planned.sessions().get(place);
            if (!fits(session)) {
                Optional<Sequence> parted = bestParting(sequence, place);
                if (parted.isEmpty()) {
                    return Optional.empty();
                }
                sequence = parted.get();
            }
        }
        return Optional.of(sequence);
    }

    private Optional<Sequence> bestParting(Sequence sequence, int place) {
        Session session = sequence.sessions().get(place);
        Optional<Sequence> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int at = 2; at <= session.installs().size() - 2; at++) {
            Session first = session.with(session.installs().subList(0, at));
            Session second = session.with(session.installs().subList(at, session.installs().size())).named(session.name() + ", continued");
            if (!(hasBoth(first) && hasBoth(second) && fits(first) && fits(second))) {
                continue;
            }
            Sequence parted = replaced(sequence, place, List.of(first, second));
            double gain = PlanSizing.detectableGain(plan, parted).orElse(Double.MAX_VALUE);
            if (best.isEmpty() || gain < least) {
                best = Optional.of(parted);
                least = gain;
            }
        }
        return best;
    }

    private static boolean hasBoth(Session session) {
        return session.installs().stream().map(Install::part).distinct().count() == Part.values().length;
    }
}
