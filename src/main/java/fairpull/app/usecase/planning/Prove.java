package fairpull.app.usecase.planning;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.Order;
import fairpull.app.usecase.typing.TypedTruth;
import fairpull.app.usecase.typing.TypedTruth.PlannedScatter;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.proof.PlannedInstall;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.domain.proof.ProofQuestion.LookLevel;
import fairpull.domain.proof.Truth;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.engine.planning.LookBounds;
import fairpull.engine.planning.PlanSizing;
import fairpull.engine.proving.Proof;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/** Simulates a plan as planned and judged: how often it announces a change that is none, finds the gain, holds it in its interval. */
public final class Prove {
    private static final int SECONDS_A_MINUTE = 60;

    private Prove() {
    }

    /** {@return the proof of the plan in a test's folder} */
    public static Answer test(Path folder, TypedTruth.Words typed, TypedTruth.Run run, Progress progress) throws IOException {
        Plan plan = TestFolder.open(folder).read().plan();
        try {
            return answer(question(plan, typed, run), plan.sequence().letters(), plan.question().deciding().unit().symbol(), progress);
        } catch (IllegalArgumentException notEstimable) {
            throw new InputException(Place.of(folder.toString()), notEstimable.getMessage(), "change the plan");
        }
    }

    /**
     * {@return what is simulated to prove a plan}
     *
     * @throws IllegalArgumentException if the plan cannot be judged
     */
    static ProofQuestion question(Plan plan, TypedTruth.Words typed, TypedTruth.Run run) {
        Measure measure = plan.question().deciding();
        JudgeSettings settings = PlannedJudging.settings(plan, measure);
        Truth truth = new TypedTruth(typed, Optional.of(measure), plan.question().expectedLevelSi()).of(
                scatter(plan.rig().pullScatter(), measure), scatter(plan.rig().refitScatter(), measure),
                settings.worthwhileGain());
        JudgeSettings planned = settings.withCovariates(List.of()).drawn(false);
        List<LookLevel> looks = looks(plan.looks(), PlanSizing.layout(plan), (int) plan.sequence().installs().count());
        return new ProofQuestion(installs(plan.sequence()), planned, looks, truth, run.campaigns(), run.seed());
    }

    private static Optional<PlannedScatter> scatter(Optional<Scatter> planned, Measure measure) {
        return planned.map(known -> new PlannedScatter(measure.unit().differenceFromSi(known.standardDeviationSi()), known.isRecord()));
    }

    /** {@return the proof of a sequence given by options; its scatter may be a record, its gain is the worthwhile one} */
    public static Answer sequence(SizeQuestion asked, Better better, TypedTruth.Words typed, TypedTruth.Run run, String unit,
            Progress progress) {
        try {
            Truth truth = new TypedTruth(typed, Optional.empty(), OptionalDouble.empty()).of(
                    Optional.of(new PlannedScatter(asked.pullScatter(), asked.pullDegreesOfFreedom() > 0)),
                    Optional.of(new PlannedScatter(asked.refitScatter(), asked.refitDegreesOfFreedom() > 0)),
                    OptionalDouble.of(asked.gain()));
            Sequence sequence = Order.sequence(asked.sequence(), OptionalLong.empty(),
                    new Order.Filling(asked.pulls(), asked.warmUps(), true),
                    new Order.Times(asked.clock().intervalMinutes() * SECONDS_A_MINUTE, asked.clock().swapMinutes() * SECONDS_A_MINUTE,
                            asked.clock().setUpMinutes() * SECONDS_A_MINUTE));
            JudgeSettings settings = new JudgeSettings(asked.drift(), List.of(),
                    record(asked.pullScatter(), asked.pullDegreesOfFreedom()), record(asked.refitScatter(), asked.refitDegreesOfFreedom()),
                    OptionalDouble.of(asked.gain()), asked.errorRate(), asked.sides(), better, false);
            List<LookLevel> looks = looks(asked.looks(), asked, (int) sequence.installs().count());
            return answer(new ProofQuestion(installs(sequence), settings, looks, truth, run.campaigns(), run.seed()),
                    sequence.letters(), unit, progress);
        } catch (IllegalArgumentException contradiction) {
            throw new UsageException("prove", contradiction.getMessage());
        }
    }

    private static Optional<ScatterRecord> record(double scatter, double degreesOfFreedom) {
        return degreesOfFreedom > 0 ? Optional.of(new ScatterRecord(scatter, degreesOfFreedom)) : Optional.empty();
    }

    private static List<LookLevel> looks(Optional<Looks> planned, SizeQuestion layout, int installs) {
        if (planned.isEmpty()) {
            return List.of(new LookLevel(installs, layout.errorRate()));
        }
        LookBounds bounds = LookBounds.of(layout, planned.get());
        return IntStream.range(0, bounds.count()).mapToObj(k -> new LookLevel(bounds.afterInstalls().get(k), bounds.level(k))).toList();
    }

    private static List<PlannedInstall> installs(Sequence sequence) {
        Map<PullId, Double> clock = PlannedClock.of(sequence).minutes();
        List<PlannedInstall> installs = new ArrayList<>();
        for (Session session : sequence.sessions()) {
            for (Install install : session.installs()) {
                installs.add(new PlannedInstall(session.name(), install.label(), install.part(), PlannedClock.pullsOf(install).stream()
                        .filter(pull -> !pull.warmUp()).map(clock::get).toList()));
            }
        }
        return installs;
    }

    private static Answer answer(ProofQuestion question, String order, String unit, Progress progress) {
        return Answer.of(question, prove(question, progress), order, unit);
    }

    /** {@return what a simulation shows, run on all cores} */
    public static ProofAnswer prove(ProofQuestion question, Progress progress) {
        Proof proof = Proof.of(question);
        return Chunks.run(proof.chunks(), proof::run, Chunks.cores(), progress).stream().reduce(ProofAnswer::plus).orElseThrow();
    }
}
