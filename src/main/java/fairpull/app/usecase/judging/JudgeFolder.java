package fairpull.app.usecase.judging;

import fairpull.app.task.Progress;
import fairpull.app.usecase.keeping.Integrity;
import fairpull.app.usecase.keeping.PlannedFields;
import fairpull.app.usecase.planning.PlannedJudging;
import fairpull.app.usecase.pulls.Evidence;
import fairpull.app.usecase.pulls.FolderCurves;
import fairpull.app.usecase.pulls.PullChecks;
import fairpull.app.usecase.pulls.PullValues;
import fairpull.app.usecase.pulls.SweepDoubts;
import fairpull.app.usecase.typing.Order;
import fairpull.domain.InputException;
import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.running.DayProgress;
import fairpull.engine.check.Checklist.Looked;
import fairpull.engine.judging.ClaimCheck;
import fairpull.engine.judging.Holm;
import fairpull.engine.judging.Judge;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.EntryWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Judges a test by its plan: reads the folder, gathers the evidence, judges every measure, and says what does not fit. */
public final class JudgeFolder {
    private static final Set<Fate> WITH_EXCLUDED = EnumSet.of(Fate.USED, Fate.EXCLUDED);

    private final TestFolder test;
    private final TestFolder.Content content;
    private final Plan plan;
    private final Progress progress;
    private final Evidence evidence;
    private final LookNow look;

    private JudgeFolder(TestFolder test, TestFolder.Content content, Progress progress) {
        this.progress = progress;
        this.test = test;
        this.content = content;
        this.plan = content.plan();
        NotYetOver.refuseBetweenLooks(test.path(), content);
        this.evidence = Evidence.of(test, content, progress.part(0, 3));
        this.look = LookNow.of(plan, content.log(), evidence.pulls());
    }

    /** {@return the judgement of the test in a folder} */
    public static Judgement judge(Path folder) throws IOException {
        return judge(folder, Progress.none());
    }

    /** {@return the same; {@code progress} hears of every export that was read, checked and brought onto the grid} */
    public static Judgement judge(Path folder, Progress progress) throws IOException {
        TestFolder test = TestFolder.open(folder);
        return new JudgeFolder(test, test.read(), progress).judgement(true);
    }

    /** {@return the same judgement without the difference curve, and without claims at a speed; for a list of many tests} */
    public static Judgement withoutCurve(Path folder) throws IOException {
        TestFolder test = TestFolder.open(folder);
        return new JudgeFolder(test, test.read(), Progress.none()).judgement(false);
    }

    /** {@return the judgement of the test in a folder, the look at it written into the log first unless it stands there already} */
    public static Judgement look(Path folder, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        if (content.plan().looks().isEmpty()) {
            throw new InputException(InputException.Place.of(folder.toString()), "its plan has no looks, so there is none to write down",
                    "judge it without --look; looks before the end are planned with `fairpull new --looks`");
        }
        int reached = LookNow.of(content.plan(), content.log(), Evidence.of(test, content).pulls()).reached();
        if (reached == 0) {
            throw new InputException(InputException.Place.of(folder.toString()), "no pull has come in, so there is nothing to look at",
                    "import or note its pulls first");
        }
        NotYetOver.refuseBetweenLooks(folder, content);
        if (!content.log().isLookedAfter(reached)) {
            test.append(now, List.of(new LogEntry.Look(content.log().looks().size() + 1, reached)));
        }
        return judge(folder);
    }

    private Judgement judgement(boolean withCurve) throws IOException {
        Finding deciding = judge(plan.question().deciding(), fate -> fate == Fate.USED);
        List<Judgement.Secondary> secondary = secondary();
        List<Looked> looked = PullChecks.looked(test, content, evidence.pulls(), progress.part(1, 3));
        List<CheckOutcome> checks = PullChecks.of(plan.question(), looked, evidence.pulls());
        List<Notice> notices = new ArrayList<>(notices(secondary));
        checks.forEach(check -> check.notice().ifPresent(notices::add));
        notices.addAll(SweepDoubts.of(plan, looked.stream().map(Looked::pull).toList()));
        Optional<CurveFinding> curve = withCurve ? FolderCurves.judge(test, content, evidence, deciding, progress.part(2, 3))
                : Optional.empty();
        return new Judgement(plan, content.seal(), deciding, withExcluded(), secondary, claims(deciding, secondary, curve),
                evidence.pulls(), amendments(), notices, checks, look.taken(), curve);
    }

    private Finding judge(Measure measure, Predicate<Fate> fates) {
        try {
            return Judge.judge(evidence.table(measure, fates), settings(measure));
        } catch (IllegalArgumentException notEstimable) {
            throw new InputException(InputException.Place.of(test.path().toString()), measure.name() + ": " + notEstimable.getMessage(),
                    "amend the analysis, or import the pulls that are missing");
        }
    }

