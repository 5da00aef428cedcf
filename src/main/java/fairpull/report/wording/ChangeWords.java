package fairpull.report.wording;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.LogEntry.Change;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.report.wording.PlanFields.Field;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Changes of a plan, one field at a time: what it is called, what stood there and what stands there now, each with its unit. */
public final class ChangeWords {
    private static final int LONGEST = 160;
    private static final String NOTHING = "nothing";

    private final Plan plan;
    private final List<Change> all;

    /**
     * Words for the changes of a plan.
     *
     * @param plan the plan as it is now, from which units are told
     * @param all every change that led to it: where one of them changed what a value is read in, the value stands in SI
     */
    public ChangeWords(Plan plan, List<Change> all) {
        this.plan = plan;
        this.all = List.copyOf(all);
    }

    /** {@return what the field at a place is called} */
    public static String name(String place) {
        return PlanFields.at(place).map(Field::words).orElse(place);
    }

    /** {@return the field, what stood there and what stands there now} */
    public String sentence(Change change) {
        return name(change.place()) + ": " + value(change.place(), change.before()) + " → " + value(change.place(), change.after());
    }

    private String value(String place, String json) {
        if (json.isBlank() || json.equals("null") || json.equals("[]") || json.equals("{}")) {
            return NOTHING;
        }
        String text = isText(json) ? json.substring(1, json.length() - 1).replace("\\\"", "\"") : json;
        String shown = PlanFields.at(place).map(field -> value(place, field, text)).orElse(json);
        return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
    }

    private static boolean isText(String json) {
        return json.length() > 1 && json.startsWith("\"") && json.endsWith("\"");
    }

    private String value(String place, Field field, String text) {
        return switch (field.kind()) {
            case TEXT -> text.isBlank() ? NOTHING : "“" + text + "”";
            case WORD -> text.replace('-', ' ');
            case STANDARD -> standard(text);
            case YES_NO -> text.equals("true") ? "yes" : "no";
            case COUNT -> text.equals("inf") ? "known" : text;
            default -> text.matches("-?[\\d.]+(E-?\\d+)?") ? amount(place, field, Double.parseDouble(text)) : text;
        };
    }

    private static String standard(String id) {
        return PlanWords.standard(Correction.valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_')));
    }

    private String amount(String place, Field field, double si) {
        return PlanFields.printed(field.kind(), si).orElseGet(() -> switch (field.kind()) {
            case LEVEL -> of(deciding(), si, false);
            case GAIN -> of(deciding(), si, true);
            case CLAIMED -> of(claimed(field.position()), si, true);
            case TIMED_SPEED -> of(timed(place, field.position()), si, false);
            case GATE -> of(gate(field.position()), si, false);
            case GATE_WIDTH -> of(gate(field.position()).map(ChangeWords::ofDifferences), si, true);
            case SENSOR -> of(sensor(field.position()), si, true);
            default -> Numbers.given(si);
        });
    }

    private static String of(Optional<Unit> unit, double si, boolean difference) {
        return unit.map(known -> Numbers.given(difference ? known.differenceFromSi(si) : known.fromSi(si), known.symbol()))
                .orElseGet(() -> Numbers.given(si) + " in SI units");
    }

    /** Between two temperatures in °C lie kelvins. */
    private static Unit ofDifferences(Unit unit) {
        return unit.equals(Units.CELSIUS) ? Units.KELVIN : unit;
    }

    private Optional<Unit> deciding() {
        return unlessChanged("question.deciding.", plan.question().deciding().unit());
    }

    private Optional<Unit> claimed(int position) {
        boolean there = position < plan.question().claims().size() && !touched("question.deciding.") && !touched("question.further.")
                && !touched("question.claims." + position + ".measure");
        return there ? plan.question().measures().stream()
                .filter(measure -> measure.name().equals(plan.question().claims().get(position).measure())).map(Measure::unit).findFirst()
                : deciding();
    }

    private Optional<Unit> timed(String place, int position) {
        List<Measure> further = plan.question().further();
        Definition definition = position < 0 ? plan.question().deciding().definition()
                : position < further.size() ? further.get(position).definition() : plan.question().deciding().definition();
        return definition instanceof Definition.Elapsed elapsed
                ? unlessChanged(place.substring(0, place.lastIndexOf('.')) + ".speed",
                        elapsed.speed() == Quantity.ENGINE_SPEED ? Units.RPM : Units.KM_PER_HOUR)
                : Optional.empty();
    }

    private Optional<Unit> gate(int position) {
        List<Gate> gates = plan.gates();
        return position >= gates.size() ? Optional.empty()
                : unlessRemoved("gates." + position + ".condition", PlanWords.unitOf(gates.get(position).condition()));
    }

    private Optional<Unit> sensor(int position) {
        return position >= plan.rig().sensors().size() ? Optional.empty()
                : unlessRemoved("rig.sensors." + position + ".quantity", switch (plan.rig().sensors().get(position).quantity()) {
                    case TEMPERATURE -> Units.KELVIN;
                    case PRESSURE -> PlanWords.unitOf(Condition.BAROMETER);
                    case FRACTION -> Units.PERCENT;
                    default -> Units.of(plan.rig().sensors().get(position).quantity()).stream().findFirst().orElse(Units.ONE);
                });
    }

    private Optional<Unit> unlessChanged(String place, Unit unit) {
        return touched(place) ? Optional.empty() : Optional.of(unit);
    }

    /** What joined the plan as a whole was never read in anything else. */
    private Optional<Unit> unlessRemoved(String place, Unit unit) {
        return all.stream().anyMatch(change -> change.place().equals(place) && !change.before().isBlank())
                ? Optional.empty() : Optional.of(unit);
    }

    /** A new name changes no unit. */
    private boolean touched(String prefix) {
        return all.stream().anyMatch(change -> change.place().startsWith(prefix) && !change.place().endsWith(".name")
                && !change.place().endsWith("RadPerS"));
    }
}
