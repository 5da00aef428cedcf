package fairpull.io.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairpull.domain.InputException;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sequence;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.PlainNumber;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** The plan file, and the places within it that an amendment changes. */
public final class PlanJson {
    /** The version of the file format that this program writes, and the only one there is so far. */
    public static final int SCHEMA_VERSION = 1;

    /** Fields that a plan may get later; where they do not belong they are refused as any unknown field is. */
    private static final Set<String> ABSENT_UNTIL_PLANNED = Set.of("hours", "curve", "scored", "tipInRadPerS", "tipInS",
            "liftOffRadPerS", "liftOffS", "movingMass", "coastDown",
            "speedRadPerS");

    private PlanJson() {
    }

    private record PlanFile(int schemaVersion, String title, String remark, Question question, Analysis analysis, Rig rig,
            Sequence sequence, List<Gate> gates, List<String> checklist,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Looks> looks,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<CurveSettings> curve) {
        /** What a plan refuses is refused while the file is read, so that its line is known. */
        PlanFile {
            looks = looks == null ? Optional.empty() : looks;
            curve = curve == null ? Optional.empty() : curve;
            new Plan(title, remark, question, analysis, rig, sequence, gates, checklist, looks, curve);
        }

        Plan plan() {
            return new Plan(title, remark, question, analysis, rig, sequence, gates, checklist, looks, curve);
        }
    }

    /** {@return the plan in a text; {@code file} is for messages} */
    public static Plan read(String text, String file) {
        checkVersion(JsonFiles.tree(text, file), file);
        return JsonFiles.read(text, PlanFile.class, file, 1).plan();
    }

    /** {@return the plan for people to read, indented} */
    public static String indented(Plan plan) {
        return JsonFiles.indented(file(plan));
    }

    /** {@return the canonical plan: UTF-8, keys sorted, no blanks, numbers as shortest plain decimals} */
    public static String canonical(Plan plan) {
        return JsonFiles.canonical(file(plan));
    }

    /**
     * Returns a plan with one place changed.
     *
     * @param place field names and list positions joined by dots, such as {@code sequence.sessions.0.installs.2.countedPulls}
     * @param value JSON, or an amount with its unit (stored in SI), or plain text
     */
    public static Plan with(Plan plan, String place, String value) {
        ObjectNode tree = Mapper.strict().valueToTree(file(plan));
        String[] steps = place.split("\\.", -1);
        JsonNode parent = tree;
        for (int i = 0; i < steps.length - 1; i++) {
            parent = child(parent, steps[i]);
        }
        String last = steps[steps.length - 1];
        JsonNode scope = parent;
        if (child(parent, last).isMissingNode() && !(parent instanceof ObjectNode && ABSENT_UNTIL_PLANNED.contains(last))) {
            throw new InputException(InputException.Place.none(), "the plan has no place “" + place + "”",
                    "give it as in plan.json, such as sequence.sessions.0.installs.2.countedPulls");
        }
        JsonNode changed = parse(value, child(parent, last), amount -> new PlanAmounts(plan).si(place, scope, amount));
        if (parent instanceof ObjectNode object) {
            object.set(last, changed);
        } else if (parent instanceof ArrayNode array) {
            array.set(Integer.parseInt(last), changed);
        }
        return JsonFiles.read(tree, PlanFile.class, "the amended plan").plan();
    }

    /** {@return the places in which two plans differ} */
    public static List<LogEntry.Change> changes(Plan before, Plan after) {
        List<LogEntry.Change> changes = new ArrayList<>();
        collect("", Mapper.strict().valueToTree(file(before)), Mapper.strict().valueToTree(file(after)), changes);
        return changes;
    }

