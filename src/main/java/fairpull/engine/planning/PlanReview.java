package fairpull.engine.planning;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.SizeLooks;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;

/** Holds a plan against what a fair comparison has: a return to A, enough installs, an order that drift cannot pass for a gain. */
public final class PlanReview {
    private final Plan plan;
    private final List<Install> installs;
    private final List<Notice> notices = new ArrayList<>();

    private PlanReview(Plan plan) {
        this.plan = plan;
        this.installs = plan.sequence().installs().toList();
    }

    /** {@return what the plan lacks; nothing where it lacks nothing} */
    public static List<Notice> review(Plan plan) {
        PlanReview review = new PlanReview(plan);
        review.installs();
        review.order();
        review.pulls();
        review.question();
        review.notices.addAll(ofLooks(plan));
        review.fuel();
        return review.notices;
    }

    /**
     * {@return what its planned looks lack}
     *
     * @throws IllegalArgumentException if at a look the change cannot be told from sessions and drift
     */
    public static List<Notice> ofLooks(Plan plan) {
        boolean record = plan.rig().refitScatter().filter(Scatter::isRecord).isPresent();
        if (record || plan.looks().isEmpty()) {
            return List.of();
        }
        return PlanSizing.question(plan).flatMap(sized -> Sizing.figures(sized).looks()).map(SizeLooks::notices)
                .orElseGet(() -> LookReview.of(PlanSizing.layout(plan), List.of()));
    }

    private void installs() {
        boolean record = plan.rig().refitScatter().filter(Scatter::isRecord).isPresent();
        int terms = plan.sequence().sessions().size() + 1 + plan.analysis().drift().terms();
        if (!record && installs.size() <= terms) {
            notices.add(Notice.of(Code.PLAN_TOO_FEW_INSTALLS, (double) installs.size(), (double) (terms + 1)));
        }
    }

    private void order() {
        boolean returns = returnsToA(plan.sequence());
        if (!returns) {
            notices.add(Notice.of(Code.NO_RETURN_TO_A));
        }
        int lean = lean(plan.sequence());
        if (plan.analysis().drift() == Drift.NONE && returns && lean != 0) {
            notices.add(Notice.of(Code.PLAN_ORDER_LEANS, (double) Integer.signum(lean)));
        }
    }

    /** {@return whether in some session a part comes back after the other one} */
    static boolean returnsToA(Sequence sequence) {
        return sequence.sessions().stream().anyMatch(PlanReview::returnsToA);
    }

    /** Some part stands both before and after the other one. */
    private static boolean returnsToA(Session session) {
        List<Part> parts = session.installs().stream().map(Install::part).toList();
        return comesBack(parts, Part.A, Part.B) || comesBack(parts, Part.B, Part.A);
    }

    private static boolean comesBack(List<Part> parts, Part part, Part other) {
        int between = parts.indexOf(other);
        return between > 0 && parts.get(0) == part && parts.lastIndexOf(part) > between;
    }

    /**
     * Where it is not 0 a linear drift that is not modelled, the same in every session, passes for a change. As each session has a level
     * of its own, such a drift goes into the change with the sum of what the sessions lean: opposite ways, it cancels. Above 0: B is late.
     */
    private static int lean(Sequence sequence) {
        return sequence.sessions().stream().map(PlanReview::letters).mapToInt(letters -> OrderShape.of(letters).lean()).sum();
    }

    private static String letters(Session session) {
        return session.installs().stream().map(install -> install.part().name()).collect(Collectors.joining());
    }

    private void pulls() {
        IntSummaryStatistics counted = installs.stream().mapToInt(Install::countedPulls).summaryStatistics();
        if (counted.getMax() == 1) {
            notices.add(Notice.of(Code.PLAN_SINGLE_PULLS));
        } else if (counted.getMin() < counted.getMax()) {
            notices.add(Notice.of(Code.UNEQUAL_PULLS, (double) counted.getMin(), (double) counted.getMax()));
        }
        if (installs.stream().anyMatch(install -> install.warmUpPulls() == 0)) {
            notices.add(Notice.of(Code.PLAN_NO_WARM_UPS));
        }
    }

    private void fuel() {
        List<String> needing = plan.question().measures().stream().filter(measure -> measure.correction() == Correction.ISO_1585_CI)
                .map(Measure::name).toList();
        if (!needing.isEmpty()) {
            notices.add(Notice.naming(Code.PLAN_FUEL_NOT_KNOWN, needing));
        }
    }

    private void question() {
        if (plan.question().worthwhileGainSi().isEmpty()) {
            notices.add(Notice.of(Code.PLAN_NO_WORTHWHILE_GAIN));
        }
        if (plan.rig().pullScatter().isEmpty() || plan.rig().refitScatter().isEmpty()) {
            notices.add(Notice.of(Code.PLAN_NOT_SIZED));
        }
    }
}
