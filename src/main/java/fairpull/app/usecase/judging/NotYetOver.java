package fairpull.app.usecase.judging;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Plan;
import fairpull.domain.running.DayProgress;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.RunWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Why a test is not judged yet: its day is under way, and no planned look stands. What reads no export tells nothing of the values.
 *
 * @param heading in a few words
 * @param sentences how far the day is, and why nothing is told before its end
 * @param isLookDue whether a planned look may be taken now
 * @param canEnd whether the day could be ended here: a counted pull has come in
 */
public record NotYetOver(String heading, List<String> sentences, boolean isLookDue, boolean canEnd) {
    public NotYetOver {
        sentences = List.copyOf(sentences);
    }

    /** {@return why the test in a folder is not judged yet; empty where it may be} */
    public static Optional<NotYetOver> of(Path folder) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        Plan plan = content.plan();
        DayProgress progress = DayProgress.of(plan, content.log());
        if (progress.mayBeJudged()) {
            return Optional.empty();
        }
        return Optional.of(new NotYetOver(RunWords.notYetOver(progress), RunWords.whyNotYetOver(plan, progress), progress.isLookDue(),
                progress.in() > 0));
    }

    /**
     * Refuses to judge a plan with looks anywhere else than at one of them, where all before it is in, and at the end: whoever sees a
     * verdict or a p-value between them has looked once more than the error rate was shared out for.
     *
     * @throws InputException where the day is under way and no planned look stands
     */
    static void refuseBetweenLooks(Path folder, TestFolder.Content content) {
        Plan plan = content.plan();
        DayProgress progress = DayProgress.of(plan, content.log());
        if (plan.looks().isPresent() && !progress.mayBeJudged() && !progress.isLookDue()) {
            throw new InputException(Place.of(folder.toString()), RunWords.betweenLooks(plan, progress),
                    new Remedy("judge it then, or end the day with `fairpull note TEST --end-day WHY`",
                            "judge it then, or end the day on the page Finding, with the reason"));
        }
    }

    /** {@return the judgement at the planned look that is due, which is written into the log first} */
    public static Judgement look(Path folder, OffsetDateTime now) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        DayProgress progress = DayProgress.of(content.plan(), content.log());
        if (!progress.mayBeJudged() && !progress.isLookDue()) {
            throw new InputException(Place.none(), "no look can be taken now" + (progress.missing().isEmpty() ? ""
                    : ": not in yet are " + RunWords.listed(progress.missing())),
                    "bring their exports in first, or end the day on the page Finding, with the reason");
        }
        return JudgeFolder.look(folder, now);
    }
}
