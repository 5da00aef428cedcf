package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fairpull.domain.InputException;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnGuessTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Engine Speed (rpm)|ENGINE_SPEED|rpm", "rpm|ENGINE_SPEED|rpm", "Drehzahl [1/min]|ENGINE_SPEED|rpm", "EngineSpeed|ENGINE_SPEED|rpm",
        "Power hp|POWER|hp", "Leistung kW|POWER|kW", "PowerkW|POWER|kW", "power_kW|POWER|kW",
        "EnginePower kW|POWER|kW", "PowerW|POWER|W", "Baro hPa|PRESSURE|hPa", "MAP kPa|PRESSURE|kPa", "boostPSI|PRESSURE|psi", "TorqueNm|TORQUE|N·m",
        "Wheel power [kW]|POWER|kW", "Leistung (PS)|POWER|PS", "whp|POWER|hp", "torque_nm|TORQUE|N·m",
        "Torque (lb-ft)|TORQUE|lbf·ft", "Time (ms)|TIME|ms", "Vehicle speed (km/h)|SPEED|km/h", "Dyno_Spd[mph]|SPEED|mph",
        "Torque (kgf·m)|TORQUE|kgf·m", "Torque kgfm|TORQUE|kgf·m", "Drehmoment [mkg]|TORQUE|kgf·m", "Torque [kg·m]|TORQUE|kgf·m",
        "Engine speed (rpm x1000)|ENGINE_SPEED|rpm×1000", "Drehzahl [1000 1/min]|ENGINE_SPEED|rpm×1000",
        "n (1/min x 1000)|ENGINE_SPEED|rpm×1000", "Engine speed [krpm]|ENGINE_SPEED|rpm×1000", "RPM x1000|ENGINE_SPEED|rpm×1000",
        "rpm (rpm/1000)|ENGINE_SPEED|rpm×1000", "Throttle|FRACTION|%", "iat_c|TEMPERATURE|°C", "Thrust (gf)|FORCE|gf",
        "Speed km/h|SPEED|km/h", "Vehicle speed, km/h|SPEED|km/h", "speed_km/h|SPEED|km/h", "Speed km / h|SPEED|km/h", "Speed m/s|SPEED|m/s",
        "Geschwindigkeit km/h|SPEED|km/h", "v km/h|SPEED|km/h", "Speed mi/h|SPEED|mph", "Power kW|POWER|kW", "Torque Nm|TORQUE|N·m",
        "Torque lb ft|TORQUE|lbf·ft", "Torque lb-ft|TORQUE|lbf·ft", "Torque kgf m|TORQUE|kgf·m", "Temp C|TEMPERATURE|°C",
        "Coolant temp deg C|TEMPERATURE|°C", "Oil temp °F|TEMPERATURE|°F", "Boost bar|PRESSURE|bar", "Throttle %|FRACTION|%",
        "Power at 3000 rpm hp|POWER|hp", "Power at 3000 rpm (kW)|POWER|kW", "Torque @ 4,500 1/min Nm|TORQUE|N·m",
        "RPM/1000|ENGINE_SPEED|rpm×1000", "Engine speed rpm x 1000|ENGINE_SPEED|rpm×1000"})
    void headersSayQuantityAndUnit(String header, Quantity quantity, String symbol) throws IOException {
        GuessedColumn guessed = only("other\tx", header);

        assertThat(guessed.quantity()).contains(quantity);
        assertThat(guessed.unit().map(Unit::symbol)).contains(symbol);
        assertThat(guessed.reason()).contains(quantity == Quantity.FRACTION ? "throttle" : quantity.words());
    }

    @ParameterizedTest
    @ValueSource(strings = {"U/min", "1/min", "min^-1", "min-1", "min⁻¹", "rev/min"})
    void turnsPerMinuteAreEngineSpeedWhereverTheyStand(String unit) throws IOException {
        for (String header : List.of(unit, "Motordrehzahl (" + unit + ")", "n [" + unit + "]", "Drehzahl " + unit, unit + " Motor", "n_" + unit,
                "Drehzahl in " + unit + ", gefiltert", unit.toUpperCase(Locale.ROOT))) {
            GuessedColumn guessed = only("other\tx", header);

            assertThat(guessed.quantity()).as(header).contains(Quantity.ENGINE_SPEED);
            assertThat(guessed.unit()).as(header).contains(Units.RPM);
        }
        assertThat(only("other\tx", "Roller Speed " + unit).quantity()).isEmpty();
        assertThat(only("other\tx", "Speed " + unit).quantity()).contains(Quantity.ENGINE_SPEED);
        assertThat(only("other\tx", "Power at 3000 " + unit).quantity()).contains(Quantity.POWER);
        Export unitLine = export("Drehzahl\tLeistung\n" + unit + "\tkW\n20\t50.5\n30\t70.5\n");
        assertThat(unitLine.dialect().unitLine()).hasValue(2);
        assertThat(mapped(unitLine, Quantity.ENGINE_SPEED).unit()).isEqualTo(Units.RPM);
        assertThat(ColumnChoice.parse("engine-speed=n:" + unit))
                .contains(Map.entry(Quantity.ENGINE_SPEED, new ColumnChoice(Optional.of("n"), Optional.of(Units.RPM))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Flow l/min", "Flow (l/min)", "km/min", "11/min", "Umin", "min", "Ramp rpm/s 1/min/s"})
    void otherThingsAMinuteAreNotEngineSpeed(String header) throws IOException {
        assertThat(UnitText.amongWords(header)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Target Engine Speed (rpm)", "Roller Speed (rpm)", "Power steering (kW)", "Loss power (kW)", "Lambda", "Fuel pump duty (%)",
        "Injection time (ms)"})
    void namesOfOtherThingsAreNotTaken(String header) throws IOException {
        assertThat(only("other\tx", header).quantity()).isEmpty();
    }

    /** Where words and unit say two things, neither is believed; letters of channels and peaks are no units. */
    @ParameterizedTest
    @ValueSource(strings = {"Torque kW", "Power Nm", "Engine speed km/h", "Throttle V", "Pedal position V", "Power %", "Coolant temp kPa"})
    void whatContradictsItselfIsAsked(String header) throws IOException {
        GuessedColumn guessed = only("other\tx", header);
        assertThat(guessed.quantity()).as(header).isEmpty();
        assertThat(guessed.reason()).contains("its words say", "but its unit");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Power A|POWER", "Power min|POWER", "Torque N|TORQUE", "Wind km/h|", "Target speed km/h|", "Lap h|",
        "Flow m/s|", "x h|", "Sensor C|", "Bank L|"})
    void whatMayBeNoUnitIsNotTakenForOne(String header, Quantity quantity) throws IOException {
        assertThat(only("other\tx", header).quantity()).isEqualTo(Optional.ofNullable(quantity));
    }

    @Test
    void aColumnThatNeverChangesLosesAndThatIsSaid() throws IOException {
        Export export = export("Motor Speed (rpm)\tMotor Optical Speed (rpm)\tPower (W)\n2000\t0\t5.5\n3000\t0\t6.5\n");

        assertThat(mapped(export, Quantity.ENGINE_SPEED).index()).isZero();
        assertThat(ColumnGuess.guess(export).doubts()).containsExactly("“Motor Speed (rpm)” is taken as engine speed, "
                + "not “Motor Optical Speed (rpm)”, whose numbers never change");
    }

    @Test
    void evenEvidenceIsAskedWithTheOptionToGive() throws IOException {
        Export export = export("rpm\tEngine power (kW)\tWheel power (kW)\n2000\t50.5\t45\n3000\t70.5\t62\n");

        InputException question = refusal(() -> ColumnGuess.mapping(export, Map.of(), Optional.empty()));
        assertThat(question.oneLine()).contains("line 1, column Engine power (kW)", "could each be power",
                "--column power=\"Engine power (kW)\" or --column power=\"Wheel power (kW)\"");
        Mapping chosen = ColumnGuess.mapping(export, choice("power=Wheel power (kW)"), Optional.of(Correction.NONE));
        assertThat(chosen.columns()).contains(new Mapping.Column(2, "Wheel power (kW)", Quantity.POWER, Units.KILOWATT));
        assertThat(chosen.corrected()).contains(Correction.NONE);
        assertThat(chosen.fingerprint()).isEqualTo(export.fingerprint());
    }

    @Test
    void repeatedNamesAreChosenByNumber() throws IOException {
        Export export = export("rpm\tPower (kW)\tPower (kW)\n2000\t50.5\t45\n3000\t70.5\t62\n");

        assertThat(refusal(() -> ColumnGuess.mapping(export, Map.of(), Optional.empty())).remedy().command())
                .isEqualTo("choose one: --column power=2 or --column power=3");
        assertThat(refusal(() -> ColumnGuess.mapping(export, choice("power=power (kw)"), Optional.empty())).oneLine())
                .contains("2 columns are called", "2 or 3");
        assertThat(ColumnGuess.mapping(export, choice("power=3"), Optional.empty()).columns())
                .anyMatch(column -> column.index() == 2 && column.quantity() == Quantity.POWER);
    }

    @Test
    void aQuantityThatIsSaidToHaveNoColumnHasNone() throws IOException {
        Export export = export("rpm\tPower (kW)\tTorque (Nm)\tnone\n2000\t50.5\t241\t1\n3000\t70.5\t224\t2\n");

        assertThat(ColumnGuess.mapping(export, EnumSet.of(Quantity.POWER, Quantity.ENGINE_SPEED), choice("power=None"), Optional.empty())
                .columns()).extracting(Mapping.Column::quantity).contains(Quantity.TORQUE).doesNotContain(Quantity.POWER);
        assertThat(ColumnGuess.guess(export, choice("power=none")).columns().get(1).reason()).isEqualTo("left out by hand");
        assertThat(ColumnGuess.mapping(export, choice("power=\"none\":kW"), Optional.empty()).columns())
                .contains(new Mapping.Column(3, "none", Quantity.POWER, Units.KILOWATT));
    }

    @Test
    void columnsWithTheSameNumbersAreOneColumn() throws IOException {
        Export export = export("rpm\tPower (kW)\tPower (kW)\n2000\t50.5\t50.5\n3000\t70.5\t70.5\n");

        assertThat(mapped(export, Quantity.POWER).index()).isEqualTo(1);
        assertThat(ColumnGuess.guess(export).doubts()).singleElement().asString().contains("which holds the same numbers");
    }

    @Test
    void powerWithoutUnitIsAsked() throws IOException {
        Export export = export("rpm\tPower\n2000\t50.5\n3000\t70.5\n");

        InputException question = refusal(() -> ColumnGuess.mapping(export, Map.of(), Optional.empty()));
        assertThat(question.oneLine()).contains("column Power: the unit of power is not named", "--column power=\"Power\":UNIT", "hp, PS");
        assertThat(ColumnGuess.mapping(export, choice("power=Power:hp"), Optional.empty()).columns())
                .contains(new Mapping.Column(1, "Power", Quantity.POWER, Units.HORSEPOWER));
        assertThat(ColumnGuess.guess(export).questions().values()).singleElement().asString().contains("the unit of power");
    }

    @Test
    void whatIsNotNeededIsNotAsked() throws IOException {
        Export export = export("rpm\tTorque (Nm)\tPower\n2000\t150\t77.7\n3000\t160\t55.5\n4000\t150\t66.6\n");

        Mapping mapping = ColumnGuess.mapping(export, Set.of(Quantity.ENGINE_SPEED, Quantity.TORQUE), Map.of(), Optional.empty());

        assertThat(mapping.columns()).extracting(Mapping.Column::quantity).containsExactly(Quantity.ENGINE_SPEED, Quantity.TORQUE);
    }

    @Test
    void torqueStandsInWherePowerIsNeededAndAbsent() throws IOException {
        Export export = export("rpm\tTorque (Nm)\n2000\t150.5\n3000\t160\n");

        Mapping mapping = ColumnGuess.mapping(export, Set.of(Quantity.ENGINE_SPEED, Quantity.POWER), Map.of(), Optional.empty());

        assertThat(mapping.columns()).extracting(Mapping.Column::quantity).containsExactly(Quantity.ENGINE_SPEED, Quantity.TORQUE);
    }

    @ParameterizedTest
    @CsvSource({"5252.113122,hp,lbf·ft", "9549.296586,kW,N·m", "7023.52,PS,N·m", "7120.91,hp,N·m", "7042.7,kW,lbf·ft"})
    void theIdentityOfPowerAndTorqueSettlesTheirUnits(double constant, String power, String torque) throws IOException {
        StringBuilder table = new StringBuilder("rpm\ttorque\tpower\n");
        for (int rpm = 2000; rpm <= 6000; rpm += 100) {
            double value = 300 + rpm / 100.0;
            table.append(rpm).append('\t').append(value).append('\t').append(Math.round(value * rpm / constant * 100) / 100.0).append('\n');
        }
        Export export = export(table.toString());

        assertThat(mapped(export, Quantity.POWER).unit().symbol()).isEqualTo(power);
        assertThat(mapped(export, Quantity.TORQUE).unit().symbol()).isEqualTo(torque);
    }

    @Test
    void powerThatIsNotTorqueTimesSpeedLeavesTheUnitsOpen() throws IOException {
        Export export = export("rpm\ttorque\tpower\n2000\t150\t57.6\n3000\t160\t92.0\n4000\t150\t114.9\n");

        assertThat(refusal(() -> ColumnGuess.mapping(export, Map.of(), Optional.empty())).getMessage()).contains("is not named");
    }

    @Test
    void choicesThatDoNotFitAreRefused() throws IOException {
        Export export = export("rpm\tPower (kW)\tNote\n2000\t50.5\tx\n3000\t70.5\ty\n");

        assertThat(refusal(() -> ColumnGuess.mapping(export, choice("power=Boost"), Optional.empty())).oneLine())
                .contains("no column “Boost”", "“rpm”, “Power (kW)”, “Note”");
        assertThat(refusal(() -> ColumnGuess.mapping(export, choice("power=Power (kW):Nm"), Optional.empty())).getMessage())
                .contains("N·m is a unit of torque, not of power");
        assertThat(refusal(() -> ColumnGuess.mapping(export, choice("torque=Note:Nm"), Optional.empty())).getMessage())
                .contains("holds no numbers");
    }

    @Test
    void optionsAreRead() {
        assertThat(ColumnChoice.parse("engine-speed=Motor: Speed (RPM)"))
                .contains(Map.entry(Quantity.ENGINE_SPEED, new ColumnChoice(Optional.of("Motor: Speed (RPM)"), Optional.empty())));
        assertThat(ColumnChoice.parse("power=\"Power\":hp"))
                .contains(Map.entry(Quantity.POWER, new ColumnChoice(Optional.of("Power"), Optional.of(Units.HORSEPOWER))));
        assertThat(ColumnChoice.parse("power")).isEmpty();
        assertThat(ColumnChoice.parse("luck=Power")).isEmpty();
        assertThat(ColumnChoice.parse("other=Power")).isEmpty();
    }

    @Test
    void blankCellsDropTheirRowAndTextIsRefused() throws IOException {
        Export blanks = export("rpm\tPower (kW)\tOil\n2000\t50.5\t\n2500\t\t80\n3000\t \t80\n3500\t70.5\t\n");
        MappedExport.Result result = MappedExport.read(blanks, ColumnGuess.mapping(blanks, Map.of(), Optional.empty()));
        assertThat(result.droppedRows()).isEqualTo(2);
        assertThat(result.channels().rows()).isEqualTo(2);

        Export text = export("rpm\tPower (kW)\n2000\t50.5\n2500\t60.5\n3000\tfault\n");
        assertThat(refusal(() -> MappedExport.channels(text, ColumnGuess.mapping(text, Map.of(), Optional.empty()))).oneLine())
                .contains("table.txt, line 4, column Power (kW): “fault” is not a number; ");
    }

    /** What a logger writes for "no value at this moment" costs the row where its column is used and nothing where it is not. */
    @Test
    void aCellWithoutValueCostsItsRowOnlyWhereItsColumnIsUsed() throws IOException {
        Export used = export("rpm\tPower (kW)\tLambda\n2000\tNaN\tNaN\n2500\t60.5\tinf\n3000\t70.5\t1.5\n");
        assertThat(MappedExport.read(used, ColumnGuess.mapping(used, Map.of(), Optional.empty())).channels().rows()).isEqualTo(2);
        Export unused = export("rpm\tPower (kW)\tLambda\n2000\t50.5\tNaN\n2500\t\tinf\n3000\t70.5\t1.5\n");
        MappedExport.Result read = MappedExport.read(unused, ColumnGuess.mapping(unused, Map.of(), Optional.empty()));
        assertThat(read.channels().rows()).isEqualTo(2);
        assertThat(read.droppedRows()).isEqualTo(1);
    }

    private GuessedColumn only(String other, String header) throws IOException {
        Export export = export(other.split("\t")[0] + "\t" + header + "\nx\t1500.5\ny\t2\nx\t2500\n".replace("1500.5",
                header.startsWith("Throttle") ? "99.5" : "1500.5").replace("2500", header.startsWith("Throttle") ? "50" : "2500"));
        return ColumnGuess.guess(export).columns().get(1);
    }

    private static Mapping.Column mapped(Export export, Quantity quantity) {
        return ColumnGuess.mapping(export, Map.of(), Optional.empty()).columns().stream()
                .filter(column -> column.quantity() == quantity).findFirst().orElseThrow();
    }

    private static Map<Quantity, ColumnChoice> choice(String option) {
        return Map.ofEntries(ColumnChoice.parse(option).orElseThrow());
    }

    private Export export(String text) throws IOException {
        return ExportReader.read(Files.writeString(folder.resolve("table.txt"), text));
    }

    private static InputException refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        InputException refusal = catchThrowableOfType(InputException.class, call);
        assertThat(refusal).isNotNull();
        return refusal;
    }
}
