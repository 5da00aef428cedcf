package fairpull.app.usecase.pulls;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.DayProgress;
import fairpull.engine.curve.Outcome;
import fairpull.io.folder.TestFolder;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Every pull of a test with its fate, time, values and conditions: the one thing between a folder and the judge.
 *
 * @param plan the plan in force
 * @param pulls in the order of the plan; pulls the plan does not know come last
 * @param plannedClockUsed whether minutes come from the plan because the day's own are not known for every pull used
 * @param air what is noticed about the air and the correction for it
 */
public record Evidence(Plan plan, List<PullSeen> pulls, boolean plannedClockUsed, List<Notice> air) {
    private static final double SECONDS_A_MINUTE = 60;
    private static final double NANOSECONDS_A_SECOND = 1e9;

    /** {@return the evidence in a test's folder} */
    public static Evidence of(TestFolder test, TestFolder.Content content) {
        return of(test, content, Progress.none());
    }

    /** {@return the same; {@code progress} hears of every export that was read} */
    public static Evidence of(TestFolder test, TestFolder.Content content, Progress progress) {
        return of(test, content, (pull, trouble) -> {
            throw trouble;
        }, progress);
    }

    /** {@return the evidence in a test's folder, whoever listens being told of pulls that count and cannot be used} */
    public static Evidence of(TestFolder test, TestFolder.Content content, Troubles troubles, Progress progress) {
        return new Collector(test, content, troubles, progress).collect();
    }

    /** Hears why a pull that counts cannot be used; may throw it. No pull is named where it concerns several. */
    interface Troubles {
        void hear(Optional<PullId> pull, InputException trouble);
    }

    /** {@return the table of one measure, in its unit, from the pulls of some fates; pulls without a value of it are left out} */
    public PullTable table(Measure measure, Predicate<Fate> fates) {
        List<String> covariates = plan.analysis().covariates().stream().map(Condition::id).toList();
        List<PullRow> rows = new ArrayList<>();
        for (Session session : plan.sequence().sessions()) {
            for (Install install : session.installs()) {
                pulls.stream()
                        .filter(seen -> seen.pull().install().equals(install.label()) && fates.test(seen.fate()))
                        .filter(seen -> seen.values().containsKey(measure.name()))
                        .filter(seen -> seen.fate() == Fate.USED || hasReadings(seen))
                        .forEach(seen -> rows.add(new PullRow(session.name(), install.label(), install.part(), seen.pull().toString(),
                                seen.minutes(), seen.values().get(measure.name()), readings(seen))));
            }
        }
        checkUsable(measure, rows);
        return new PullTable(measure.unit().symbol(), covariates, rows);
    }

    /** {@return whether a measure has values that differ, of both parts} */
    public boolean canBeTabled(Measure measure) {
        List<PullSeen> used = pulls.stream()
                .filter(seen -> seen.fate() == Fate.USED && seen.values().containsKey(measure.name()))
                .toList();
        return used.stream().map(seen -> seen.pull().install().charAt(0)).distinct().count() == Part.values().length
                && used.stream().map(seen -> seen.values().get(measure.name())).distinct().count() > 1;
    }

    /** A pull may be left out for want of a reading; a pull that is used may not. */
    private boolean hasReadings(PullSeen seen) {
        return seen.conditionsSi().keySet().containsAll(plan.analysis().covariates());
    }

    private List<Double> readings(PullSeen seen) {
        List<Double> readings = new ArrayList<>();
        for (Condition condition : plan.analysis().covariates()) {
            Double reading = seen.conditionsSi().get(condition);
            if (reading == null) {
                throw new InputException(Place.of("log.jsonl"), "the plan takes out the slope of " + condition.words() + ", and pull "
                        + seen.pull() + " has no reading of it", new Remedy("note it: fairpull note FOLDER " + seen.pull() + " --condition "
                        + condition.id() + "=…",
                    "paste a table with this pull and the reading on the page Pulls"));
            }
            readings.add(reading);
        }
        return readings;
    }

    private static void checkUsable(Measure measure, List<PullRow> rows) {
        for (Part part : Part.values()) {
            if (rows.stream().noneMatch(row -> row.part() == part)) {
                throw new InputException(Place.none(), "no pull of part " + part + " with a value of " + measure.name()
                        + ": there is nothing to compare", "import its pulls first");
            }
        }
        if (rows.stream().mapToDouble(PullRow::value).distinct().count() == 1) {
            throw new InputException(Place.none(), "all values of " + measure.name() + " are equal",
                    "look whether one file was imported for all");
        }
    }