    /** {@return the same changes field by field: what came or went as a whole is taken apart} */
    public static List<LogEntry.Change> fields(List<LogEntry.Change> changes) {
        List<LogEntry.Change> fields = new ArrayList<>();
        for (LogEntry.Change change : changes) {
            Map<String, String> before = leaves(change.place(), change.before());
            Map<String, String> after = leaves(change.place(), change.after());
            Set<String> places = new LinkedHashSet<>(before.keySet());
            places.addAll(after.keySet());
            places.removeIf(place -> before.getOrDefault(place, "").equals(after.getOrDefault(place, "")));
            places.forEach(place -> fields.add(new LogEntry.Change(place, before.getOrDefault(place, ""), after.getOrDefault(place, ""))));
            if (places.isEmpty()) {
                fields.add(change);
            }
        }
        return fields;
    }

    /** A text that is no JSON stays as it is: the log is a stranger's. */
    private static Map<String, String> leaves(String place, String json) {
        Map<String, String> leaves = new LinkedHashMap<>();
        try {
            leaves(place, json.isBlank() ? Mapper.strict().getNodeFactory().nullNode() : Mapper.strict().readTree(json), leaves);
        } catch (JsonProcessingException noJson) {
            leaves.put(place, json);
        }
        return leaves;
    }

    private static void leaves(String place, JsonNode node, Map<String, String> into) {
        if (node.isObject()) {
            node.properties().forEach(field -> leaves(join(place, field.getKey()), field.getValue(), into));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                leaves(join(place, String.valueOf(i)), node.path(i), into);
            }
        } else if (!node.isNull()) {
            into.put(place, JsonFiles.canonical(node));
        }
    }

    private static void checkVersion(JsonNode tree, String file) {
        JsonNode version = tree.path("schemaVersion");
        if (!version.isInt()) {
            throw new InputException(InputException.Place.of(file), "no schemaVersion: this is not a plan",
                    "a plan begins with \"schemaVersion\": " + SCHEMA_VERSION);
        }
        if (version.intValue() != SCHEMA_VERSION) {
            throw new InputException(InputException.Place.of(file),
                    "schema version " + version.intValue() + " is not known to this program, which reads version " + SCHEMA_VERSION,
                    "use the version of the program that wrote it, or a newer one");
        }
    }

    private static JsonNode child(JsonNode parent, String step) {
        return parent.isArray() && step.matches("\\d{1,4}") ? parent.path(Integer.parseInt(step)) : parent.path(step);
    }

    private static JsonNode parse(String value, JsonNode present, ToDoubleFunction<Amount> toSi) {
        if (present.isNumber() || present.isNull() || present.isMissingNode()) {
            Optional<Amount> amount = Amount.parse(value).filter(typed -> !typed.isBare());
            if (amount.isPresent()) {
                return Mapper.strict().getNodeFactory().numberNode(PlainNumber.shortest(toSi.applyAsDouble(amount.get())));
            }
        }
        if (present.isTextual() || value.isBlank()) {
            return Mapper.strict().getNodeFactory().textNode(value);
        }
        try {
            return Mapper.strict().readTree(value);
        } catch (JsonProcessingException plainText) {
            return Mapper.strict().getNodeFactory().textNode(value);
        }
    }

    private static void collect(String place, JsonNode before, JsonNode after, List<LogEntry.Change> changes) {
        if (before.equals(after)) {
            return;
        }
        if (before.isObject() && after.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            before.fieldNames().forEachRemaining(names::add);
            after.fieldNames().forEachRemaining(names::add);
            names.forEach(name -> collect(join(place, name), before.path(name), after.path(name), changes));
        } else if (before.isArray() && after.isArray()) {
            for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
                collect(join(place, String.valueOf(i)), before.path(i), after.path(i), changes);
            }
        } else {
            changes.add(new LogEntry.Change(place, text(before), text(after)));
        }
    }

    private static String join(String place, String step) {
        return place.isEmpty() ? step : place + "." + step;
    }

    private static String text(JsonNode node) {
        return node.isMissingNode() ? "" : JsonFiles.canonical(node);
    }

    private static PlanFile file(Plan plan) {
        return new PlanFile(SCHEMA_VERSION, plan.title(), plan.remark(), plan.question(), plan.analysis(), plan.rig(), plan.sequence(),
                plan.gates(), plan.checklist(), plan.looks(), plan.curve());
    }
}
