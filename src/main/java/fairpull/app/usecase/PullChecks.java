package fairpull.app.usecase;

import fairpull.domain.InputException;
import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Question;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.PullTrace;
import fairpull.engine.check.Checklist;
import fairpull.engine.check.StartOrder;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.NoticeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What the exports themselves show: the one place where the checks of pulls are run, at import and when a test is judged. */
final class PullChecks {
    private PullChecks() {
    }

    /** {@return the exports of some pulls, in their order, those left out that cannot be read} */
    static List<PullTrace> traces(TestFolder test, TestFolder.Content content, List<PullSeen> pulls) {
        Map<PullId, LogEntry.PullTaken> taken = content.log().pulls();
        CarriedAir air = new CarriedAir(content.plan().sequence(), content.log());
        return pulls.stream().map(seen -> Optional.ofNullable(taken.get(seen.pull()))
                .flatMap(one -> trace(test, content, one, seen.fate() == Fate.USED, air.at(seen.pull()))))
                .flatMap(Optional::stream).toList();
    }

    /** {@return what came of every check of the pulls of a test} */
    static List<CheckOutcome> of(Question question, List<PullTrace> traces, List<PullSeen> pulls) {
        List<CheckOutcome> outcomes = new ArrayList<>(Checklist.ofEach(question, traces));
        outcomes.addAll(Checklist.ofPairs(question, traces));
        outcomes.add(StartOrder.check(pulls));
        return List.copyOf(outcomes);
    }

    /** {@return what is doubtful about a pull that comes in, beside those that came before, one sentence each} */
    static List<String> doubts(Question question, PullTrace incoming, List<PullTrace> before) {
        List<PullTrace> all = new ArrayList<>(before);
        all.add(incoming);
        Stream<CheckOutcome> pairs = Checklist.ofPairs(question, all).stream().map(outcome -> about(outcome, incoming.pull().toString()));
        return Stream.concat(Checklist.ofEach(question, List.of(incoming)).stream(), pairs).map(CheckOutcome::notice)
                .flatMap(Optional::stream).map(PullChecks::sentence).toList();
    }

    /** {@return the exports of a test that can still be read, in the order of the log} */
    static List<PullTrace> traces(TestFolder test, TestFolder.Content content) {
        CarriedAir air = new CarriedAir(content.plan().sequence(), content.log());
        return content.log().pulls().values().stream()
                .map(taken -> trace(test, content, taken, !taken.pull().warmUp(), air.at(taken.pull()))).flatMap(Optional::stream).toList();
    }

    private static CheckOutcome about(CheckOutcome outcome, String pull) {
        List<String> names = outcome.names().stream().filter(name -> new TreeSet<>(List.of(name.split(" = |/"))).contains(pull)).toList();
        return CheckOutcome.naming(outcome.code(), outcome.figures(), names);
    }

    private static String sentence(Notice notice) {
        return NoticeWords.sentence(notice, "");
    }

    /** An export that cannot be read has nothing to show here; whoever needs its value says so. */
    private static Optional<PullTrace> trace(TestFolder test, TestFolder.Content content, LogEntry.PullTaken taken, boolean used,
            PulledAir air) {
        if (taken.file().isEmpty()) {
            return Optional.empty();
        }
        try {
            return PullTraces.of(taken.pull(), used, PullValues.export(test, content.mappings(), taken),
                    PullValues.mapping(content.mappings(), taken), content.plan().question().deciding(), air);
        } catch (InputException unreadable) {
            return Optional.empty();
        }
    }
}
