package fairpull.app.usecase.pulls;

import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.io.table.ColumnChoice;
import fairpull.io.table.GuessedColumn;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which measures of a plan an export has columns for, and what would serve where it has none. */
final class MeasureColumns {
    /** What exports are mostly written in. Common practice, no source. */
    private static final Map<Quantity, Unit> USUAL = Map.of(Quantity.POWER, Units.KILOWATT, Quantity.SPEED, Units.KM_PER_HOUR,
            Quantity.FRACTION, Units.PERCENT);

    private final Plan plan;
    private final Set<Quantity> known;
    private final Surface surface;

    private MeasureColumns(Plan plan, Set<Quantity> known, Surface surface) {
        this.surface = surface;
        this.plan = plan;
        this.known = known;
    }

    /** {@return for each measure that cannot be read what is missing and what would serve, in the order of the plan} */
    static List<String> missing(Plan plan, List<Measure> measures, Set<Quantity> known, Surface surface) {
        Set<Quantity> there = known.isEmpty() ? EnumSet.noneOf(Quantity.class) : EnumSet.copyOf(known);
        return new MeasureColumns(plan, there, surface).sentences(measures);
    }

    private List<String> sentences(List<Measure> measures) {
        List<String> sentences = new ArrayList<>();
        for (Measure measure : measures) {
            List<Quantity> absent = needed(measure.definition()).stream().filter(quantity -> !serves(quantity)).toList();
            if (!absent.isEmpty()) {
                sentences.add("no column is taken as " + absent.stream().map(GuessedColumn::words).collect(Collectors.joining(", none as "))
                        + ", so “" + measure.name() + "” cannot be read; "
                        + new Remedy("name " + (absent.size() == 1 ? "it: " : "them: ")
                        + absent.stream().map(quantity -> option(quantity, measure)).collect(Collectors.joining(" ")),
                        "choose " + (absent.size() == 1 ? "it" : "them") + " in the list of columns").on(surface)
                        + absent.stream().map(MeasureColumns::instead).collect(Collectors.joining()));
            }
        }
        return sentences;
    }

    /** A peak is looked for in all rows where there is no engine speed. */
    private static Set<Quantity> needed(Definition definition) {
        return definition instanceof Definition.Peak ? EnumSet.of(definition.quantity()) : definition.channels();
    }

    private boolean serves(Quantity quantity) {
        boolean byTheOther = known.contains(Quantity.ENGINE_SPEED)
                && (quantity == Quantity.POWER && known.contains(Quantity.TORQUE)
                || quantity == Quantity.TORQUE && known.contains(Quantity.POWER));
        boolean byMotion = plan.rig().movingMass().isPresent() && (quantity == Quantity.POWER || quantity == Quantity.TORQUE)
                && known.contains(Quantity.SPEED) && known.contains(Quantity.TIME);
        return known.contains(quantity) || byTheOther || byMotion;
    }

    private static String option(Quantity quantity, Measure measure) {
        Unit unit = measure.unit().quantity() == quantity ? measure.unit() : USUAL.getOrDefault(quantity, Units.of(quantity).get(0));
        return "--column " + ColumnChoice.id(quantity) + "=\"its header\":" + unit.symbol();
    }

    private static String instead(Quantity quantity) {
        return quantity == Quantity.POWER ? "; torque with engine speed would serve for power"
                : quantity == Quantity.TORQUE ? "; power with engine speed would serve for torque" : "";
    }
}
