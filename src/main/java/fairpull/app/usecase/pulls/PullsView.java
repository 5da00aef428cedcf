package fairpull.app.usecase.pulls;

import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.PullId;
import fairpull.engine.check.Checklist.Looked;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.CorrectionWords;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.PlanWords;
import fairpull.report.wording.Times;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Every pull of a test as the window shows it, with the values that the judge uses.
 *
 * @param measures the heads of the values, each with its unit
 * @param corrected whether any pull has a factor
 * @param temperature what the start temperature is, with its unit; empty where none was noted
 * @param rows in the order of the plan
 * @param trouble what keeps the test from being judged; empty where nothing does
 */
public record PullsView(List<String> measures, boolean corrected, String temperature, List<Row> rows, List<String> trouble) {
    private static final List<Condition> TEMPERATURES = List.of(Condition.INTAKE_AIR, Condition.COOLANT, Condition.OIL, Condition.GEARBOX);

    /**
     * A figure as it is shown, and what it is sorted by.
     *
     * @param text with sensible digits; empty where there is none
     * @param value in the unit of its column; NaN where there is none
     */
    public record Figure(String text, double value) implements Comparable<Figure> {
        private static final Figure NONE = new Figure("", Double.NaN);

        @Override
        public int compareTo(Figure other) {
            return Double.compare(value, other.value);
        }

        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * One pull.
     *
     * @param pull which one
     * @param time when it started, by the clock where that is known, else its minutes within the session
     * @param fate what became of it
     * @param fateWords the same in words
     * @param reason why it is left out or aborted; empty otherwise
     * @param values one a measure
     * @param factor of the air at it
     * @param start its start temperature
     * @param checks what is doubtful about it, one sentence each
     */
    public record Row(PullId pull, Figure time, Fate fate, String fateWords, String reason, List<Figure> values, Figure factor,
            Figure start, List<String> checks) {
        public Row {
            values = List.copyOf(values);
            checks = List.copyOf(checks);
        }

        /** {@return whether it came in and may be left out} */
        public boolean canBeExcluded() {
            return fate == Fate.USED;
        }

        /** {@return whether it was left out and may be taken back} */
        public boolean canBeReadmitted() {
            return fate == Fate.EXCLUDED;
        }
    }

    public PullsView {
        measures = List.copyOf(measures);
        rows = List.copyOf(rows);
        trouble = List.copyOf(trouble);
    }

    /** {@return the pulls of the test in a folder} */
    public static PullsView of(Path folder, Progress progress) throws IOException {
        TestFolder test = TestFolder.open(folder);
        return new Maker(test, test.read(), progress).make();
    }

    /** {@return a mark that changes with whatever comes into the log of a test or its plan} */
    public static String stamp(Path folder) throws IOException {
        StringBuilder stamp = new StringBuilder(folder.toString());
        for (String name : List.of("plan.json", "log.jsonl")) {
            Path file = folder.resolve(name);
            stamp.append(' ').append(Files.exists(file) ? Files.size(file) + "@" + Files.getLastModifiedTime(file) : "none");
        }
        return stamp.toString();
    }

    private static final class Maker {
        private final TestFolder test;
        private final TestFolder.Content content;
        private final Map<PullId, String> unusable = new HashMap<>();
        private final List<String> trouble = new ArrayList<>();
        private final Progress progress;
        private final Evidence evidence;
        private final Map<String, ZoneOffset> zones;
        private final Optional<Condition> temperature;

        Maker(TestFolder test, TestFolder.Content content, Progress progress) {
            this.progress = progress;
            this.test = test;
            this.content = content;
            this.evidence = Evidence.of(test, content, this::hear, progress.part(0, 2));
            this.zones = zones(content.plan(), evidence.pulls());
            this.temperature = TEMPERATURES.stream()
                    .filter(one -> evidence.pulls().stream().anyMatch(pull -> pull.conditionsSi().containsKey(one))).findFirst();
        }

        /** {@return the offset from UTC of the first start in the session of each install} */
        private static Map<String, ZoneOffset> zones(Plan plan, List<PullSeen> pulls) {
            Map<String, ZoneOffset> zones = new HashMap<>();
            plan.sequence().sessions().forEach(session -> {
                List<String> installs = session.installs().stream().map(Install::label).toList();
                pulls.stream().filter(pull -> installs.contains(pull.pull().install())).flatMap(pull -> pull.startedAt().stream())
                        .findFirst().ifPresent(start -> installs.forEach(install -> zones.put(install, start.getOffset())));
            });
            return zones;
        }

        private void hear(Optional<PullId> pull, InputException problem) {
            trouble.add(problem.oneLine(Surface.WINDOW));
            pull.ifPresent(one -> unusable.put(one, problem.oneLine(Surface.WINDOW) + "."));
        }

