package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Plausible;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Values that no engine and no roller gives, in any row of a pull, a warm-up too: a size beyond {@link Plausible}, or a channel that
 * is never above zero and somewhere below it (a sign turned round, a roller that ran backwards, a column of something else).
 */
public final class ValuesPlausible extends EachPull {
    private static final List<Quantity> LOOKED_AT = List.of(Quantity.POWER, Quantity.TORQUE, Quantity.ENGINE_SPEED, Quantity.SPEED);

    public ValuesPlausible() {
        super(Code.VALUES_IMPLAUSIBLE);
    }

    @Override
    boolean looksAt(Traced pull) {
        return super.looksAt(pull) || pull.pull().pull().warmUp();
    }

    @Override
    Optional<Reading> read(Traced pull) {
        return LOOKED_AT.stream().flatMap(quantity -> pull.find(quantity).flatMap(values -> of(quantity, values, pull.unit(quantity)))
                .stream()).max(Comparator.comparing(Reading::raised).thenComparing(Reading::weight));
    }

    private static Optional<Reading> of(Quantity quantity, Samples values, Unit unit) {
        double most = Plausible.mostSi(quantity).orElseThrow();
        double largest = -1;
        boolean anyAboveZero = false;
        for (int row = 0; row < values.size(); row++) {
            double value = values.at(row);
            largest = Math.abs(value) > largest ? Math.abs(value) : largest;
            anyAboveZero |= value > 0;
        }
        if (largest < 0) {
            return Optional.empty();
        }
        boolean isNegative = largest > 0 && !anyAboveZero;
        boolean isTooLarge = largest > most;
        String detail = isTooLarge ? symbol(quantity) + " = " + String.format(Locale.ROOT, "%.2g", unit.fromSi(largest)) + " "
                + unit.symbol() : isNegative ? symbol(quantity) + " < 0" : "";
        return Optional.of(new Reading(isTooLarge || isNegative, largest / most, List.of(largest / most), detail));
    }

    private static String symbol(Quantity quantity) {
        return switch (quantity) {
            case POWER -> "P";
            case TORQUE -> "M";
            case ENGINE_SPEED -> "n";
            default -> "v";
        };
    }
}
