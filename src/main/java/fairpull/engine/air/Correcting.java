package fairpull.engine.air;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.AirState;
import fairpull.domain.air.Corrected;
import fairpull.domain.air.FactorUncertainty;
import fairpull.domain.air.Induction;
import fairpull.domain.air.Simulation;
import fairpull.domain.air.Standard;
import java.util.Optional;
import java.util.OptionalDouble;

/** Answers a correction whole: factor, air, uncertainty, notices. */
public final class Correcting {
    private Correcting() {
    }

    /**
     * What is to be corrected.
     *
     * @param standard to which standard
     * @param from what the values are already corrected to; empty: as measured
     * @param reading the air at the pull
     * @param first the air at the pull it is compared with; the same air where none is given
     * @param sensors standard uncertainties of the readings
     * @param induction how the engine gets its air, where that is known
     * @param simulation draws and seed of a Monte Carlo check, where it is wanted
     */
    public record Question(Standard standard, Optional<Standard> from, AirReading reading, Optional<AirReading> first, AirSensors sensors,
            Optional<Induction> induction, Optional<Simulation> simulation) {
    }

    /**
     * The answer.
     *
     * @throws IllegalArgumentException where no air could read so
     */
    public static Corrected answer(Question question) {
        AirState air = Air.at(question.reading());
        return new Corrected(question.standard(), Factor.of(question.standard(), air),
                question.from().map(standard -> new Corrected.Undone(standard, Factor.of(standard, air))), Air.figures(air),
                uncertainty(question), AirReview.notices(question.standard(), question.reading(), question.first(),
                question.induction()));
    }

    private static FactorUncertainty uncertainty(Question question) {
        FactorError now = FactorError.of(question.standard(), question.reading(), question.sensors());
        FactorError first = FactorError.of(question.standard(), question.first().orElse(question.reading()), question.sensors());
        double correlation = question.sensors().correlation();
        OptionalDouble simulatedSingle = OptionalDouble.empty();
        OptionalDouble simulatedRatio = OptionalDouble.empty();
        if (question.simulation().isPresent()) {
            Simulation run = question.simulation().get();
            simulatedSingle = OptionalDouble.of(now.simulatedSingle(run.draws(), run.seed()));
            simulatedRatio = OptionalDouble.of(now.simulatedRatioTo(first, correlation, run.draws(), run.seed()));
        }
        return new FactorUncertainty(now.temperature(), now.pressure(), now.humidity(), now.single(), now.ratioTo(first, correlation),
                now.ratioTo(first, 0), simulatedSingle, simulatedRatio);
    }
}
