package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.ScoredWindow;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How pulls become curves, as a person types it. */
final class TypedCurve {
    private static final Pattern GRID = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?)\\s?[-–]\\s?(\\d{1,6}(?:\\.\\d{1,3})?)\\s?(?:rpm)?\\s?/"
            + "\\s?(\\d{1,6}(?:\\.\\d{1,3})?)\\s?(?:rpm)?");

    private TypedCurve() {
    }

    /** {@return the settings; empty where nothing is typed} */
    static Optional<CurveSettings> of(OptionalDouble bandwidth, NewPlan.CurveTyped typed) {
        Optional<ScoredWindow> scored = typed.tipIn().isEmpty() && typed.liftOff().isEmpty() ? Optional.empty()
                : Optional.of(new ScoredWindow(dropped("--tip-in", typed.tipIn(), Quantity.ENGINE_SPEED),
                        dropped("--tip-in", typed.tipIn(), Quantity.TIME),
                        dropped("--lift-off", typed.liftOff(), Quantity.ENGINE_SPEED),
                        dropped("--lift-off", typed.liftOff(), Quantity.TIME)));
        Optional<CurveSettings.Grid> grid = Optional.ofNullable(typed.grid()).map(TypedCurve::grid);
        return bandwidth.isEmpty() && scored.isEmpty() && grid.isEmpty() ? Optional.empty()
                : Optional.of(new CurveSettings(bandwidth, grid, scored));
    }

    private static CurveSettings.Grid grid(String text) {
        Matcher typed = GRID.matcher(text.strip());
        if (!typed.matches()) {
            throw refused("expected engine speeds as FROM-TO/STEP in rpm, such as 3000-6500/50; found “" + text + "”");
        }
        double from = Double.parseDouble(typed.group(1));
        double to = Double.parseDouble(typed.group(2));
        double step = Double.parseDouble(typed.group(3));
        if (from <= 0 || step <= 0) {
            throw refused("the first speed and the step are above 0 rpm; found “" + text + "”");
        }
        if (to - from < step) {
            throw refused("from " + typed.group(1) + " to " + typed.group(2) + " rpm there is no room for one step of " + typed.group(3)
                    + " rpm");
        }
        if ((to - from) / step + 1 > SpeedGrid.MOST) {
            throw refused("that is more than " + SpeedGrid.MOST + " speeds; take a wider step");
        }
        return new CurveSettings.Grid(Units.RPM.toSi(from), Units.RPM.toSi(to), Units.RPM.toSi(step));
    }

    private static UsageException refused(String why) {
        return new UsageException("--grid", why);
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