    private Optional<Finding> withExcluded() {
        boolean any = evidence.pulls().stream().anyMatch(seen -> seen.fate() == Fate.EXCLUDED);
        return any ? Optional.of(judge(plan.question().deciding(), WITH_EXCLUDED::contains)) : Optional.empty();
    }

    private List<Judgement.Secondary> secondary() {
        List<Measure> measures = plan.question().further().stream().filter(evidence::canBeTabled).toList();
        List<Finding> findings = measures.stream().map(measure -> judge(measure, fate -> fate == Fate.USED)).toList();
        List<OptionalDouble> adjusted = Holm.adjust(findings.stream()
                .map(finding -> finding.estimate().map(figures -> OptionalDouble.of(figures.pValue())).orElse(OptionalDouble.empty()))
                .toList());
        List<Judgement.Secondary> secondary = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            secondary.add(new Judgement.Secondary(measures.get(i), findings.get(i), adjusted.get(i)));
        }
        return secondary;
    }

    /** At a planned look its own level takes the place of the error rate, so that all looks together keep to that. */
    private JudgeSettings settings(Measure measure) {
        JudgeSettings planned = PlannedJudging.settings(plan, measure);
        return look.taken().map(taken -> planned.withErrorRate(taken.level())).orElse(planned);
    }

    private List<ClaimStanding> claims(Finding deciding, List<Judgement.Secondary> secondary, Optional<CurveFinding> curve) {
        SpeedsNamed named = new SpeedsNamed(content);
        List<ClaimStanding> standings = new ArrayList<>();
        plan.question().claims().forEach(claim -> {
            if (claim.speedRadPerS().isPresent()) {
                double atLeast = plan.question().deciding().unit().differenceFromSi(claim.atLeastSi());
                standings.add(ClaimCheck.atSpeed(claim, atLeast, curve, plan.question().deciding().better(), named.before(claim)));
            } else if (claim.measure().equals(plan.question().deciding().name())) {
                double atLeast = plan.question().deciding().unit().differenceFromSi(claim.atLeastSi());
                standings.add(ClaimCheck.standing(claim, atLeast, deciding));
            } else {
                standings.add(secondary.stream().filter(one -> one.measure().name().equals(claim.measure())).findFirst()
                        .map(one -> ClaimCheck.standing(claim, one.measure().unit().differenceFromSi(claim.atLeastSi()), one.finding()))
                        .orElse(new ClaimStanding(claim, ClaimStanding.Standing.NOT_JUDGED)));
            }
        });
        return standings;
    }

    private List<AmendmentSeen> amendments() {
        return PlannedFields.of(AmendmentSeen.in(content.log()));
    }

    private List<Notice> notices(List<Judgement.Secondary> secondary) throws IOException {
        List<Notice> notices = new ArrayList<>(Integrity.check(test, content));
        long amendedLate = amendments().stream().filter(AmendmentSeen::afterFirstData).count();
        if (amendedLate > 0) {
            notices.add(Notice.of(Code.AMENDED_AFTER_DATA, (double) amendedLate));
        }
        notices.addAll(look.notices());
        content.log().ended().ifPresent(ended -> name(notices, Code.DAY_ENDED_EARLY, List.of(ended.reason())));
        DayProgress progress = DayProgress.of(plan, content.log());
        if (!progress.isOver() && plan.looks().isEmpty()) {
            notices.add(Notice.of(Code.DAY_NOT_OVER, (double) progress.in(), (double) progress.counted()));
        }
        name(notices, Code.PULLS_AWAITED, pulls(seen -> seen.fate() == Fate.AWAITED && isDue(seen)));
        name(notices, Code.PULLS_MISSING, pulls(seen -> seen.fate() == Fate.MISSING && isDue(seen)));
        name(notices, Code.PULLS_EXCLUDED, withReasons(Fate.EXCLUDED));
        name(notices, Code.PULLS_READ_ANEW,
                content.log().readAnew().stream().map(taken -> taken.pull() + " (" + taken.readAnew().orElseThrow() + ")").toList());
        List<String> aborted = new ArrayList<>(withReasons(Fate.ABORTED));
        content.log().repeated().values().forEach(once -> aborted.add(once.pull() + " (then run again: " + once.reason() + ")"));
        name(notices, Code.PULLS_ABORTED, aborted);
        name(notices, Code.ENTRIES_TAKEN_BACK, content.log().takenBack().stream().map(EntryWords::brief).toList());
        name(notices, Code.FAR_FROM_EXPECTED, pulls(this::isFarFromExpected));
        name(notices, Code.GATES_BROKEN, gatesBroken());
        name(notices, Code.GATES_NOT_READ, gatesNotRead());
        if (plan.sequence().origin() == Sequence.Origin.DRAWN && !Order.isAsDrawn(plan.sequence())) {
            notices.add(Notice.of(Code.ORDER_NOT_DRAWN));
        }
        if (evidence.plannedClockUsed() && plan.analysis().drift() != Drift.NONE) {
            notices.add(Notice.of(Code.PLANNED_CLOCK_USED));
        }
        boolean correctionMatters = plan.question().measures().stream().anyMatch(PullValues::canBeCorrected);
        boolean correctionUnknown = correctionMatters && content.log().pulls().entrySet().stream()
                .anyMatch(pull -> !pull.getKey().warmUp() && corrected(pull.getValue()).isEmpty());
        if (correctionUnknown) {
            notices.add(Notice.of(Code.CORRECTION_UNKNOWN));
        }
        notices.addAll(evidence.air());
        if (plan.rig().leansOnAGuess()) {
            notices.add(Notice.of(Code.STARTING_GUESS_USED));
        }
        name(notices, Code.MEASURE_NOT_SEEN,
                plan.question().further().stream().filter(measure -> !evidence.canBeTabled(measure)).map(Measure::name).toList());
        if (plan.rig().refitScatter().filter(Scatter::isRecord).isPresent()) {
            name(notices, Code.NO_RECORD_FOR_MEASURE, secondary.stream().map(one -> one.measure().name()).toList());
        }
        return notices;
    }

    /** Before the last planned look, pulls of installs to come are not missing. */
    private boolean isDue(PullSeen seen) {
        return look.taken().isEmpty() || plan.sequence().installs().limit(look.reached())
                .anyMatch(install -> install.label().equals(seen.pull().install()));
    }

    private static void name(List<Notice> notices, Code code, List<String> names) {
        if (!names.isEmpty()) {
            notices.add(Notice.naming(code, names));
        }
    }

    private List<String> pulls(Predicate<PullSeen> wanted) {
        return evidence.pulls().stream().filter(wanted).map(seen -> seen.pull().toString()).toList();
    }

    private List<String> withReasons(Fate fate) {
        return evidence.pulls().stream().filter(seen -> seen.fate() == fate).map(seen -> seen.pull() + " (" + seen.reason() + ")").toList();
    }

    private boolean isFarFromExpected(PullSeen seen) {
        Measure deciding = plan.question().deciding();
        Double value = seen.values().get(deciding.name());
        return seen.fate() == Fate.USED && value != null && plan.question().isFarFromExpected(deciding.unit().toSi(value));
    }

    /** A gate that was read nowhere, and one near the reference that was read, but not there, could not be held against anything. */
    private List<String> gatesNotRead() {
        Optional<PullSeen> reference = reference();
        return plan.gates().stream().flatMap(gate -> {
            Condition condition = gate.condition();
            boolean isRead = evidence.pulls().stream().anyMatch(seen -> seen.conditionsSi().containsKey(condition));
            boolean isOpen = gate.limit() instanceof Gate.NearReference
                    && reference.filter(seen -> !seen.conditionsSi().containsKey(condition)).isPresent();
            return !isRead ? Stream.of(condition.words())
                    : isOpen ? Stream.of(condition.words() + " at " + reference.orElseThrow().pull()) : Stream.empty();
        }).toList();
    }

    private Optional<PullSeen> reference() {
        return evidence.pulls().stream().filter(seen -> !seen.pull().warmUp()).findFirst();
    }

    private Optional<?> corrected(LogEntry.PullTaken taken) {
        return taken.file().isEmpty()
                ? taken.corrected()
                : content.mappings().stream().filter(mapping -> TestFolder.sha256(mapping).equals(taken.mappingSha256())).findFirst()
                        .flatMap(mapping -> mapping.corrected());
    }

    /** Gates are held against the first counted pull of the first install. */
    private List<String> gatesBroken() {
        List<String> broken = new ArrayList<>(content.log().gatesOverridden().keySet().stream().map(Object::toString).toList());
        Optional<PullSeen> reference = reference();
        for (PullSeen seen : evidence.pulls()) {
            boolean holds = seen.fate() != Fate.USED || plan.gates().stream().allMatch(gate -> holds(gate, seen, reference));
            if (!holds && !broken.contains(seen.pull().toString())) {
                broken.add(seen.pull().toString());
            }
        }
        return broken;
    }

    private static boolean holds(Gate gate, PullSeen seen, Optional<PullSeen> reference) {
        Double reading = seen.conditionsSi().get(gate.condition());
        OptionalDouble beside = reference.map(pull -> pull.conditionsSi().get(gate.condition())).map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        return reading == null || gate.holds(reading, beside);
    }
}
