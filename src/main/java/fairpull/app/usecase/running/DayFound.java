package fairpull.app.usecase.running;

import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.domain.finding.Judgement;
import fairpull.domain.running.DayProgress;
import fairpull.io.folder.TestFolder;
import fairpull.report.chart.Day;
import fairpull.report.chart.DaysOfTest;
import fairpull.report.chart.ValueAxis;
import fairpull.report.wording.Numbers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a day brought, once it is over ({@link DayProgress}). Before that nothing is told, so that nobody
 * peeks while the day is run.
 *
 * @param said alarms, if any, and the verdict with its interval
 * @param days as they were run
 * @param axis of their values
 */
public record DayFound(List<FindingView.Section> said, List<Day> days, ValueAxis axis) {
    public DayFound {
        said = List.copyOf(said);
        days = List.copyOf(days);
    }

    /** {@return what the test in a folder brought; empty while the day is not over} */
    public static Optional<DayFound> of(Path folder) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        return DayProgress.of(content.plan(), content.log()).isOver() ? Optional.of(of(JudgeFolder.judge(folder))) : Optional.empty();
    }

    private static DayFound of(Judgement judgement) {
        List<Day> days = DaysOfTest.of(judgement, judgement.plan().question().deciding().name());
        List<FindingView.Section> said = FindingView.of(judgement).sections().stream()
                .filter(section -> !section.kind().equals("plain")).toList();
        return new DayFound(said, days, ValueAxis.of(judgement.plan().question().deciding().name(), days,
                Numbers.of(judgement.deciding()), judgement.deciding().unit()));
    }
}
