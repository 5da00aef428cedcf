package fairpull.app.usecase.running;

import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.planning.PlannedJudging;
import fairpull.app.usecase.pulls.Evidence;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.DayProgress;
import fairpull.engine.judging.Judge;
import fairpull.engine.running.NextStep;
import fairpull.engine.running.PooledScatter;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.RunWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What may be shown of a day that is not over: values, scatter, whether the car came back. Never the change, its interval or a p-value.
 *
 * @param log the log that it was read from
 * @param passed the pulls that were not run, and that the day has gone past
 * @param values the counted pulls that came in, by install in the order of the plan
 * @param unit of the values
 * @param said in sentences
 * @param found once the day is over, what was found: alarms, if any, and the verdict; empty before
 */
public record SoFar(DayLog log, Set<PullId> passed, Map<Install, Map<PullId, Double>> values, String unit, List<String> said,
        List<FindingView.Section> found) {
    public SoFar {
        passed = Set.copyOf(passed);
        said = List.copyOf(said);
        found = List.copyOf(found);
    }

    /** {@return what is known of a pull, in words; blind eyes do not hear its value} */
    public String of(PullId pull, boolean blind) {
        Numbers numbers = Numbers.resolving(spread(), unit);
        Optional<Double> value = values.values().stream().flatMap(one -> Optional.ofNullable(one.get(pull)).stream()).findFirst();
        return RunWords.pull(pull, log, passed.contains(pull), value.filter(known -> !blind).map(numbers::with));
    }

    /** A tenth of what all values cover, or of a percent of one that stands alone: a figure gets two digits more. */
    private double spread() {
        DoubleSummaryStatistics all = values.values().stream().flatMap(one -> one.values().stream())
                .collect(Collectors.summarizingDouble(value -> value));
        double span = all.getCount() > 1 ? all.getMax() - all.getMin() : 0;
        return span > 0 ? span : Math.max(1e-9, Math.abs(all.getSum()) / 100);
    }

    /** {@return what may be shown of the day in a folder; the exports are read, so not for the thread of a window} */
    public static SoFar of(Path folder) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        Plan plan = content.plan();
        Measure deciding = plan.question().deciding();
        Map<Install, Map<PullId, Double>> values = new LinkedHashMap<>();
        List<String> said = new ArrayList<>();
        try {
            Evidence evidence = Evidence.of(test, content);
            plan.sequence().installs().forEach(install -> values.put(install, values(evidence, install, deciding)));
            values.values().removeIf(Map::isEmpty);
            PooledScatter.of(values.values().stream().map(one -> List.copyOf(one.values())).toList()).ifPresent(
                    scatter -> said.add(RunWords.scatter(scatter, plan.rig().pullScatter(), deciding.unit())));
            returnCheck(plan, evidence, values).ifPresent(said::add);
        } catch (InputException unusable) {
            said.add(unusable.oneLine(Surface.WINDOW));
        }
        List<FindingView.Section> found = new ArrayList<>();
        if (NextStep.isDone(plan, content.log())) {
            DayFound.of(folder).ifPresent(day -> found.addAll(day.said()));
            said.add(RunWords.waitingFor(missing(plan, content.log())));
        } else {
            said.add(RunWords.noVerdict(plan, DayProgress.of(plan, content.log())));
        }
        return new SoFar(content.log(), NextStep.passed(plan, content.log()), values, deciding.unit().symbol(), said, found);
    }

    private static List<PullId> missing(Plan plan, DayLog log) {
        Set<PullId> run = NextStep.driven(plan, log);
        return PlannedClock.of(plan.sequence()).minutes().keySet().stream()
                .filter(pull -> !pull.warmUp() && run.contains(pull) && !log.pulls().containsKey(pull)).toList();
    }

    private static Map<PullId, Double> values(Evidence evidence, Install install, Measure deciding) {
        Map<PullId, Double> values = new LinkedHashMap<>();
        for (PullSeen seen : evidence.pulls()) {
            if (seen.pull().install().equals(install.label()) && seen.fate() == Fate.USED) {
                Optional.ofNullable(seen.values().get(deciding.name())).ifPresent(value -> values.put(seen.pull(), value));
            }
        }
        return values;
    }

    /** The judge's own check; all else that it finds is dropped unseen. */
    private static Optional<String> returnCheck(Plan plan, Evidence evidence, Map<Install, Map<PullId, Double>> values) {
        boolean back = values.keySet().stream().filter(install -> install.part() == Part.A).count() > 1;
        Measure deciding = plan.question().deciding();
        if (!back || !evidence.canBeTabled(deciding)) {
            return Optional.empty();
        }
        try {
            return Judge.judge(evidence.table(deciding, fate -> fate == Fate.USED), PlannedJudging.settings(plan, deciding)).returnCheck()
                    .map(check -> RunWords.returnCheck(check, deciding.unit().symbol()));
        } catch (IllegalArgumentException notYet) {
            return Optional.empty();
        }
    }
}
