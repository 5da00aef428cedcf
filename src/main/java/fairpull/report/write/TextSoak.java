package fairpull.report.write;

import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan;
import fairpull.report.wording.HeatNoticeWords;
import fairpull.report.wording.Said;
import fairpull.report.wording.SoakWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The heat of a day as plain text for a terminal. */
public final class TextSoak {
    private TextSoak() {
    }

    /** {@return the answer} */
    public static String text(SoakAnswer answer) {
        String head = SoakWords.heading(answer);
        StringBuilder text = new StringBuilder(head).append('\n').append("─".repeat(head.length())).append('\n');
        text.append(Lines.wrapped(SoakWords.subject(answer) + ".", "")).append('\n');
        text.append(Lines.wrapped(String.join(" ", SoakWords.plan(answer)), "")).append('\n');
        answer.choice().ifPresent(choice -> text.append(Lines.rows(SoakWords.fit(choice))));
        List<Said> rows = new ArrayList<>();
        if (!answer.cannotSay()) {
            rows.add(new Said("Shortest interval that holds, however many pulls follow", intervals(answer.plan())));
        }
        rows.addAll(SoakWords.bias(answer));
        text.append(Lines.rows(rows)).append('\n');
        answer.notices().forEach(notice -> text.append("Note     ")
                .append(Lines.wrapped(HeatNoticeWords.sentence(notice), "         ").substring("Note     ".length())));
        return text.toString();
    }

    private static String intervals(SoakPlan plan) {
        return plan.holding().stream().map(row -> SoakWords.interval(row)
                + (row.warmUps() == 0 ? " with no warm-up" : " with " + row.warmUps())).collect(Collectors.joining(", "));
    }
}
