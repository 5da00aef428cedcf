package fairpull.io.table;

import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What the words of a header say about a column. The words are common practice, no source. */
final class ColumnWords {
    private static final Map<Quantity, Set<String>> WORDS = new LinkedHashMap<>();
    private static final Set<String> ENGINE = Set.of("engine", "eng", "motor", "crank", "crankshaft");
    /** Words of another thing than the engine's own measured value. */
    private static final Set<String> ELSEWHERE = Set.of("target", "desired", "demand", "demanded", "requested", "request", "limit",
            "setpoint", "command", "commanded", "loss", "losses", "drag", "error", "fan", "pump", "wind", "steering", "injection", "inj",
            "ignition", "spark", "dwell", "lap", "turbo", "supply", "factor");
    private static final Set<String> ANOTHER_SHAFT = Set.of("roller", "drum", "wheel", "shaft", "driveshaft", "output", "input", "gearbox");

    /** Where a unit with a capital in it begins at the end of a word: kW must not be read as W, nor hPa as Pa. */
    private static final Pattern UNIT_AT_END = Pattern.compile("(?<=\\p{Ll})(?=(?:kW|kPa|hPa|inHg)(?!\\p{L}))");

    /** The speed at which something is read. Common practice, no source. */
    private static final Pattern AT_SPEED = Pattern.compile("(?<=\\S)\\s*(?:@|\\b(?:at|bei)\\b)\\s*\\d[\\d., ]*"
            + "(?:rpm\\b|(?:1|u|r|rev)/min\\b|min-1(?!\\d)|min⁻¹)", Pattern.CASE_INSENSITIVE);

    static {
        WORDS.put(Quantity.ENGINE_SPEED, Set.of("rpm", "revs", "drehzahl"));
        WORDS.put(Quantity.POWER, Set.of("power", "pwr", "leistung", "hp", "bhp", "whp", "kw", "ps"));
        WORDS.put(Quantity.TORQUE, Set.of("torque", "trq", "tq", "drehmoment", "nm", "lbft", "ftlb"));
        WORDS.put(Quantity.SPEED, Set.of("speed", "spd", "velocity", "geschwindigkeit", "mph", "kph", "kmh"));
        WORDS.put(Quantity.TIME, Set.of("time", "zeit", "seconds", "sec", "elapsed", "timestamp", "clock", "uhrzeit"));
        WORDS.put(Quantity.FRACTION, Set.of("throttle", "tps", "pedal", "accelerator"));
        WORDS.put(Quantity.TEMPERATURE, Set.of("temp", "temperature", "iat", "ect", "clt", "coolant"));
        WORDS.put(Quantity.PRESSURE, Set.of("pressure", "boost", "map", "baro", "barometer"));
        WORDS.put(Quantity.VOLTAGE, Set.of("voltage", "volts"));
        WORDS.put(Quantity.CURRENT, Set.of("current", "amps"));
        WORDS.put(Quantity.FORCE, Set.of("force", "thrust"));
    }

    private final List<String> words;

    private ColumnWords(List<String> words) {
        this.words = words;
    }

    /** {@return a header without the engine speed that it names: “Power at 3000 rpm” is power} */
    static String withoutSpeedNamed(String header) {
        return AT_SPEED.matcher(header).replaceAll("").strip();
    }

    static ColumnWords of(String name) {
        return new ColumnWords(split(name));
    }

    /** {@return the words of a header in small letters} */
    static List<String> split(String name) {
        List<String> words = new ArrayList<>();
        for (String written : UNIT_AT_END.matcher(name).replaceAll(" ").split("[^\\p{L}\\p{N}]+")) {
            String spaced = Units.find(written).isPresent() ? written : written.replaceAll("(\\p{Ll})(\\p{Lu})", "$1 $2");
            words.addAll(List.of(spaced.toLowerCase(Locale.ROOT).split(" ")));
        }
        words.removeIf(String::isEmpty);
        return List.copyOf(words);
    }

    /** {@return whether the words name another thing: a target, a loss, the steering pump …} */
    boolean isElsewhere(Quantity quantity) {
        boolean elsewhere = words.stream().anyMatch(ELSEWHERE::contains);
        return elsewhere || quantity == Quantity.ENGINE_SPEED && words.stream().anyMatch(ANOTHER_SHAFT::contains);
    }

    /** {@return whether a word speaks for the quantity} */
    boolean name(Quantity quantity) {
        return quantity == Quantity.ENGINE_SPEED && isEngineSpeed()
                || words.stream().anyMatch(WORDS.getOrDefault(quantity, Set.of())::contains);
    }

    /** {@return the first quantity that a word speaks for} */
    Optional<Quantity> quantity() {
        return WORDS.keySet().stream().filter(this::name).findFirst();
    }

    /** {@return the unit that the name itself is or ends with, such as rpm, Power hp or torque_nm} */
    Optional<Unit> unit(String name) {
        return UnitText.find(name).or(() -> UnitAtEnd.of(name).map(UnitAtEnd::unit))
                .or(() -> words.isEmpty() ? Optional.empty() : Units.find(words.get(words.size() - 1)));
    }

    /** {@return whether the words name the pedal, which a throttle plate need not follow} */
    boolean isPedal() {
        return words.contains("pedal") || words.contains("accelerator");
    }

    /** {@return whether the words name what a pull is made of} */
    boolean isOfAPull() {
        return name(Quantity.ENGINE_SPEED) || name(Quantity.POWER) || name(Quantity.TORQUE);
    }

    /** {@return whether the words name the time of a row, not of a lap or an injection} */
    boolean isTime() {
        return name(Quantity.TIME) && !isElsewhere(Quantity.TIME) || isUnitOfTime();
    }

    /** {@return whether nothing but s or ms stands there; “min” alone is a minimum} */
    boolean isUnitOfTime() {
        return words.equals(List.of("s")) || words.equals(List.of("ms"));
    }

    private boolean isEngineSpeed() {
        return words.stream().anyMatch(ENGINE::contains) && (words.contains("speed") || words.contains("spd"));
    }
}
