package fairpull.app.usecase.pulls;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.keeping.Planned;
import fairpull.app.usecase.typing.ReadingCheck;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.DecimalComma;
import fairpull.domain.unit.Plausible;
import fairpull.domain.unit.Quantity;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Writes down what stands beside a pull: its time, conditions, typed values, an abort, a gate that did not hold, a remark. */
public final class NotePull {
    private static final Map<Quantity, String> EXAMPLES = new EnumMap<>(
            Map.of(Quantity.TEMPERATURE, "24C", Quantity.PRESSURE, "1003hPa", Quantity.FRACTION, "45%"));

    private NotePull() {
    }

    /**
     * What is noted at one pull, as typed.
     *
     * @param pull which one
     * @param startedAt when it started
     * @param conditions readings with their units, by condition
     * @param values values of typed measures with their units, by name of the measure; an empty name is the deciding one
     * @param corrected what a typed power or torque is corrected to
     * @param aborted why it was aborted
     * @param overridden gates that did not hold, each with the reason for going on
     * @param remark anything else
     */
    public record Note(PullId pull, Optional<OffsetDateTime> startedAt, Map<Condition, String> conditions, Map<String, String> values,
            Optional<Correction> corrected, Optional<String> aborted, Map<Condition, String> overridden, Optional<String> remark) {
        /** {@return whether there is nothing to write down} */
        public boolean isEmpty() {
            return startedAt.isEmpty() && conditions.isEmpty() && values.isEmpty() && aborted.isEmpty() && overridden.isEmpty()
                    && remark.isEmpty();
        }
    }

    /** Writes all notes into the log, or none of them. */
    public static void note(Path folder, List<Note> notes, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        List<LogEntry> entries = new ArrayList<>();
        for (Note note : notes) {
            Planned.check(content.plan(), note.pull());
            entries.addAll(entries(note, content.plan(), content.log()));
        }
        test.append(now, entries);
    }

    /** Writes down a remark about the whole test or one install. */
    public static void remark(Path folder, Optional<String> install, String text, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        Plan plan = test.read().plan();
        install.ifPresent(label -> Planned.checkInstall(plan, label));
        test.append(now, List.of(new LogEntry.Remark(install.orElse(""), text)));
    }

    /** {@return what the log says of a note} */
    public static List<LogEntry> entries(Note note, Plan plan, DayLog log) {
        List<LogEntry> entries = new ArrayList<>();
        if (!note.conditions().isEmpty() || note.startedAt().isPresent()) {
            entries.add(new LogEntry.ConditionsNoted(note.pull(), note.startedAt(), readings(note, isCorrected(plan))));
        }
        if (!note.values().isEmpty()) {
            entries.add(typed(note, plan, log));
        }
        note.aborted().ifPresent(reason -> {
            if (log.pulls().containsKey(note.pull())) {
                throw new InputException(Place.none(), "pull " + note.pull() + " came in; it was not aborted",
                        new Remedy("leave it out with `fairpull exclude`", "leave it out beneath the table of pulls"));
            }
            entries.add(new LogEntry.PullAborted(note.pull(), reason));
        });
        note.overridden().forEach((condition, reason) -> entries.add(new LogEntry.GateOverridden(note.pull(), condition, reason)));
        note.remark().ifPresent(text -> entries.add(new LogEntry.Remark(note.pull().toString(), text)));
        return entries;
    }

    private static Map<Condition, Double> readings(Note note, boolean corrected) {
        Map<Condition, Double> readings = new EnumMap<>(Condition.class);
        note.conditions().forEach((condition, text) -> {
            Amount amount = Amount.parse(text).filter(typed -> typed.unit().quantity() == condition.quantity() && !typed.isBare())
                    .filter(typed -> isPossible(condition.quantity(), typed.si()))
                    .orElseThrow(() -> new InputException(Place.none(), "pull " + note.pull() + ": " + DecimalComma.in(text)
                            .orElse("“" + text + "” is no reading of " + condition.words()),
                            "give a number with a unit, such as " + EXAMPLES.get(condition.quantity())));
            readings.put(condition, checked(condition, amount, note.pull(), corrected));
        });
        return readings;
    }

    private static boolean isPossible(Quantity quantity, double si) {
        return quantity == Quantity.FRACTION || si > 0 && Double.isFinite(si);
    }

    private static boolean isCorrected(Plan plan) {
        return plan.question().measures().stream().anyMatch(measure -> measure.correction() != Correction.NONE);
    }

    /** Where values are corrected, intake air is that of the weather; elsewhere it may be the air of a hot manifold. */
    private static double checked(Condition condition, Amount amount, PullId pull, boolean corrected) {
        ReadingCheck check = new ReadingCheck(Place.of("pull " + pull));
        return switch (condition) {
            case INTAKE_AIR -> corrected ? check.temperature(amount) : amount.si();
            case BAROMETER -> check.pressure(amount);
            case HUMIDITY -> check.humidity(amount);
            default -> amount.si();
        };
    }

    /** A typed value joins what came in with the pull's export, if there is one; it never replaces a value. */
    private static LogEntry.PullTaken typed(Note note, Plan plan, DayLog log) {
        LogEntry.PullTaken present = log.pulls().get(note.pull());
        Map<String, Double> typedSi = new TreeMap<>(present == null ? Map.of() : present.typedSi());
        note.values().forEach((name, text) -> {
            Measure measure = measure(plan, name);
            double level = Typed.levelSi("--value", text, measure);
            if (!(Math.abs(level) <= Plausible.mostSi(measure.unit().quantity()).orElse(Double.MAX_VALUE))) {
                throw new InputException(Place.none(), "pull " + note.pull() + ": no roller measures “" + text + "”",
                        "look at the number and its unit");
            }
            if (typedSi.putIfAbsent(measure.name(), level) != null) {
                throw new InputException(Place.none(), "pull " + note.pull() + " has a value of " + measure.name() + " already",
                        "a value is never replaced; exclude the pull with a reason");
            }
        });
        return present == null
                ? new LogEntry.PullTaken(note.pull(), note.startedAt(), "", Optional.empty(), "", "", "", note.corrected(), typedSi,
                        Optional.empty())
                : new LogEntry.PullTaken(note.pull(), present.startedAt(), present.file(), present.numberInFile(),
                        present.fileSha256(), present.mapping(), present.mappingSha256(), present.corrected(), typedSi,
                        Optional.empty());
    }

    private static Measure measure(Plan plan, String name) {
        Measure measure = name.isEmpty() ? plan.question().deciding() : plan.question().measures().stream()
                .filter(one -> one.name().equalsIgnoreCase(name)).findFirst()
                .orElseThrow(() -> new UsageException("--value", "“" + name + "” is not a measure of this plan, which has "
                        + String.join(", ", plan.question().measures().stream().map(Measure::name).toList())));
        if (!(measure.definition() instanceof Definition.Typed)) {
            throw new UsageException("--value", measure.name() + " is read from exports; import the pull's export");
        }
        return measure;
    }
}