    private static final class Collector {
        private final TestFolder test;
        private final TestFolder.Content content;
        private final DayLog log;
        private final Plan plan;
        private final BroughtValues broughtValues;
        private final Map<PullId, LogEntry.PullTaken> taken;
        private final Map<PullId, LogEntry.PullAborted> aborted;
        private final Map<PullId, LogEntry.Excluded> excluded;
        private final DayProgress progress;
        private final Set<PullId> ahead;
        private final Troubles troubles;
        private final Map<PullId, Measured> exports;

        Collector(TestFolder test, TestFolder.Content content, Troubles troubles, Progress reading) {
            this.troubles = troubles;
            this.test = test;
            this.content = content;
            this.log = content.log();
            this.plan = content.plan();
            this.broughtValues = new BroughtValues(content);
            this.taken = log.pulls();
            this.aborted = log.aborted();
            this.excluded = log.excluded();
            this.progress = DayProgress.of(plan, log);
            this.ahead = ahead();
            this.exports = measured(reading);
        }

        /** What the export of a pull measures, or why it cannot be read. */
        private record Measured(Map<Measure, Outcome> outcomes, Optional<InputException> refusal) {
            Map<Measure, Outcome> orThrow() {
                refusal.ifPresent(unreadable -> {
                    throw unreadable;
                });
                return outcomes;
            }
        }

        /** Exports are read on all cores: a long day has hundreds. */
        private Map<PullId, Measured> measured(Progress progress) {
            List<LogEntry.PullTaken> files = taken.values().stream().filter(one -> !one.file().isEmpty() && !one.pull().warmUp()).toList();
            List<Measured> read = Chunks.run(files.size(), place -> measured(files.get(place)), Chunks.cores(), progress);
            Map<PullId, Measured> byPull = new HashMap<>();
            for (int place = 0; place < files.size(); place++) {
                byPull.put(files.get(place).pull(), read.get(place));
            }
            return byPull;
        }

        private Measured measured(LogEntry.PullTaken one) {
            try {
                return new Measured(PullValues.outcomes(ReadPull.of(test, content.mappings(), one).channels(), plan), Optional.empty());
            } catch (InputException unreadable) {
                return new Measured(Map.of(), Optional.of(unreadable));
            }
        }

        Evidence collect() {
            Map<PullId, Double> planned = PlannedClock.of(plan.sequence()).minutes();
            List<PullSeen> seen = new ArrayList<>();
            planned.keySet().forEach(pull -> seen.add(seen(pull, true)));
            Stream.concat(taken.keySet().stream(), aborted.keySet().stream()).filter(pull -> !planned.containsKey(pull))
                    .forEach(pull -> seen.add(seen(pull, false)));
            try {
                broughtValues.refuseMissing();
            } catch (InputException lacking) {
                troubles.hear(Optional.empty(), lacking);
            }
            boolean clockKnown = seen.stream().filter(pull -> pull.fate() == Fate.USED).allMatch(pull -> pull.startedAt().isPresent());
            return new Evidence(plan, clockKnown ? timed(seen) : planned(seen, planned), !clockKnown, AirOfDay.notices(plan, seen));
        }

        private PullSeen seen(PullId pull, boolean isPlanned) {
            LogEntry.PullTaken cameIn = taken.get(pull);
            Standing standing = standing(pull, cameIn != null, isPlanned);
            Map<String, Double> values = cameIn == null || pull.warmUp() ? new TreeMap<>()
                    : values(cameIn, standing.fate() == Fate.USED);
            if (standing.fate() == Fate.USED && !values.containsKey(plan.question().deciding().name())) {
                standing = new Standing(Fate.MISSING, "no value of " + plan.question().deciding().name() + " yet");
            }
            return new PullSeen(pull, standing.fate(), standing.reason(), log.startOf(pull), Double.NaN, values, log.conditionsAt(pull),
                    values.isEmpty() ? Optional.empty() : broughtValues.correction(pull));
        }

        private Map<String, Double> values(LogEntry.PullTaken taken, boolean used) {
            return broughtValues.of(taken, valuesSi(taken, used), used);
        }

