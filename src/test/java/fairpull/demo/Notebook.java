package fairpull.demo;

import java.time.format.DateTimeFormatter;
import java.util.SplittableRandom;

/** What was written down by hand beside each pull, with the gaps that hands leave. */
final class Notebook {
    private static final double INTAKE_AIR_RISE_K = 1.3;
    private static final double INTAKE_AIR_RISE_MINUTES = 140;
    private static final double FORGOTTEN = 0.06;

    private final Scenario scenario;
    private final SplittableRandom noise;
    private final StringBuilder text = new StringBuilder("pull,time,intake-air (°C),coolant (°C),barometer (hPa),humidity (%)\n");

    Notebook(Scenario scenario, SplittableRandom noise) {
        this.scenario = scenario;
        this.noise = noise;
    }

    /** {@return the intake air at a pull's start: the room warms up over the day} */
    double intakeAirC(int minute) {
        return scenario.weather().intakeAirC() + INTAKE_AIR_RISE_K * (1 - Math.exp(-minute / INTAKE_AIR_RISE_MINUTES));
    }

    /** Writes down one pull; barometer and humidity are read at the first counted pull of an install only. */
    void enter(Day.Run run) {
        boolean first = run.id().number() == 1 && !run.id().warmUp();
        double hours = run.minute() / 60.0;
        text.append(run.id()).append(',')
                .append(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(scenario.clock().start().plusMinutes(run.minute()))).append(',')
                .append(reading(intakeAirC(run.minute()) + 0.15 * noise.nextGaussian(), 1, noise.nextDouble() > FORGOTTEN)).append(',')
                .append(reading(90 + 0.8 * noise.nextGaussian(), 0, noise.nextDouble() > FORGOTTEN)).append(',')
                .append(reading(scenario.weather().barometerHPa() - 0.35 * hours, 1, first)).append(',')
                .append(reading(scenario.weather().humidityPercent() - 1.4 * hours, 0, first)).append('\n');
    }

    /** {@return the table} */
    String table() {
        return text.toString();
    }

    private static String reading(double value, int places, boolean written) {
        return written ? Decimals.fixed(value, places) : "";
    }
}
