package fairpull.app.usecase.pulls;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Question;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.engine.check.Checklist;
import fairpull.engine.check.Checklist.Looked;
import fairpull.engine.check.StartOrder;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.NoticeWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the exports themselves show: the one place where the checks of pulls are run, at import and when a test is judged. */
public final class PullChecks {
    private PullChecks() {
    }

    /** {@return the exports of some pulls as they were looked at, in their order, those left out that cannot be read} */
    public static List<Looked> looked(TestFolder test, TestFolder.Content content, List<PullSeen> pulls, Progress progress) {
        Map<PullId, LogEntry.PullTaken> taken = content.log().pulls();
        CarriedAir air = new CarriedAir(content.plan().sequence(), content.log());
        return Chunks.run(pulls.size(), place -> Optional.ofNullable(taken.get(pulls.get(place).pull()))
                .flatMap(one -> look(test, content, one, pulls.get(place).fate() == Fate.USED, air.at(one.pull()))), Chunks.cores(),
                progress).stream().flatMap(Optional::stream).toList();
    }

    /** {@return what came of every check of the pulls of a test} */
    public static List<CheckOutcome> of(Question question, List<Looked> looked, List<PullSeen> pulls) {
        List<CheckOutcome> outcomes = new ArrayList<>(Checklist.ofEach(question, looked));
        outcomes.addAll(Checklist.ofPairs(question, looked));
        outcomes.add(StartOrder.check(pulls));
        return List.copyOf(outcomes);
    }

    /** {@return what is doubtful about a pull that comes in by itself, one sentence each} */
    static List<String> doubts(Question question, Looked incoming, Surface surface) {
        return Checklist.ofEach(question, List.of(incoming)).stream().map(CheckOutcome::notice).flatMap(Optional::stream)
                .map(notice -> NoticeWords.sentence(notice, "", surface)).toList();
    }

    /** {@return what is doubtful about pulls that come in, held against those that came before and each other, one sentence each} */
    static Map<PullId, List<String>> pairDoubts(Question question, List<Looked> before, List<Looked> incoming,
            Surface surface) {
        Set<PullId> replaced = incoming.stream().map(looked -> looked.pull().pull()).collect(Collectors.toSet());
        List<Looked> all = new ArrayList<>(before);
        all.removeIf(looked -> replaced.contains(looked.pull().pull()));
        all.addAll(incoming);
        List<CheckOutcome> outcomes = Checklist.ofPairs(question, all);
        Map<PullId, List<String>> doubts = new HashMap<>();
        for (Looked looked : incoming) {
            PullId pull = looked.pull().pull();
            doubts.put(pull, outcomes.stream().map(outcome -> about(outcome, pull.toString()))
                    .map(CheckOutcome::notice).flatMap(Optional::stream).map(notice -> NoticeWords.sentence(notice, "", surface)).toList());
        }
        return doubts;
    }

    /** {@return the exports of a test that can still be read, in the order of the log} */
    public static List<Looked> looked(TestFolder test, TestFolder.Content content) {
        CarriedAir air = new CarriedAir(content.plan().sequence(), content.log());
        List<LogEntry.PullTaken> taken = List.copyOf(content.log().pulls().values());
        return Chunks.run(taken.size(), one -> look(test, content, taken.get(one), !taken.get(one).pull().warmUp(),
                air.at(taken.get(one).pull())), Chunks.cores(), Progress.none()).stream().flatMap(Optional::stream).toList();
    }

    /** Of a pair, the check is about the pull that came later: it stands first before an equals sign and last behind a slash. */
    private static CheckOutcome about(CheckOutcome outcome, String pull) {
        List<String> names = outcome.names().stream().filter(name -> name.startsWith(pull + " = ") || name.endsWith("/" + pull)).toList();
        return CheckOutcome.naming(outcome.code(), outcome.figures(), names);
    }

    /** An export that cannot be read has nothing to show here; whoever needs its value says so. */
    private static Optional<Looked> look(TestFolder test, TestFolder.Content content, LogEntry.PullTaken taken, boolean used,
            PulledAir air) {
        if (taken.file().isEmpty()) {
            return Optional.empty();
        }
        Question question = content.plan().question();
        try {
            return Optional.of(ReadPull.of(test, content.mappings(), taken).looked(taken.pull(), used, question, air));
        } catch (InputException unreadable) {
            return Optional.empty();
        }
    }
}
