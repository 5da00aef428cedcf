package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Files of every shape taken now, with the channels that must come out. The files and their numbers are invented. */
class ExportShapesTest {

    @Test
    void timeBasedWithUnitsMarkEmptyColumnsAndTrailingComma() throws IOException {
        Path file = resource("time-based/pull.csv");
        byte[] before = Files.readAllBytes(file);
        Export export = ExportReader.read(file);

        assertThat(export.dialect()).isEqualTo(new Dialect(StandardCharsets.UTF_8, true, Delimiter.COMMA, DecimalMark.POINT, 1,
                OptionalInt.empty()));
        assertThat(export.columns()).extracting(ExportColumn::header).containsExactly("Time (s)", "Servo (µs)",
                "Motor Electrical Speed (RPM)", "Motor Optical Speed (RPM)", "Electrical Power (W)", "Note");
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0, 0.5, 1, 1.5, 2);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2010, 2490, 3005, 3510, 4000);
        assertNumbers(channels, Quantity.POWER, Units.WATT, 101.5, 140.25, 171, 203.75, 228.5);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void unitsInSquareBracketsAndTimeFromMinusZero() {
        Channels channels = channels(ExportReader.read(resource("bracketed-units/log.txt")));

        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0, 1, 2, 3, 4);
        assertNumbers(channels, Quantity.SPEED, Units.MILE_PER_HOUR, 0, 0, 8.5, 17.25, 26);
        assertThat(channels.all()).containsOnlyKeys(Quantity.TIME, Quantity.SPEED);
    }

    @Test
    void speedBinnedWithoutUnitsIsReadByTheIdentityOfPowerAndTorque() {
        Export export = ExportReader.read(resource("speed-binned/curve.csv"));
        Channels channels = channels(export);

        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2000, 2500, 3000, 3500);
        assertNumbers(channels, Quantity.TORQUE, Units.POUND_FOOT, 150, 162.5, 170.25, 168);
        assertThat(channels.find(Quantity.POWER).orElseThrow().at(2)).isCloseTo(Units.HORSEPOWER.toSi(170.25 * 3000 / 5252.113122), offset(0.5));
        assertThat(ColumnGuess.guess(export).doubts()).anyMatch(doubt -> doubt.contains("hp is taken because power is torque × speed"));
    }

    @Test
    void everyCellQuotedWithDecimalCommas() {
        Export export = ExportReader.read(resource("quoted-decimal-commas/lauf.csv"));

        assertThat(export.dialect().delimiter()).isEqualTo(Delimiter.COMMA);
        assertThat(export.dialect().decimalMark()).isEqualTo(DecimalMark.COMMA);
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0, 0.1, 0.2);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 1800.5, 2210, 2654.25);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 31.25, 39.5, 48.125);
    }

    @Test
    void preambleUnitRowAndPointsBeforeThousands() {
        Export export = ExportReader.read(resource("preamble-and-unit-row/run.csv"));

        assertThat(export.dialect()).isEqualTo(new Dialect(StandardCharsets.UTF_8, false, Delimiter.SEMICOLON, DecimalMark.COMMA, 5,
                OptionalInt.of(6)));
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 1800, 2000, 2200);
        assertNumbers(channels, Quantity.TORQUE, Units.NEWTON_METRE, 320, 331.5, 340.25);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 60.3, 69.4, 78.4);
        assertThat(export.doubts()).singleElement().asString().contains("line 5");
    }

    @Test
    void latinOneWithMixedLineEnds() {
        Export export = ExportReader.read(resource("latin-1-mixed-line-ends/pull.csv"));

        assertThat(export.dialect().charset()).isEqualTo(Charset.forName("windows-1252"));
        assertThat(export.columns()).extracting(ExportColumn::unitText).containsExactly("s", "µs", "RPM", "°C", "hp");
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2000, 3000, 4000, 5000);
        assertNumbers(channels, Quantity.POWER, Units.HORSEPOWER, 80.25, 121.5, 160, 197.75);
    }

    @Test
    void longFormBecomesAColumnAChannel() {
        ExportFile file = ExportFile.look(resource("long-form/log.csv"), Optional.empty());
        Export export = file.table();

        assertThat(file.pulls()).isEqualTo(1);
        assertThat(export.columns()).extracting(ExportColumn::header).containsExactly("seconds", "Motordrehzahl", "Leistung", "Öltemperatur");
        assertThat(export.columns().get(3).numbers()).isEqualTo(Samples.of(Double.NaN, 90, Double.NaN, Double.NaN));
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0, 0.1, 0.2);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 1800.5, 2210, 2654.25);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 31.25, 39.6875, 48.125);
        assertThat(export.doubts()).anyMatch(doubt -> doubt.contains("interpolated"));
    }

    @Test
    void channelsWithATimeOfTheirOwnAreBroughtOntoOneAndNothingIsExtrapolated() {
        Export export = ExportReader.read(resource("own-time-columns/log.csv"));

        assertThat(export.columns().get(2).numbers()).isEqualTo(Samples.of(Double.NaN, 50, 70, Double.NaN, Double.NaN));
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0.5, 1);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2100, 2200);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 50, 70);
        assertNumbers(channels, Quantity.TORQUE, Units.NEWTON_METRE, 205, 220);
        assertThat(export.doubts()).singleElement().asString().contains("“Power (kW)”, “Torque (N·m)” have another time column");
    }

    @Test
    void emptyUnitsAndBlankCells() {
        Export export = ExportReader.read(resource("wide-logger/log.csv"));

        assertThat(export.columns()).hasSize(9);
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0, 0.04, 0.08);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2000, 2020, 2040);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 40.5, 41.5, 42.5);
    }

    @Test
    void proseThenColumnsOfFixedWidth() {
        Export export = ExportReader.read(resource("fixed-width/run.txt"));

        assertThat(export.dialect()).isEqualTo(new Dialect(StandardCharsets.UTF_8, false, Delimiter.BLANKS, DecimalMark.POINT, 4,
                OptionalInt.of(5)));
        assertThat(export.columns()).extracting(ExportColumn::header).containsExactly("Engine speed", "Power", "Torque", "Oil");
        assertThat(export.columns().get(3).numbers()).isEqualTo(Samples.of(90, Double.NaN, 95));
        Channels channels = channels(export);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2000, 10000);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 40.5, 100.5);
        assertNumbers(channels, Quantity.TORQUE, Units.NEWTON_METRE, 193.4, 92);
    }

    @Test
    void wordsPartedByBlanks() {
        Channels channels = channels(ExportReader.read(resource("fixed-width/words.txt")));

        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 900, 2000, 10000);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 1, 50.5, 150.25);
        assertNumbers(channels, Quantity.TORQUE, Units.NEWTON_METRE, 12.5, 200, 7);
    }

    @Test
    void blanksRoundCommasAndQuotes() {
        Channels channels = channels(ExportReader.read(resource("blanks-round-quotes/pull.csv")));
        assertNumbers(channels, Quantity.TIME, Units.SECOND, 0, 0, 1);
        assertNumbers(channels, Quantity.ENGINE_SPEED, Units.RPM, 2000, 2100, 2200);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 50.5, 51.25, 52);

        Channels plain = channels(ExportReader.read(resource("blanks-round-quotes/plain.csv")));
        assertNumbers(plain, Quantity.ENGINE_SPEED, Units.RPM, 2000, 2500);
        assertNumbers(plain, Quantity.POWER, Units.KILOWATT, 50.5, 60.5);
    }

    @Test
    void timesOfDayArePastMidnightInOrder() {
        Channels channels = channels(ExportReader.read(resource("clock-times/night.csv")));

        assertNumbers(channels, Quantity.TIME, Units.SECOND, 86399.25, 86399.75, 86400.5);
        assertNumbers(channels, Quantity.POWER, Units.KILOWATT, 50.5, 55.5, 60.5);
    }

    /** Berlin, 25 October and 29 March 2026: a pull over the minute at which clocks are changed goes on; pulls an hour apart stay apart. */
    @Test
    void timesOfDayRunOnWhereClocksAreChanged() {
        assertNumbers(channels(ExportReader.read(resource("clock-times/autumn.csv"))), Quantity.TIME, Units.SECOND, 10_799.25, 10_799.75,
                10_800.25, 10_800.75);
        assertNumbers(channels(ExportReader.read(resource("clock-times/spring.csv"))), Quantity.TIME, Units.SECOND, 7199.25, 7199.75,
                7200.25, 7200.75);
        assertNumbers(channels(ExportReader.read(resource("clock-times/offsets.csv"))), Quantity.TIME, Units.SECOND, 3599.25, 3599.75,
                3600.25);
        assertNumbers(channels(ExportReader.read(resource("clock-times/an-hour-apart.csv"))), Quantity.TIME, Units.SECOND, 36_000, 36_000.5,
                39_603, 39_603.5);
    }

    @Test
    void filesOfOneHeaderHaveOneFingerprint() {
        String one = ExportReader.read(resource("time-based/pull.csv")).fingerprint();

        assertThat(one).matches("[0-9a-f]{16}");
        assertThat(ExportReader.read(resource("bracketed-units/log.txt")).fingerprint()).isNotEqualTo(one);
    }

    static Channels channels(Export export) {
        return MappedExport.channels(export, ColumnGuess.mapping(export, Map.of(), Optional.empty()));
    }

    static void assertNumbers(Channels channels, Quantity quantity, Unit unit, double... expected) {
        assertThat(channels.find(quantity)).contains(Samples.of(expected).map(unit::toSi).map(value -> value + 0.0));
    }

    static Path resource(String name) {
        try {
            return Path.of(ExportShapesTest.class.getResource("/imports/" + name).toURI());
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }
}
