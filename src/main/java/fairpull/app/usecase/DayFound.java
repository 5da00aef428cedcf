package fairpull.app.usecase;

import fairpull.domain.finding.Judgement;
import fairpull.report.chart.Day;
import fairpull.report.chart.DaysOfTest;
import fairpull.report.chart.ValueAxis;
import fairpull.report.wording.Numbers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a day brought, once every install of the plan has a value that counts.
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

    /** {@return what the test in a folder brought; empty while an install has no value that counts} */
    public static Optional<DayFound> of(Path folder) throws IOException {
        return of(JudgeFolder.judge(folder));
    }

    static Optional<DayFound> of(Judgement judgement) {
        List<Day> days = DaysOfTest.of(judgement, judgement.plan().question().deciding().name());
        long measured = days.stream().flatMap(day -> day.blocks().stream()).filter(block -> block.mean().isPresent()).count();
        if (measured < judgement.plan().sequence().installs().count()) {
            return Optional.empty();
        }
        List<FindingView.Section> said = FindingView.of(judgement).sections().stream()
                .filter(section -> !section.kind().equals("plain")).toList();
        return Optional.of(new DayFound(said, days, ValueAxis.of(judgement.plan().question().deciding().name(), days,
                Numbers.of(judgement.deciding()), judgement.deciding().unit())));
    }
}
