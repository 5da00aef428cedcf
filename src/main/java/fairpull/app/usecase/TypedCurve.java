package fairpull.app.usecase;

import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.ScoredWindow;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How pulls become curves, as a person types it. */
final class TypedCurve {
    private TypedCurve() {
    }

    /** {@return the settings; empty where nothing is typed} */
    static Optional<CurveSettings> of(OptionalDouble bandwidth, List<String> tipIn, List<String> liftOff) {
        Optional<ScoredWindow> scored = tipIn.isEmpty() && liftOff.isEmpty() ? Optional.empty()
                : Optional.of(new ScoredWindow(dropped("--tip-in", tipIn, Quantity.ENGINE_SPEED), dropped("--tip-in", tipIn, Quantity.TIME),
                        dropped("--lift-off", liftOff, Quantity.ENGINE_SPEED), dropped("--lift-off", liftOff, Quantity.TIME)));
        return bandwidth.isEmpty() && scored.isEmpty() ? Optional.empty()
                : Optional.of(new CurveSettings(bandwidth, Optional.empty(), scored));
    }

    private static OptionalDouble dropped(String option, List<String> typed, Quantity wanted) {
        List<Amount> amounts = typed.stream().map(text -> amount(option, text))
                .filter(amount -> amount.unit().quantity() == wanted).toList();
        if (amounts.size() > 1) {
            throw new UsageException(option, "two amounts of " + wanted.words() + " are given");
        }
        return amounts.stream().mapToDouble(Amount::differenceSi).findFirst();
    }

    private static Amount amount(String option, String text) {
        return Amount.parse(text).filter(typed -> typed.value() > 0)
                .filter(typed -> typed.unit().quantity() == Quantity.ENGINE_SPEED || typed.unit().quantity() == Quantity.TIME)
                .orElseThrow(() -> new UsageException(option, "expected an engine speed or a time above 0, such as 300rpm or 0.5s; found “"
                        + text + "”"));
    }
}
