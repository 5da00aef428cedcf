package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.UnitSystem;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.PlanWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gates as people type them: {@code ± 2 K} of the reference pull, or {@code 80 … 95 °C}. */
public final class GateTyping {
    private static final Pattern NEAR = Pattern.compile("(?:±|\\+/-|\\+-)\\s*(.+)");
    private static final Pattern WINDOW = Pattern.compile("([-−]?[\\d.]+)\\s*(?:…|\\.\\.\\.|to|–|-)\\s*([-−]?[\\d.]+\\s*\\S*)");

    private GateTyping() {
    }

    /** {@return the gates of a plan with another limit for one condition; without it for an empty text} */
    public static List<Gate> with(List<Gate> gates, Condition condition, String text, UnitSystem system) {
        List<Gate> others = new ArrayList<>(gates.stream().filter(gate -> gate.condition() != condition).toList());
        limit(condition, text.strip(), system).ifPresent(limit -> others.add(new Gate(condition, limit)));
        others.sort((one, other) -> one.condition().compareTo(other.condition()));
        return others;
    }

    private static Optional<Gate.Limit> limit(Condition condition, String text, UnitSystem system) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Unit usual = PlanWords.unitOf(condition, system);
        Matcher near = NEAR.matcher(text);
        if (near.matches()) {
            Amount tolerance = amount(near.group(1), condition, usual);
            return Optional.of(new Gate.NearReference(tolerance.differenceSi()));
        }
        Matcher window = WINDOW.matcher(text);
        if (window.matches()) {
            Amount high = amount(window.group(2), condition, usual);
            Amount low = new Amount(Double.parseDouble(window.group(1).replace('−', '-')), high.unit());
            return Optional.of(new Gate.Window(low.si(), high.si()));
        }
        throw new UsageException("", "write it as ± 2 K of the reference pull, or as a range such as 80 … 95 °C; empty for no gate");
    }

    private static Amount amount(String text, Condition condition, Unit usual) {
        Amount typed = Amount.parse(text).orElseThrow(() -> new UsageException("", "a number with its unit, found “" + text + "”"));
        Amount amount = typed.isBare() && condition.quantity() != Quantity.FRACTION ? new Amount(typed.value(), usual) : typed;
        if (amount.unit().quantity() != condition.quantity()) {
            throw new UsageException("", "“" + amount.unit().symbol() + "” is no unit of " + condition.words());
        }
        return amount;
    }

    /** {@return the limit of a condition as it stands in its field; empty where there is no gate} */
    public static String text(List<Gate> gates, Condition condition, UnitSystem system) {
        Unit unit = PlanWords.unitOf(condition, system);
        return gates.stream().filter(gate -> gate.condition() == condition).findFirst().map(gate -> gate.limit().match(
                new Gate.Limit.Cases<String>() {
                    @Override
                    public String window(Gate.Window window) {
                        return rounded(unit.fromSi(window.lowSi())) + " … " + rounded(unit.fromSi(window.highSi())) + Numbers.THIN
                                + unit.symbol();
                    }

                    @Override
                    public String nearReference(Gate.NearReference near) {
                        Unit difference = PlanWords.differenceUnitOf(condition, system);
                        return "±" + Numbers.THIN + rounded(difference.differenceFromSi(near.toleranceSi())) + Numbers.THIN
                                + difference.symbol();
                    }
                })).orElse("");
    }

    private static String rounded(double value) {
        double steps = Math.abs(value) >= 1 ? 1e2 : 1e4;
        return Numbers.given(Math.round(value * steps) / steps);
    }
}
