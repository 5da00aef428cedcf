package fairpull.engine.air;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.engine.stats.Normal;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * What errors of thermometer, barometer and humidity sensor do to a factor, relative to the factor.
 *
 * <p>First order, u² = Σ sᵢ²·uᵢ² with sᵢ = ∂ln f/∂xᵢ. For the ratio of two factors whose sensors err alike with correlation ρ:
 * u² = Σ (sᵢ² + s'ᵢ² − 2·ρ·sᵢ·s'ᵢ)·uᵢ², which is (s − s')²·u² where errors are all offset (ρ = 1) and the sum of both where the
 * sensors were set up afresh (ρ = 0). Two humidities read with different instruments, a dew point and a relative humidity say, have ρ = 0.
 *
 * @see "JCGM 100:2008 (GUM), equations 10 and 16; JCGM 101:2008 for the propagation by Monte Carlo"
 */
public final class FactorError {
    private static final double[] STEPS = {0.01, 1, 1e-4};
    private static final int INPUTS = 3;
    private static final int HUMIDITY = 2;

    private final Standard standard;
    private final AirReading reading;
    private final double[] uncertainties;
    private final double[] sensitivities;

    private FactorError(Standard standard, AirReading reading, AirSensors sensors) {
        this.standard = standard;
        this.reading = reading;
        this.uncertainties = new double[] {sensors.temperatureK(), sensors.pressurePa(), humidity(reading.humidity(), sensors)};
        this.sensitivities = sensitivities();
    }

    /**
     * Prepares the errors of one factor.
     *
     * @param standard the correction
     * @param reading what was read, not at the very end of what is possible
     * @param sensors standard uncertainties
     */
    public static FactorError of(Standard standard, AirReading reading, AirSensors sensors) {
        return new FactorError(standard, reading, sensors);
    }

    private static double humidity(Humidity humidity, AirSensors sensors) {
        return humidity.match(new Humidity.Cases<Double>() {
            @Override
            public Double relative(Humidity.Relative reading) {
                return sensors.relativeHumidity();
            }

            @Override
            public Double dewPoint(Humidity.DewPoint reading) {
                return sensors.dewPointK();
            }

            @Override
            public Double wetBulb(Humidity.WetBulb reading) {
                return sensors.dewPointK();
            }

            @Override
            public Double notRead() {
                return 0.0;
            }
        });
    }

    private double[] sensitivities() {
        double[] slopes = new double[INPUTS];
        for (int input = 0; input < INPUTS; input++) {
            double[] error = new double[INPUTS];
            error[input] = STEPS[input];
            double above = logFactor(error);
            error[input] = -STEPS[input];
            slopes[input] = (above - logFactor(error)) / (2 * STEPS[input]);
        }
        return slopes;
    }

    private double logFactor(double[] error) {
        double temperature = reading.temperatureK() + error[0];
        double pressure = Air.stationPressure(reading.barometer(), error[1]);
        double vapour = Air.vapourPressure(reading.humidity(), temperature, pressure, error[2]);
        return Math.log(Factor.of(standard, temperature, pressure, vapour));
    }

    /** {@return relative uncertainty from the thermometer alone} */
    public double temperature() {
        return Math.abs(sensitivities[0]) * uncertainties[0];
    }

    /** {@return relative uncertainty from the barometer alone} */
    public double pressure() {
        return Math.abs(sensitivities[1]) * uncertainties[1];
    }

    /** {@return relative uncertainty from the humidity sensor alone} */
    public double humidity() {
        return Math.abs(sensitivities[2]) * uncertainties[2];
    }

    /** {@return relative standard uncertainty of the factor} */
    public double single() {
        return Math.sqrt(temperature() * temperature() + pressure() * pressure() + humidity() * humidity());
    }

    /**
     * The ratio of this factor to another one.
     *
     * @param other the factor of the other pull, with the same sensors
     * @param correlation of one sensor's errors between the two pulls
     * @return relative standard uncertainty of the ratio
     */
    public double ratioTo(FactorError other, double correlation) {
        double variance = 0;
        for (int input = 0; input < INPUTS; input++) {
            double mine = sensitivities[input] * uncertainties[input];
            double theirs = other.sensitivities[input] * other.uncertainties[input];
            variance += mine * mine + theirs * theirs - 2 * shared(input, other, correlation) * mine * theirs;
        }
        return Math.sqrt(Math.max(0, variance));
    }

    private double shared(int input, FactorError other, double correlation) {
        boolean sameSensor = input != HUMIDITY || reading.humidity().getClass() == other.reading.humidity().getClass();
        return sameSensor ? correlation : 0;
    }

    /** {@return {@link #single} by simulation with normal errors: standard deviation of ln f} */
    public double simulatedSingle(int draws, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] values = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            values[draw] = logFactor(errors(random, new double[INPUTS], this, 0));
        }
        return standardDeviation(values);
    }

    /** {@return {@link #ratioTo} by simulation with normal errors, part of each shared by both pulls} */
    public double simulatedRatioTo(FactorError other, double correlation, int draws, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] values = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            double[] shared = {normal(random), normal(random), normal(random)};
            values[draw] = logFactor(errors(random, shared, other, correlation))
                    - other.logFactor(other.errors(random, shared, this, correlation));
        }
        return standardDeviation(values);
    }

    private double[] errors(SplittableRandom random, double[] shared, FactorError other, double correlation) {
        double[] errors = new double[INPUTS];
        for (int input = 0; input < INPUTS; input++) {
            double alike = shared(input, other, correlation);
            errors[input] = uncertainties[input] * (Math.sqrt(alike) * shared[input] + Math.sqrt(1 - alike) * normal(random));
        }
        return errors;
    }

    private static double normal(SplittableRandom random) {
        return Normal.upperQuantile(random.nextDouble(Double.MIN_NORMAL, 1));
    }

    private static double standardDeviation(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1));
    }
}
