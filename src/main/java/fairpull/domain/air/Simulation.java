package fairpull.domain.air;

/**
 * A Monte Carlo run.
 *
 * @param draws how many
 * @param seed of the random stream
 */
public record Simulation(int draws, long seed) {
    public Simulation {
        if (draws < 2 || draws > 10_000_000) {
            throw new IllegalArgumentException("draws must lie between 2 and 10 million, was " + draws);
        }
    }
}
