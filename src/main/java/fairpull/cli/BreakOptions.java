package fairpull.cli;

import fairpull.app.usecase.planning.SearchDays;
import fairpull.domain.finding.SizeQuestion;
import java.util.Collections;
import java.util.List;
import picocli.CommandLine.Option;

/** When a day starts and what interrupts it, for verbs that need only its length. */
final class BreakOptions {
    @Option(names = "--start", paramLabel = "TIME", description = "Start of day, such as 9:00; needed where there are breaks.")
    private String start;

    @Option(names = "--break", paramLabel = "TIME+MIN",
            description = "A break at its time, such as 12:30+45, counted in the length of the day; may be given again.")
    private List<String> breaks = List.of();

    /** {@return a clock that keeps the breaks in each of so many sessions} */
    SizeQuestion.Clock kept(SizeQuestion.Clock clock, int sessions) {
        return new SizeQuestion.Clock(clock.intervalMinutes(), clock.swapMinutes(), clock.setUpMinutes(),
                Collections.nCopies(sessions, SearchDays.hours(start, breaks)));
    }
}
