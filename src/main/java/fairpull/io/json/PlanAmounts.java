package fairpull.io.json;

import com.fasterxml.jackson.databind.JsonNode;
import fairpull.domain.InputException;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Amounts with a unit, typed for a place of the plan: which quantity that place holds, and the amount in SI. */
final class PlanAmounts {
    /** Sizes and differences: the zero of a unit does not count there. */
    private static final Set<String> DIFFERENCES = Set.of("worthwhileGainSi", "standardDeviationSi", "atLeastSi", "toleranceSi",
            "uncertaintySi");

    private final Plan plan;

    PlanAmounts(Plan plan) {
        this.plan = plan;
    }

    /**
     * Returns the amount in SI.
     *
     * @param place the place as it was typed, its last step the name of the field
     * @param parent what the field stands in
     * @throws InputException if the amount's unit does not belong there
     */
    double si(String place, JsonNode parent, Amount amount) {
        String[] steps = place.split("\\.");
        String field = steps[steps.length - 1];
        Unit unit = unit(field, steps, parent).orElseThrow(() -> misplaced(place, amount, "that place takes a number without a unit"));
        if (amount.unit().equals(Units.PERCENT) && unit.quantity() != Quantity.FRACTION) {
            return amount.si() * level(place, field, parent, amount);
        }
        boolean fits = unit.quantity() == Quantity.OTHER ? unit.equals(amount.unit()) : unit.quantity() == amount.unit().quantity();
        if (!fits) {
            throw misplaced(place, amount, "give it in a unit of " + unit.quantity().words() + ", such as " + unit.symbol());
        }
        return DIFFERENCES.contains(field) ? amount.differenceSi() : amount.si();
    }

    /** {@return a unit of the quantity that a field holds; empty where it holds a bare number} */
    private Optional<Unit> unit(String field, String[] steps, JsonNode parent) {
        return switch (field) {
            case "pullIntervalS", "swapS", "setUpS", "lengthS" -> Optional.of(Units.MINUTE);
            case "lowRadPerS", "highRadPerS", "speedRadPerS", "fromRadPerS", "toRadPerS", "stepRadPerS", "bandwidthRadPerS", "tipInRadPerS",
                    "liftOffRadPerS" ->
                    Optional.of(Units.RPM);
            case "tipInS", "liftOffS", "windowS" -> Optional.of(Units.SECOND);
            case "massKg", "massUncertaintyKg" -> Optional.of(Units.KILOGRAM);
            case "tyrePressurePa" -> Optional.of(Units.BAR);
            case "worthwhileGainSi", "expectedLevelSi", "standardDeviationSi" -> Optional.of(plan.question().deciding().unit());
            case "atLeastSi" -> plan.question().measures().stream().filter(one -> one.name().equals(parent.path("measure").asText()))
                    .map(Measure::unit).findFirst();
            case "fromSi", "toSi" -> of(parent.path("speed").asText());
            case "uncertaintySi" -> of(parent.path("quantity").asText());
            case "toleranceSi", "lowSi", "highSi" -> gate(steps).map(Gate::condition).map(Condition::quantity).flatMap(PlanAmounts::of);
            default -> Optional.empty();
        };
    }

    private Optional<Gate> gate(String[] steps) {
        return Optional.of(steps[1]).filter(step -> step.matches("\\d{1,4}")).map(Integer::valueOf)
                .filter(index -> index < plan.gates().size()).map(plan.gates()::get);
    }

    private static Optional<Unit> of(String quantity) {
        for (Quantity known : Quantity.values()) {
            if (known.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(quantity)) {
                return of(known);
            }
        }
        return Optional.empty();
    }

    private static Optional<Unit> of(Quantity quantity) {
        return Units.of(quantity).stream().findFirst();
    }

    /** A percentage is one of the expected level of the deciding measure. */
    private double level(String place, String field, JsonNode parent, Amount amount) {
        boolean ofDeciding = DIFFERENCES.contains(field) && !field.equals("toleranceSi") && !field.equals("uncertaintySi")
                && (!field.equals("atLeastSi") || parent.path("measure").asText().equals(plan.question().deciding().name()));
        if (!ofDeciding || plan.question().expectedLevelSi().isEmpty()) {
            throw misplaced(place, amount, "a percentage needs an expected level of the deciding measure; give the amount in its unit");
        }
        return plan.question().expectedLevelSi().getAsDouble();
    }

    private static InputException misplaced(String place, Amount amount, String remedy) {
        return new InputException(InputException.Place.none(), place + " is not given in “" + amount.unit().symbol() + "”", remedy);
    }
}
