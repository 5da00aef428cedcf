package fairpull.app.usecase;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import fairpull.domain.pull.Seal;
import fairpull.engine.planning.PlanReview;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.CheckJson;
import fairpull.report.wording.NoticeWords;
import fairpull.report.write.TextPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a test and says what its plan can see, what it lacks, and what does not fit. */
public final class CheckTest {
    private static final double SECONDS_A_MINUTE = 60;

    private CheckTest() {
    }

    /** {@return what is to be said of the test in a folder} */
    public static Answer check(Path folder) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        Plan plan = content.plan();
        List<Notice> notices = new ArrayList<>(Integrity.check(test, content));
        notices.removeIf(notice -> notice.code() == Code.NOT_SEALED);
        notices.addAll(PlanReview.review(plan));
        String unit = plan.question().deciding().unit().symbol();
        List<String> sentences = notices.stream().map(notice -> NoticeWords.sentence(notice, unit)).toList();
        Optional<SizeQuestion> size = sizeQuestion(plan);
        Optional<SizeAnswer> answer = size.map(SizePlan::size);
        Optional<String> code = content.seal().map(Seal::code);
        Optional<String> seen = answer.map(figures -> TextPlan.size(size.orElseThrow(), figures, unit));
        return new Answer(TextPlan.check(plan, code, seen, notices),
                CheckJson.document(plan, code, content.planSha256(), answer, sentences));
    }

    /** {@return the sizing of a plan; empty without scatter figures or a worthwhile gain} */
    static Optional<SizeQuestion> sizeQuestion(Plan plan) {
        Question question = plan.question();
        Optional<Scatter> pull = plan.rig().pullScatter();
        Optional<Scatter> refit = plan.rig().refitScatter();
        if (pull.isEmpty() || refit.isEmpty() || question.worthwhileGainSi().isEmpty()) {
            return Optional.empty();
        }
        Measure measure = question.deciding();
        int fewestPulls = plan.sequence().installs().mapToInt(Install::countedPulls).min().orElseThrow();
        int mostWarmUps = plan.sequence().installs().mapToInt(Install::warmUpPulls).max().orElseThrow();
        return Optional.of(new SizeQuestion(plan.sequence().letters(), fewestPulls, mostWarmUps,
                measure.unit().differenceFromSi(pull.get().standardDeviationSi()), pull.get().degreesOfFreedom(),
                measure.unit().differenceFromSi(refit.get().standardDeviationSi()), refit.get().degreesOfFreedom(),
                measure.unit().differenceFromSi(question.worthwhileGainSi().getAsDouble()), question.powerWanted(), question.errorRate(),
                question.sides(), plan.analysis().drift(), new SizeQuestion.Clock(plan.sequence().pullIntervalS() / SECONDS_A_MINUTE,
                        plan.sequence().swapS() / SECONDS_A_MINUTE, plan.sequence().setUpS() / SECONDS_A_MINUTE)));
    }
}
