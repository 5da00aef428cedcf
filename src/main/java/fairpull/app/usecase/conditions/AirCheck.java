package fairpull.app.usecase.conditions;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.TypedAir;
import fairpull.app.usecase.typing.TypedSensors;
import fairpull.app.usecase.typing.TypedStandard;
import fairpull.app.usecase.typing.TypedWindow;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Units;
import fairpull.report.wording.Numbers;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The air as it is typed beside a plan: may a pull start, what is the factor, how far may the air move.
 *
 * @param decision the first sentence: go, no go, or what is missing
 * @param text the rest, paragraphs and a table parted by line ends
 */
public record AirCheck(String decision, String text) {
    private static final Correction USUAL = Correction.SAE_J1349;

    /**
     * What was typed.
     *
     * @param temperature of the air that the engine breathes
     * @param pressure of the barometer
     * @param humidity relative humidity
     * @param elevation height above sea level where the barometer is reduced to it; empty for a station barometer
     * @param first the air at the first install, such as {@code 24C 1003hPa 45%}; empty where there has been none
     */
    public record Typed(String temperature, String pressure, String humidity, String elevation, String first) {
        boolean isEmpty() {
            return (temperature + pressure + humidity).isBlank();
        }
    }

    /** {@return what is to be said of the air; by the standard of the plan's deciding measure, or by the usual one where it has none} */
    public static AirCheck of(Plan plan, Typed typed) {
        if (typed.isEmpty()) {
            return new AirCheck("", "");
        }
        Correction standard = plan.question().deciding().correction() == Correction.NONE ? USUAL : plan.question().deciding().correction();
        TypedStandard asked = new TypedStandard(standard, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        TypedAir air = new TypedAir(given(typed.temperature()), given(typed.pressure()),
                Optional.ofNullable(given(typed.humidity())).map(AirCheck::percent),
                Optional.empty(), Optional.empty(), !typed.elevation().isBlank(), Optional.ofNullable(given(typed.elevation())));
        TypedSensors sensors = new TypedSensors(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        Optional<TypedWindow> window = worthwhile(plan).map(gain -> new TypedWindow(gain, Optional.empty(), Optional.empty(),
                Optional.empty()));
        try {
            String text = CorrectAir.answer(new CorrectAir.Request(asked, air, Optional.ofNullable(given(typed.first())), Optional.empty(),
                    sensors, Optional.empty(), window), Surface.WINDOW).text().strip();
            return parted(text, window.isPresent());
        } catch (UsageException misunderstood) {
            return new AirCheck(misunderstood.problem(), "");
        } catch (InputException impossible) {
            return new AirCheck(impossible.oneLine(Surface.WINDOW), "");
        }
    }

    /** Beside its label a bare number can only be percent. */
    private static String percent(String text) {
        return Amount.parse(text).filter(Amount::isBare).isPresent() ? text + "%" : text;
    }

    private static String given(String text) {
        return text.isBlank() ? null : text.strip();
    }

    /** The decision comes first; without a worthwhile gain there is only the factor. */
    private static AirCheck parted(String text, boolean window) {
        int decision = window ? Math.max(text.indexOf("\nGo:"), text.indexOf("\nNo go:")) + 1 : 0;
        int end = text.indexOf('\n', decision);
        String first = end < 0 ? text.substring(decision) : text.substring(decision, end);
        String rest = (end < 0 ? "" : text.substring(end + 1)) + (decision > 0 ? "\n" + text.substring(0, decision) : "");
        return new AirCheck(first, rest.strip());
    }

    private static Optional<String> worthwhile(Plan plan) {
        OptionalDouble gain = plan.question().worthwhileGainSi();
        OptionalDouble level = plan.question().expectedLevelSi();
        return gain.isEmpty() || level.isEmpty() ? Optional.empty()
                : Optional.of(Numbers.given(Units.PERCENT.fromSi(gain.getAsDouble() / level.getAsDouble())) + "%");
    }
}
