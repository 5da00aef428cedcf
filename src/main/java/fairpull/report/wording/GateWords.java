package fairpull.report.wording;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Limits of gates in the units of whoever reads them; rounded, if at all, so that the printed limit is never the looser one. */
public final class GateWords {
    /** More digits than any gauge has, fewer than a conversion is out by. */
    private static final MathContext CLEAN = new MathContext(9);
    private static final int FEWEST_DIGITS = 2;

    private final UnitSystem system;

    /** Words for people who think in a system of units. */
    public GateWords(UnitSystem system) {
        this.system = system;
    }

    /** {@return the symbol of the unit in which a condition is read} */
    public String unit(Condition condition) {
        return PlanWords.unitOf(condition, system).symbol();
    }

    /** {@return the limit in words: {@code 80 to 95 °C}, {@code within ± 2 K of A1-1}} */
    public String limit(Gate gate, String reference) {
        return gate.limit().match(new Gate.Limit.Cases<String>() {
            @Override
            public String window(Gate.Window window) {
                return low(gate, window) + " to " + high(gate, window) + Numbers.THIN + unit(gate.condition());
            }

            @Override
            public String nearReference(Gate.NearReference near) {
                String unit = PlanWords.differenceUnitOf(gate.condition(), system).symbol();
                return "within ±" + Numbers.THIN + tolerance(gate, near) + Numbers.THIN + unit + " of " + reference;
            }
        });
    }

    /** {@return the limit as it stands over a column: {@code 80 – 95}, {@code A1-1 ± 2}} */
    public String brief(Gate gate, String reference) {
        return gate.limit().match(new Gate.Limit.Cases<String>() {
            @Override
            public String window(Gate.Window window) {
                return low(gate, window) + Numbers.THIN + "– " + high(gate, window);
            }

            @Override
            public String nearReference(Gate.NearReference near) {
                return reference + Numbers.THIN + "±" + Numbers.THIN + tolerance(gate, near);
            }
        });
    }

    private String low(Gate gate, Gate.Window window) {
        return rounded(unitOf(gate).fromSi(window.lowSi()), decimals(gate, window.highSi() - window.lowSi()), RoundingMode.CEILING);
    }

    private String high(Gate gate, Gate.Window window) {
        return rounded(unitOf(gate).fromSi(window.highSi()), decimals(gate, window.highSi() - window.lowSi()), RoundingMode.FLOOR);
    }

    private String tolerance(Gate gate, Gate.NearReference near) {
        return rounded(unitOf(gate).differenceFromSi(near.toleranceSi()), decimals(gate, near.toleranceSi()), RoundingMode.FLOOR);
    }

    /** As many as a gauge shows; more where a limit is so narrow that rounding would eat it. */
    private int decimals(Gate gate, double widthSi) {
        double width = unitOf(gate).differenceFromSi(widthSi);
        return Math.max(decimals(gate.condition()), FEWEST_DIGITS - 1 - (int) Math.floor(Math.log10(width)));
    }

    private Unit unitOf(Gate gate) {
        return PlanWords.unitOf(gate.condition(), system);
    }

    private int decimals(Condition condition) {
        return switch (condition) {
            case INTAKE_AIR, COOLANT, OIL, GEARBOX -> 1;
            case TYRE_PRESSURE -> system == UnitSystem.METRIC ? 2 : 1;
            case BAROMETER -> system == UnitSystem.METRIC ? 1 : 2;
            case HUMIDITY -> 0;
        };
    }

    private static String rounded(double value, int decimals, RoundingMode stricter) {
        BigDecimal clean = new BigDecimal(value).round(CLEAN).setScale(decimals, stricter);
        String plain = clean.signum() == 0 ? "0" : clean.stripTrailingZeros().toPlainString();
        return plain.replace('-', '−');
    }
}
