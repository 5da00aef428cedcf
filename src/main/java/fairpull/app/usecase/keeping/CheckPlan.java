package fairpull.app.usecase.keeping;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.planning.SizePlan;
import fairpull.domain.day.DayFit;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Seal;
import fairpull.engine.planning.DayReview;
import fairpull.engine.planning.PlanReview;
import fairpull.engine.planning.PlanSizing;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.CheckJson;
import fairpull.report.wording.DayWords;
import fairpull.report.wording.NoticeWords;
import fairpull.report.write.TextPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Reads a test and says what its plan can see, what it lacks, and what does not fit. */
public final class CheckPlan {
    private CheckPlan() {
    }

    /** {@return what is to be said of the test in a folder} */
    public static Answer check(Path folder) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        Plan plan = content.plan();
        List<Notice> notices = new ArrayList<>(Integrity.check(test, content));
        notices.removeIf(notice -> notice.code() == Code.NOT_SEALED);
        boolean intact = content.isSealed() && notices.stream().allMatch(notice -> notice.code() == Code.LOG_STATE);
        notices.addAll(PlanReview.review(plan));
        if (plan.rig().leansOnAGuess()) {
            notices.add(Notice.of(Code.STARTING_GUESS_USED));
        }
        String unit = plan.question().deciding().unit().symbol();
        DayFit fit = DayReview.of(plan);
        List<String> sentences = notices.stream().map(notice -> NoticeWords.sentence(notice, unit))
                .collect(Collectors.toCollection(ArrayList::new));
        sentences.addAll(DayWords.warnings(fit));
        OptionalInt exports = intact ? OptionalInt.of(test.exportNames().size()) : OptionalInt.empty();
        Optional<SizeQuestion> size = PlanSizing.question(plan);
        Optional<SizeAnswer> answer = size.map(SizePlan::size);
        Optional<String> code = content.seal().map(Seal::code);
        Optional<String> seen = answer.map(figures -> TextPlan.size(size.orElseThrow(), figures, unit));
        return new Answer(TextPlan.check(plan, TextPlan.seal(code, exports), seen, fit, sentences),
                CheckJson.document(plan, code, content.planSha256(), answer, fit, sentences));
    }
}
