package fairpull.domain.finding;

import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Sides;
import java.util.List;
import java.util.Optional;

/**
 * What `size` is asked.
 *
 * @param sequence the order in letters, sessions parted by a bar: {@code ABABA} or {@code ABA|BAB}
 * @param pulls counted pulls per install
 * @param warmUps warm-up pulls per install
 * @param pullScatter standard deviation of pulls, in the unit of the gain
 * @param pullDegreesOfFreedom of the record behind it; 0 where it is a planning value
 * @param refitScatter standard deviation that refitting adds, in the unit of the gain
 * @param refitDegreesOfFreedom of the record behind it; 0 where it is a planning value
 * @param gain the gain to be found
 * @param powerWanted the chance wanted of finding it
 * @param errorRate how often a change may be announced where there is none
 * @param sides either way, or only for a gain
 * @param drift the drift that will be modelled
 * @param clock the times between pulls
 * @param looks when the data are looked at; empty where only at the end
 */
public record SizeQuestion(String sequence, int pulls, int warmUps, double pullScatter, double pullDegreesOfFreedom,
        double refitScatter, double refitDegreesOfFreedom, double gain, double powerWanted, double errorRate, Sides sides, Drift drift,
        Clock clock, Optional<Looks> looks) {
    /** A sequence that is looked at once, at the end. */
    public SizeQuestion(String sequence, int pulls, int warmUps, double pullScatter, double pullDegreesOfFreedom, double refitScatter,
            double refitDegreesOfFreedom, double gain, double powerWanted, double errorRate, Sides sides, Drift drift, Clock clock) {
        this(sequence, pulls, warmUps, pullScatter, pullDegreesOfFreedom, refitScatter, refitDegreesOfFreedom, gain, powerWanted,
                errorRate, sides, drift, clock, Optional.empty());
    }

    /**
     * The times of a day, in minutes.
     *
     * @param intervalMinutes from pull to pull
     * @param swapMinutes what a swap adds
     * @param setUpMinutes before the first pull of a session
     * @param hours working hours of each session, for its breaks; sessions beyond the list have none
     */
    public record Clock(double intervalMinutes, double swapMinutes, double setUpMinutes, List<Optional<Hours>> hours) {
        public Clock {
            hours = List.copyOf(hours);
        }

        /** Times of a day without breaks. */
        public Clock(double intervalMinutes, double swapMinutes, double setUpMinutes) {
            this(intervalMinutes, swapMinutes, setUpMinutes, List.of());
        }

        /** {@return the hours of a session} */
        public Optional<Hours> hoursOf(int session) {
            return session < hours.size() ? hours.get(session) : Optional.empty();
        }
    }

    /** {@return the same question with another order} */
    public SizeQuestion withSequence(String other) {
        return new SizeQuestion(other, pulls, warmUps, pullScatter, pullDegreesOfFreedom, refitScatter, refitDegreesOfFreedom, gain,
                powerWanted, errorRate, sides, drift, clock, looks);
    }

    /** {@return the same question with another number of warm-up pulls} */
    public SizeQuestion withWarmUps(int other) {
        return new SizeQuestion(sequence, pulls, other, pullScatter, pullDegreesOfFreedom, refitScatter, refitDegreesOfFreedom, gain,
                powerWanted, errorRate, sides, drift, clock, looks);
    }

    /** {@return the same question with another number of counted pulls} */
    public SizeQuestion withPulls(int other) {
        return new SizeQuestion(sequence, other, warmUps, pullScatter, pullDegreesOfFreedom, refitScatter, refitDegreesOfFreedom, gain,
                powerWanted, errorRate, sides, drift, clock, looks);
    }

    /** {@return the same question about another gain} */
    public SizeQuestion withGain(double other) {
        return new SizeQuestion(sequence, pulls, warmUps, pullScatter, pullDegreesOfFreedom, refitScatter, refitDegreesOfFreedom, other,
                powerWanted, errorRate, sides, drift, clock, looks);
    }

    /** {@return the same question with other looks} */
    public SizeQuestion withLooks(Optional<Looks> planned) {
        return new SizeQuestion(sequence, pulls, warmUps, pullScatter, pullDegreesOfFreedom, refitScatter, refitDegreesOfFreedom, gain,
                powerWanted, errorRate, sides, drift, clock, planned);
    }

    /** {@return the same question with another record of refit scatter behind the same figure} */
    public SizeQuestion withRefitDegreesOfFreedom(double other) {
        return new SizeQuestion(sequence, pulls, warmUps, pullScatter, pullDegreesOfFreedom, refitScatter, other, gain, powerWanted,
                errorRate, sides, drift, clock, looks);
    }
}
