package fairpull.report.wording;

import fairpull.domain.air.AirFigures;
import fairpull.domain.air.Corrected;
import fairpull.domain.air.FactorUncertainty;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Units;
import java.util.Optional;

/** A correction in words. */
public final class AirWords {
    private AirWords() {
    }

    /**
     * {@return the answer, one paragraph a line}
     *
     * @param corrected the factor and what belongs to it
     * @param value a value in hand
     * @param guessed whether an uncertainty is a starting guess
     */
    public static String paragraphs(Corrected corrected, Optional<Amount> value, boolean guessed) {
        StringBuilder text = new StringBuilder(factor(corrected)).append('\n');
        value.ifPresent(amount -> text.append(value(corrected, amount)).append('\n'));
        text.append(air(corrected.air())).append('\n');
        if (corrected.standard().correction() != Correction.NONE) {
            text.append(uncertainty(corrected.uncertainty(), guessed)).append('\n');
        }
        return text.toString();
    }

    private static String factor(Corrected corrected) {
        String own = corrected.standard().correction() == Correction.NONE ? "As measured"
                : "Factor by " + PlanWords.standard(corrected.standard().correction()) + ": " + fixed(corrected.factor(), 5, "") + " ("
                + signedPercent(corrected.factor() - 1) + ")";
        String undone = corrected.from().map(from -> "; from " + PlanWords.standard(from.standard().correction())
                + ", whose factor here is " + fixed(from.factor(), 5, "") + " and is undone first, multiply by "
                + fixed(corrected.multiplier(), 5, "")).orElse("");
        return own + undone + ".";
    }

    private static String value(Corrected corrected, Amount value) {
        String unit = value.unit().symbol();
        String given = Numbers.given(value.value(), unit);
        String start = corrected.from().map(undone -> given + " by " + PlanWords.standard(undone.standard().correction())
                + " were measured as " + fixed(value.value() / undone.factor(), 2, unit) + " and are ").orElse(given + " measured are ");
        return start + fixed(value.value() * corrected.multiplier(), 2, unit) + (corrected.standard().correction() == Correction.NONE
                ? " as measured." : " by " + PlanWords.standard(corrected.standard().correction()) + ".");
    }

    private static String air(AirFigures air) {
        String dew = Double.isNaN(air.dewPointK()) ? "" : ", dew point " + celsius(air.dewPointK());
        return "Air at the rig: " + celsius(air.state().temperatureK()) + ", " + hectopascal(air.state().pressurePa()) + ", of which "
                + hectopascal(air.state().vapourPressurePa()) + " is vapour (" + fixed(100 * air.relativeHumidity(), 0, "%")
                + " relative humidity" + dew + ") and " + hectopascal(air.state().dryPressurePa()) + " dry; "
                + fixed(air.densityKgM3(), 4, "kg/m³") + "; density altitude " + height(air.densityAltitudeM()) + ".";
    }

    private static String uncertainty(FactorUncertainty uncertainty, boolean guessed) {
        String simulated = uncertainty.simulatedSingle().isEmpty() ? "" : " By Monte Carlo: "
                + percent(uncertainty.simulatedSingle().getAsDouble()) + " for one factor, "
                + percent(uncertainty.simulatedSameSession().orElseThrow()) + " within a session.";
        return "Sensors leave the factor uncertain by " + percent(uncertainty.single()) + " (one standard uncertainty; temperature "
                + percent(uncertainty.temperature()) + ", pressure " + percent(uncertainty.pressure()) + ", humidity "
                + percent(uncertainty.humidity()) + "). Their errors mostly cancel between two pulls of one session, which leaves "
                + percent(uncertainty.sameSession()) + " in a back-to-back difference; across days they do not, which leaves "
                + percent(uncertainty.acrossDays()) + "." + simulated
                + (guessed ? " Uncertainties that were not given are starting guesses." : "");
    }

    /** {@return a number with so many decimals, and its unit} */
    static String fixed(double value, int decimals, String unit) {
        return Numbers.resolving(2 * Math.pow(10, 1 - decimals), unit).with(value);
    }

    /** {@return a share as percent, two decimals} */
    static String percent(double share) {
        return fixed(100 * share, 2, "%");
    }

    private static String signedPercent(double share) {
        return Numbers.resolving(0.2, "%").signed(100 * share);
    }

    /** {@return a temperature in °C} */
    static String celsius(double kelvin) {
        return fixed(Units.CELSIUS.fromSi(kelvin), 1, "°C");
    }

    /** {@return a pressure in hPa} */
    static String hectopascal(double pascal) {
        return fixed(pascal / 100, 1, "hPa");
    }

    /** {@return a height in m and ft} */
    static String height(double metres) {
        return fixed(metres, 0, "m") + " (" + fixed(Units.FOOT.fromSi(metres), 0, "ft") + ")";
    }
}
