package fairpull.ui.page.run;

import fairpull.app.usecase.running.RunDay;
import fairpull.domain.day.DayClock;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.PlanStrip;
import fairpull.ui.strip.DayStripView;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The day strip of a day under way. */
final class StripOfDay {
    private StripOfDay() {
    }

    /** {@return what the strip shows; before anything happened, the day as planned} */
    static Optional<DayStripView.Run> of(RunDay day, OffsetDateTime now, Set<PullId> driven, Map<PullId, Double> values) {
        if (driven.isEmpty()) {
            return Optional.empty();
        }
        List<DayClock> clocks = day.clocks(now);
        int session = day.session();
        return Optional.of(new DayStripView.Run(clocks, new PlanStrip.Running(session, day.nowOnClock(now), driven, values)));
    }
}
