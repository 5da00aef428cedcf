package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.conditions.CorrectAir;
import fairpull.app.usecase.conditions.CorrectTable;
import fairpull.app.usecase.typing.TypedAir;
import fairpull.app.usecase.typing.TypedSensors;
import fairpull.app.usecase.typing.TypedWindow;
import fairpull.domain.air.Simulation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code correct}: the factor to reference air, its uncertainty, and the air in which pulls may run. */
@Command(name = "correct",
        description = "Gives the factor that brings power or torque to reference air, with vapour pressure, density and density altitude, "
        + "what sensor errors do to it, and, with --window, the air in which pulls may start. Every reading carries its unit "
        + "(C, F, K; hPa, mbar, kPa, inHg, psi).",
        footer = {"  fairpull correct --standard sae-j1349 --temperature 12C --pressure 1003hPa --humidity 35%% --power 300hp",
            "  fairpull correct --standard sae-j1349 --temperature 24C --pressure 29.8inHg --sea-level --elevation 300m "
                + "--dew-point 9C --window --worthwhile 1.5%%"})
final class CorrectVerb extends Verb {
    private static final List<String> OF_ONE_READING = List.of("--temperature", "--pressure", "--humidity", "--dew-point", "--wet-bulb",
            "--power", "--window", "--worthwhile", "--share", "--model-error", "--factor-range", "--first", "--draws", "--seed",
            "--temperature-uncertainty", "--pressure-uncertainty", "--humidity-uncertainty", "--dew-point-uncertainty", "--correlation");

    @Mixin
    private StandardOptions standard;

    @ArgGroup(exclusive = false, heading = "%nThe air:%n")
    private final AirOptions air = new AirOptions();

    @ArgGroup(exclusive = false, heading = "%nSensors (one standard uncertainty; starting guesses where not given):%n")
    private final SensorOptions sensors = new SensorOptions();

    @ArgGroup(exclusive = false, heading = "%nThe air in which pulls may run:%n")
    private final WindowOptions window = new WindowOptions();

    @ArgGroup(exclusive = false, heading = "%nMany readings at once:%n")
    private final TableOptions many = new TableOptions();

    @Mixin
    private DecimalOption decimal;

    static final class AirOptions {
        @Option(names = "--temperature", paramLabel = "T", description = "Of the air that the engine breathes, such as 12C.")
        private String temperature;

        @Option(names = "--pressure", paramLabel = "P", description = "Barometer, such as 1003hPa; at the rig unless --sea-level is given.")
        private String pressure;

        @Option(names = "--humidity", paramLabel = "RH", description = "Relative humidity, such as 35%%; or one of the next two.")
        private String humidity;

        @Option(names = "--dew-point", paramLabel = "T", description = "Dew point, such as 9C.")
        private String dewPoint;

        @Option(names = "--wet-bulb", paramLabel = "T", description = "Wet bulb of a ventilated psychrometer, such as 15C.")
        private String wetBulb;

        @Option(names = "--sea-level", description = "The pressure is an altimeter setting, reduced to sea level; needs --elevation.")
        private boolean seaLevel;

        @Option(names = "--elevation", paramLabel = "H", description = "Height of the rig above sea level, such as 300m or 1000ft.")
        private String elevation;

        @Option(names = "--power", paramLabel = "X", description = "A power or torque to be corrected, such as 300hp.")
        private String power;
    }

    static final class SensorOptions {
        @Option(names = "--temperature-uncertainty", paramLabel = "U", description = "Of the thermometer, such as 0.5K.")
        private String temperature;

        @Option(names = "--pressure-uncertainty", paramLabel = "U", description = "Of the barometer, such as 1hPa.")
        private String pressure;

        @Option(names = "--humidity-uncertainty", paramLabel = "U", description = "Of relative humidity, in points, such as 3%%.")
        private String humidity;

        @Option(names = "--dew-point-uncertainty", paramLabel = "U", description = "Of a dew point or wet bulb, such as 0.5K.")
        private String dewPoint;

        @Option(names = "--correlation", paramLabel = "R",
                description = "Of one sensor’s errors between two pulls of a session, 0 to 1; guess 0.9, as most errors are offsets.")
        private String correlation;

        @Option(names = "--draws", paramLabel = "N", description = "Check the uncertainty by so many Monte Carlo draws.")
        private Integer draws;