        /** A pull that is left out may be so because its export cannot be read any more, or does not cover an amended band. */
        private Map<String, Double> valuesSi(LogEntry.PullTaken taken, boolean used) {
            Map<String, Double> values = new TreeMap<>(taken.typedSi());
            if (taken.file().isEmpty()) {
                return values;
            }
            try {
                Map<Measure, Outcome> outcomes = exports.get(taken.pull()).orThrow();
                if (used) {
                    PullValues.checkDeciding(outcomes, plan, taken.file(),
                            new Remedy("leave the pull out: fairpull exclude TEST " + taken.pull() + " --because …",
                    "leave the pull out with a reason, beneath the table of pulls"));
                }
                PullValues.of(outcomes).forEach(values::putIfAbsent);
            } catch (InputException unusable) {
                if (used) {
                    troubles.hear(Optional.of(taken.pull()), unusable);
                }
            }
            return values;
        }

        private Map<String, String> sessions() {
            Map<String, String> sessionOf = new TreeMap<>();
            plan.sequence().sessions().forEach(session -> session.installs()
                    .forEach(install -> sessionOf.put(install.label(), session.name())));
            return sessionOf;
        }

        private record Standing(Fate fate, String reason) {
        }

        private Standing standing(PullId pull, boolean cameIn, boolean isPlanned) {
            LogEntry.PullAborted stopped = aborted.get(pull);
            if (stopped != null) {
                return new Standing(Fate.ABORTED, stopped.reason());
            }
            boolean warmedUp = pull.warmUp() && (cameIn || log.startOf(pull).isPresent());
            if (warmedUp) {
                return new Standing(Fate.WARM_UP, cameIn ? "" : "noted, not exported");
            }
            if (!cameIn) {
                return notIn(pull);
            }
            if (!isPlanned) {
                return new Standing(Fate.EXCLUDED, "not in the plan as it stands");
            }
            LogEntry.Excluded leftOut = excluded.get(pull);
            return leftOut == null ? new Standing(Fate.USED, onceAborted(pull)) : new Standing(Fate.EXCLUDED, leftOut.reason());
        }

        private Standing notIn(PullId pull) {
            boolean isRun = log.run().containsKey(pull);
            boolean isAhead = !progress.isOver() && ahead.contains(pull);
            boolean isAwaited = !progress.isOver() && (isRun || isAhead || progress.missing().contains(pull));
            return new Standing(isAwaited ? Fate.AWAITED : Fate.MISSING,
                    isRun ? "run, its export has not come in" : isAhead ? "not yet due" : "");
        }

        /** The pulls behind the last one that anything was done about. */
        private Set<PullId> ahead() {
            List<PullId> all = List.copyOf(PlannedClock.of(plan.sequence()).minutes().keySet());
            int done = IntStream.range(0, all.size()).filter(place -> taken.containsKey(all.get(place))
                    || aborted.containsKey(all.get(place)) || log.startOf(all.get(place)).isPresent()).max().orElse(-1);
            return Set.copyOf(all.subList(done + 1, all.size()));
        }

        /** A pull that was stopped and run again must not look like one that was run once. */
        private String onceAborted(PullId pull) {
            LogEntry.PullAborted before = log.repeated().get(pull);
            return before == null ? "" : "run again after it was aborted: " + before.reason();
        }

        private List<PullSeen> timed(List<PullSeen> seen) {
            Map<String, String> sessionOf = sessions();
            Map<String, OffsetDateTime> begins = new TreeMap<>();
            seen.stream().filter(pull -> pull.startedAt().isPresent() && sessionOf.containsKey(pull.pull().install()))
                    .sorted(Comparator.comparing(pull -> pull.startedAt().orElseThrow()))
                    .forEach(pull -> begins.putIfAbsent(sessionOf.get(pull.pull().install()), pull.startedAt().orElseThrow()));
            return seen.stream().map(pull -> at(pull, pull.startedAt()
                    .filter(start -> sessionOf.containsKey(pull.pull().install()))
                    .map(start -> minutes(begins.get(sessionOf.get(pull.pull().install())), start)))).toList();
        }

        private static double minutes(OffsetDateTime from, OffsetDateTime to) {
            Duration passed = Duration.between(from, to);
            return (passed.getSeconds() + passed.getNano() / NANOSECONDS_A_SECOND) / SECONDS_A_MINUTE;
        }

        private static List<PullSeen> planned(List<PullSeen> seen, Map<PullId, Double> planned) {
            return seen.stream().map(pull -> at(pull, Optional.ofNullable(planned.get(pull.pull())))).toList();
        }

        private static PullSeen at(PullSeen pull, Optional<Double> minutes) {
            return pull.at(minutes.orElse(Double.NaN));
        }
    }
}
