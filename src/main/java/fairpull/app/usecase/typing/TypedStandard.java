package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.air.FuelDelivery;
import fairpull.domain.air.Induction;
import fairpull.domain.air.Standard;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A standard as it is typed, with what it needs beside the air.
 *
 * @param standard to which one
 * @param from what the values are already corrected to
 * @param efficiency mechanical efficiency, for sae-j1349
 * @param induction how the engine gets its air
 * @param fuelRate fuel burnt, for iso-1585-ci like all that follow
 * @param displacement swept volume
 * @param engineSpeed engine speed
 * @param strokes 2 or 4
 * @param boostRatio absolute pressure after the compressor over that before it
 */
public record TypedStandard(Correction standard, Optional<Correction> from, Optional<String> efficiency, Optional<Induction> induction,
        Optional<String> fuelRate, Optional<String> displacement, Optional<String> engineSpeed, Optional<String> strokes,
        Optional<String> boostRatio) {

    /** {@return the standard to correct to} */
    public Standard to() {
        refuseStrangers();
        return complete(standard);
    }

    /** {@return the standard to undo first} */
    public Optional<Standard> undone() {
        return from.map(this::complete);
    }

    private boolean meets(Correction wanted) {
        return standard == wanted || from.filter(wanted::equals).isPresent();
    }

    private void refuseStrangers() {
        if (efficiency.isPresent() && !meets(Correction.SAE_J1349)) {
            throw new UsageException("--efficiency", "belongs to sae-j1349");
        }
        if (!meets(Correction.ISO_1585_CI)) {
            fuelOptions().forEach((option, value) -> {
                if (value.isPresent()) {
                    throw new UsageException(option, "belongs to iso-1585-ci");
                }
            });
        }
    }

    private Map<String, Optional<String>> fuelOptions() {
        Map<String, Optional<String>> options = new LinkedHashMap<>();
        options.put("--fuel-rate", fuelRate);
        options.put("--displacement", displacement);
        options.put("--engine-speed", engineSpeed);
        options.put("--strokes", strokes);
        options.put("--boost-ratio", boostRatio);
        return options;
    }

    private Standard complete(Correction correction) {
        OptionalDouble share = correction == Correction.SAE_J1349 && efficiency.isPresent()
                ? OptionalDouble.of(share(efficiency.get())) : OptionalDouble.empty();
        return new Standard(correction, share, correction == Correction.ISO_1585_CI ? Optional.of(fuel()) : Optional.empty());
    }

    private static double share(String text) {
        return Amount.parse(text).filter(amount -> amount.unit().quantity() == Quantity.FRACTION && amount.si() > 0 && amount.si() <= 1)
                .orElseThrow(() -> new UsageException("--efficiency", "expected a share between 0 and 1, such as 0.85 or 85%; found “"
                        + text + "”")).si();
    }

    private FuelDelivery fuel() {
        refuseMissing();
        Induction kind = induction.orElseThrow();
        double ratio = boostRatio.map(text -> number("--boost-ratio", text)).orElse(1.0);
        if (ratio < 1 || !kind.isBoosted() && ratio != 1) {
            throw new UsageException("--boost-ratio", kind.isBoosted()
                    ? "absolute pressure after the compressor over that before it, so 1 or more; found " + ratio
                    : "a naturally aspirated engine has none; leave it out, or name the --induction");
        }
        double cycle = number("--strokes", strokes.orElseThrow());
        if (cycle != 2 && cycle != 4) {
            throw new UsageException("--strokes", "expected 2 or 4, found " + strokes.get());
        }
        return new FuelDelivery(kind, positive("--fuel-rate", fuelRate.orElseThrow(), Quantity.MASS_FLOW, "8g/s"),
                positive("--displacement", displacement.orElseThrow(), Quantity.VOLUME, "4L"),
                positive("--engine-speed", engineSpeed.orElseThrow(), Quantity.ENGINE_SPEED, "2000rpm"), (int) cycle, ratio);
    }

    /** {@return what has to be given too, as it could be typed; only iso-1585-ci needs anything} */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (meets(Correction.ISO_1585_CI)) {
            boolean boosted = induction.map(Induction::isBoosted).orElse(true);
            add(missing, "--induction turbocharged", induction);
            add(missing, "--fuel-rate 8g/s", fuelRate);
            add(missing, "--displacement 4L", displacement);
            add(missing, "--engine-speed 2000rpm", engineSpeed);
            add(missing, "--strokes 4", strokes);
            add(missing, "--boost-ratio 2", boosted ? boostRatio : Optional.of("1"));
        }
        return missing;
    }

    private static void add(List<String> missing, String example, Optional<?> given) {
        if (given.isEmpty()) {
            missing.add(example);
        }
    }

    private void refuseMissing() {
        if (!missing().isEmpty()) {
            throw new UsageException("iso-1585-ci", "also needs " + String.join(" ", missing()));
        }
    }

    private static double number(String option, String text) {
        return Amount.parse(text).filter(Amount::isBare).orElseThrow(() -> new UsageException(option, "expected a number, found “" + text
                + "”")).value();
    }

    private static double positive(String option, String text, Quantity quantity, String example) {
        double si = ReadingCheck.typed(option, text, quantity, example).si();
        if (!(si > 0)) {
            throw new UsageException(option, "must be above 0, was " + text);
        }
        return si;
    }
}