        @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of the draws; default ${DEFAULT-VALUE}.")
        private long seed;
    }

    static final class WindowOptions {
        @Option(names = "--window", description = "Say in what air pulls may start, and whether one may now.")
        private boolean asked;

        @Option(names = "--worthwhile", paramLabel = "X", description = "Worthwhile gain in percent of the level, such as 1.5%%, "
                + "or, where --power is given, in its unit, such as 3hp.")
        private String worthwhile;

        @Option(names = "--share", paramLabel = "X", description = "Share of it that the correction may get wrong; guess 25%%.")
        private String share;

        @Option(names = "--model-error", paramLabel = "X",
                description = "Error of the correction itself, as a share of its change between two installs; guess 10%%.")
        private String modelError;

        @Option(names = "--factor-range", paramLabel = "LOW-HIGH", description = "Within what the factor may lie, where that is not the "
                + "standard’s own range, such as 0.9-1.1; sources disagree on it.")
        private String factors;

        @Option(names = "--first", paramLabel = "AIR", description = "The air at the first install, such as "
                + "\"24C 1003hPa 45%%\", its pressure read as --pressure is, with --sea-level and --elevation where they are given; with "
                + "--dew-point or --wet-bulb a second temperature stands for humidity.")
        private String first;
    }

    static final class TableOptions {
        @Option(names = "--table", paramLabel = "FILE",
                description = "A table with a reading a row: columns temperature, pressure, humidity or dew point or wet bulb, elevation, "
                + "power, units in the header as in “temperature (C)”.")
        private Path table;

        @Option(names = "--out", paramLabel = "FILE", description = "Where the table goes, with the columns factor and warnings added.")
        private Path out;
    }

    @Override
    protected void work() throws IOException {
        if (many.table != null) {
            answer(CorrectTable.correct(tableRequest()));
            return;
        }
        given().filter(option -> option.equals("--out") || option.equals("--decimal")).findFirst().ifPresent(option -> {
            throw new UsageException(option, "belongs to --table");
        });
        answer(CorrectAir.answer(new CorrectAir.Request(standard.typed(), typedAir(), Optional.ofNullable(window.first),
                Optional.ofNullable(air.power), typedSensors(), simulation(), typedWindow())));
    }

    private CorrectTable.Request tableRequest() {
        given().filter(OF_ONE_READING::contains).findFirst().ifPresent(option -> {
            throw new UsageException(option, "belongs to a single reading; a table has columns");
        });
        if (many.out == null) {
            throw new UsageException("--table", "needs --out FILE, where the table goes with its factors");
        }
        return new CorrectTable.Request(standard.typed(), many.table, many.out, decimal.mark(), air.seaLevel,
                Optional.ofNullable(air.elevation));
    }

    private TypedAir typedAir() {
        return new TypedAir(air.temperature, air.pressure, Optional.ofNullable(air.humidity), Optional.ofNullable(air.dewPoint),
                Optional.ofNullable(air.wetBulb), air.seaLevel, Optional.ofNullable(air.elevation));
    }

    private TypedSensors typedSensors() {
        return new TypedSensors(Optional.ofNullable(sensors.temperature), Optional.ofNullable(sensors.pressure),
                Optional.ofNullable(sensors.humidity), Optional.ofNullable(sensors.dewPoint), Optional.ofNullable(sensors.correlation));
    }

    private Optional<Simulation> simulation() {
        if (sensors.draws != null && (sensors.draws < 2 || sensors.draws > 10_000_000)) {
            throw new UsageException("--draws", "must lie between 2 and 10 million, was " + sensors.draws);
        }
        return Optional.ofNullable(sensors.draws).map(draws -> new Simulation(draws, sensors.seed));
    }

    private Optional<TypedWindow> typedWindow() {
        if (!window.asked) {
            given().filter(List.of("--worthwhile", "--share", "--model-error", "--factor-range")::contains)
                    .findFirst().ifPresent(option -> {
                throw new UsageException(option, "belongs to --window");
            });
            return Optional.empty();
        }
        return Optional.of(new TypedWindow(window.worthwhile, Optional.ofNullable(window.share), Optional.ofNullable(window.modelError),
                Optional.ofNullable(window.factors)));
    }
}
