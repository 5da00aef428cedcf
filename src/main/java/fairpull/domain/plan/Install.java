package fairpull.domain.plan;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * One fitting of A or B with its own strap-down: the experimental unit.
 *
 * @param label {@code A1}, {@code B1} …: the part's letter and a number, unique in the plan
 * @param part what is fitted
 * @param countedPulls pulls that count
 * @param warmUpPulls pulls run first to reach thermal state, never counted
 * @param unstrapped whether the swap into this install needs unstrapping
 */
public record Install(String label, Part part, int countedPulls, int warmUpPulls, boolean unstrapped) {
    private static final Pattern LABEL = Pattern.compile("[AB][1-9]\\d{0,2}");

    public Install {
        Objects.requireNonNull(part, "the part of an install");
        if (label == null || !LABEL.matcher(label).matches() || label.charAt(0) != part.name().charAt(0)) {
            throw new IllegalArgumentException("an install of part " + part + " is labelled " + part + "1, " + part + "2 …, not " + label);
        }
        if (countedPulls < 1 || countedPulls > 1000) {
            throw new IllegalArgumentException("install " + label + " needs 1 to 1000 counted pulls, has " + countedPulls);
        }
        if (warmUpPulls < 0 || warmUpPulls > 100) {
            throw new IllegalArgumentException("install " + label + " needs 0 to 100 warm-up pulls, has " + warmUpPulls);
        }
    }
}