        PullsView make() {
            List<Measure> measures = content.plan().question().measures();
            Map<Measure, Numbers> numbers = new LinkedHashMap<>();
            measures.forEach(measure -> numbers.put(measure, numbers(measure)));
            Map<PullId, List<String>> checks = checks();
            List<Row> rows = evidence.pulls().stream()
                    .map(pull -> row(pull, numbers, checks.getOrDefault(pull.pull(), List.of()))).toList();
            return new PullsView(measures.stream().map(measure -> measure.name() + inUnit(measure.unit().symbol())).toList(),
                    rows.stream().anyMatch(row -> !row.factor().text().isEmpty()),
                    temperature.map(one -> one.words() + inUnit(PlanWords.unitOf(one).symbol())).orElse(""), rows, trouble);
        }

        private static String inUnit(String unit) {
            return unit.isBlank() || unit.equals("1") ? "" : ", " + unit;
        }

        /** Values are told apart to a tenth of what they scatter. */
        private Numbers numbers(Measure measure) {
            DoubleSummaryStatistics values = evidence.pulls().stream().map(pull -> pull.values().get(measure.name()))
                    .filter(value -> value != null).mapToDouble(Double::doubleValue).summaryStatistics();
            double range = values.getCount() > 1 ? values.getMax() - values.getMin() : 0;
            return Numbers.resolving(range > 0 ? range / 10 : values.getCount() > 0 ? Math.abs(values.getMax()) / 1000 : 1, "");
        }

        private Row row(PullSeen pull, Map<Measure, Numbers> numbers, List<String> found) {
            List<Figure> values = numbers.entrySet().stream().map(measure -> Optional.ofNullable(pull.values().get(measure.getKey().name()))
                    .map(value -> new Figure(measure.getValue().bare(value), value)).orElse(Figure.NONE)).toList();
            Figure factor = pull.correction().map(one -> new Figure(CorrectionWords.factor(one.factor()), one.factor()))
                    .orElse(Figure.NONE);
            Figure start = temperature.flatMap(one -> Optional.ofNullable(pull.conditionsSi().get(one))
                    .map(si -> new Figure(PlanWords.reading(one, si), si))).orElse(Figure.NONE);
            List<String> checks = Stream.concat(Optional.ofNullable(unusable.get(pull.pull())).stream(), found.stream()).toList();
            return new Row(pull.pull(), time(pull), pull.fate(), PlanWords.fate(pull.fate()), pull.reason(), values, factor, start, checks);
        }

        /** By the clock of the first pull of the session: pulls that were noted in other zones must not seem out of order. */
        private Figure time(PullSeen pull) {
            OptionalDouble minutes = Double.isFinite(pull.minutes()) ? OptionalDouble.of(pull.minutes()) : OptionalDouble.empty();
            return pull.startedAt().map(start -> new Figure(Times.clock(start.withOffsetSameInstant(
                    zones.getOrDefault(pull.pull().install(), start.getOffset()))), start.toEpochSecond()))
                    .orElseGet(() -> minutes.isPresent()
                            ? new Figure(Numbers.resolving(1, "min").with(minutes.getAsDouble()), minutes.getAsDouble()) : Figure.NONE);
        }

        private Map<PullId, List<String>> checks() {
            List<Looked> looked = PullChecks.looked(test, content, evidence.pulls(), progress.part(1, 2));
            Map<PullId, List<String>> checks = new HashMap<>();
            for (CheckOutcome outcome : PullChecks.of(content.plan().question(), looked, evidence.pulls())) {
                outcome.names().forEach(name -> named(name).forEach(pull -> checks.computeIfAbsent(pull, none -> new ArrayList<>())
                        .add(NoticeWords.sentence(CheckOutcome.naming(outcome.code(), outcome.figures(), List.of(name)).notice()
                                .orElseThrow(), "", Surface.WINDOW))));
            }
            SweepDoubts.of(content.plan(), looked.stream().map(Looked::pull).toList()).stream()
                    .filter(notice -> notice.code() != Notice.Code.POWER_FROM_MOTION)
                    .forEach(notice -> notice.names().forEach(name -> named(name).forEach(pull ->
                            checks.computeIfAbsent(pull, none -> new ArrayList<>())
                                    .add(NoticeWords.sentence(notice, "", Surface.WINDOW)))));
            return checks;
        }

        /** A check names a pull, perhaps with a figure behind it in brackets, or a pair. */
        private static List<PullId> named(String name) {
            return Stream.of(name.split(" = |/| \\(")).flatMap(part -> PullId.parse(part.strip()).stream()).distinct().toList();
        }
    }
}
