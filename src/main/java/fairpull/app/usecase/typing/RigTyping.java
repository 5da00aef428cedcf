package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sensor;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.UnitSystem;
import fairpull.domain.unit.Units;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.PlanWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What people type into the fields of a rig, and how its figures stand in them. */
public final class RigTyping {
    private static final String BETWEEN = "; ";

    private RigTyping() {
    }

    /** {@return a kind of rig in words} */
    public static String kind(Rig.Kind kind) {
        return PlanWords.kind(kind);
    }

    /** {@return the gates that a plan for a kind of rig begins with} */
    public static List<Gate> gates(Rig.Kind kind) {
        return StandardGates.of(kind);
    }

    /** {@return a rise of engine speed per second, a bare number meaning rpm/s; empty for an empty text} */
    public static OptionalDouble sweepRate(String text) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        String bare = text.strip().replaceFirst("(?i)\\s*(rpm|1/min)\\s*/\\s*s$", "");
        Amount rate = Amount.parse(bare).filter(amount -> amount.isBare() && amount.value() > 0)
                .orElseThrow(() -> new UsageException("", "a rise of engine speed such as 350 rpm/s"));
        return OptionalDouble.of(Units.RPM.differenceToSi(rate.value()));
    }

    /** {@return a sweep rate as it stands in its field} */
    public static String sweepRateText(OptionalDouble radPerS2) {
        return radPerS2.isEmpty() ? "" : Numbers.given(Units.RPM.differenceFromSi(radPerS2.getAsDouble()), "rpm/s");
    }

    /** {@return a pressure with its unit; empty for an empty text} */
    public static OptionalDouble pressure(String text) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        Amount pressure = Amount.parse(text).filter(amount -> amount.unit().quantity() == Quantity.PRESSURE && amount.value() > 0)
                .orElseThrow(() -> new UsageException("", "a pressure with its unit, such as 32 psi or 2.2 bar"));
        return OptionalDouble.of(pressure.si());
    }

    /** {@return a tyre pressure as it stands in its field} */
    public static String pressureText(OptionalDouble pascal, UnitSystem system) {
        Unit unit = system == UnitSystem.US ? Units.POUND_PER_SQUARE_INCH : Units.BAR;
        return pascal.isEmpty() ? "" : Numbers.given(Math.round(unit.fromSi(pascal.getAsDouble()) * 1000) / 1000.0, unit.symbol());
    }

    /** {@return sensors with their standard uncertainty, parted by semicolons: {@code intake air 1 K; barometer 0.5 hPa}} */
    public static List<Sensor> sensors(String text) {
        List<Sensor> sensors = new ArrayList<>();
        for (String part : Arrays.stream(text.split(";")).map(String::strip).filter(part -> !part.isEmpty()).toList()) {
            int number = firstNumber(part);
            Optional<Amount> amount = number <= 0 ? Optional.empty() : Amount.parse(part.substring(number));
            Amount known = amount.filter(typed -> !typed.isBare() && typed.unit().quantity() != Quantity.OTHER && typed.value() >= 0)
                    .orElseThrow(() -> new UsageException("", "“" + part + "”: write each as its name and uncertainty, such as intake air "
                            + "1 K; barometer 0.5 hPa"));
            sensors.add(new Sensor(part.substring(0, number).strip(), known.unit().quantity(), known.differenceSi()));
        }
        return sensors;
    }

    private static int firstNumber(String part) {
        for (int place = 1; place < part.length(); place++) {
            if (Character.isDigit(part.charAt(place)) && !Character.isLetterOrDigit(part.charAt(place - 1))) {
                return place;
            }
        }
        return -1;
    }

    /** {@return sensors as {@link #sensors} reads them} */
    public static String text(List<Sensor> sensors) {
        return sensors.stream().map(sensor -> {
            Unit unit = Units.of(sensor.quantity()).stream().filter(one -> one.factor() == 1 || one.equals(Units.HECTOPASCAL))
                    .findFirst().orElse(Units.of(sensor.quantity()).get(0));
            Unit shown = sensor.quantity() == Quantity.PRESSURE ? Units.HECTOPASCAL
                    : sensor.quantity() == Quantity.FRACTION ? Units.PERCENT : unit;
            return sensor.name() + " " + Numbers.given(shown.differenceFromSi(sensor.uncertaintySi()), shown.symbol());
        }).collect(Collectors.joining(BETWEEN));
    }

    /** {@return where the scatter figures of a rig are from, in a sentence} */
    public static String origins(Rig rig) {
        return "Pull scatter: " + origin(rig.pullScatter()) + " Refit scatter: " + origin(rig.refitScatter());
    }

    private static String origin(Optional<Scatter> scatter) {
        if (scatter.isEmpty()) {
            return "not known yet.";
        }
        String from = switch (scatter.get().origin()) {
            case RIG_RECORD -> "from the rig record";
            case PILOT_PULLS -> "from pilot pulls";
            case TYPED_IN -> "typed in";
            case STARTING_GUESS -> "a starting guess, no record of any rig";
        };
        String weight = scatter.get().isRecord() ? ", " + Numbers.withDegreesOfFreedom(scatter.get().degreesOfFreedom())
                + "; it takes part in the judgement."
                : "; a planning value only, the test is judged by its own data.";
        return from.toLowerCase(Locale.ROOT) + weight;
    }
}
