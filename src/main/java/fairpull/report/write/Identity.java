package fairpull.report.write;

import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.finding.Checks;
import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sequence;
import fairpull.domain.pull.LogEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Leaves out of a judgement what says whose car, whose part and whose rig it was. */
final class Identity {
    static final String NOTE = "Identity was left out of this report: names of test, rig, parts and sessions, remarks, the words of "
            + "claims, and the contents of amendments. Names of measures and the reasons given for exclusions and amendments are kept as "
            + "written: read them before passing this on.";

    private Identity() {
    }

    static Judgement leftOut(Judgement judgement) {
        Map<String, String> sessions = new LinkedHashMap<>();
        judgement.plan().sequence().sessions().forEach(session -> sessions.put(session.name(), "session " + (sessions.size() + 1)));
        List<ClaimStanding> claims = new ArrayList<>();
        for (ClaimStanding standing : judgement.claims()) {
            Claim claim = new Claim("claim " + (claims.size() + 1), standing.claim().measure(), standing.claim().atLeastSi());
            claims.add(new ClaimStanding(claim, standing.standing()));
        }
        return new Judgement(plan(judgement.plan(), sessions), judgement.seal(), finding(judgement.deciding(), sessions),
                judgement.withExcluded().map(finding -> finding(finding, sessions)), judgement.secondary(), claims, judgement.pulls(),
                judgement.amendments().stream().map(Identity::amendment).toList(), judgement.notices(), judgement.look(),
                judgement.curve().map(found -> found.of(found.curves().mapSessions(sessions::get))));
    }

    private static Plan plan(Plan plan, Map<String, String> sessions) {
        Question asked = plan.question();
        Question question = new Question("reference", "changed", asked.deciding(), asked.further(), asked.expectedLevelSi(),
                asked.worthwhileGainSi(), asked.sides(), asked.errorRate(), asked.powerWanted(), List.of());
        Rig own = plan.rig();
        Rig rig = new Rig("rig", own.kind(), own.sweepRateRadPerS2(), own.gear(), own.tyrePressurePa(), List.of(), own.pullScatter(),
                own.refitScatter());
        Sequence order = plan.sequence();
        Sequence sequence = new Sequence(order.sessions().stream()
                .map(session -> session.named(sessions.get(session.name()))).toList(), order.origin(), order.seed(),
                order.pullIntervalS(), order.swapS(), order.setUpS());
        return new Plan("A back-to-back test", invented(plan.remark()), question, plan.analysis(), rig, sequence, plan.gates(), List.of(),
                plan.looks(), plan.curve());
    }

    /** That data are invented is no identity, and must never be lost. */
    private static String invented(String remark) {
        return Stream.of(remark.split("(?<=[.!?])\\s+")).filter(sentence -> sentence.toLowerCase(Locale.ROOT).contains("invented"))
                .collect(Collectors.joining(" "));
    }

    private static Finding finding(Finding finding, Map<String, String> sessions) {
        List<Checks.InstallMean> installs = finding.installs().stream().map(install -> new Checks.InstallMean(
                sessions.getOrDefault(install.session(), "session"), install.install(), install.part(), install.pulls(), install.mean(),
                install.standardDeviation())).toList();
        return new Finding(finding.unit(), finding.settings(), finding.verdict(), finding.worthwhile(), finding.estimate(),
                finding.interval(), finding.equivalence(), finding.scatter(), finding.installMeansTest(), finding.installMeansInterval(),
                finding.tippingScatter(), finding.returnCheck(), finding.recordCheck(), finding.randomisation(), finding.drift(),
                finding.leaveOnePullOut(), finding.leaveOneInstallOut(), finding.outliers(), installs, finding.notices());
    }

    private static AmendmentSeen amendment(AmendmentSeen seen) {
        LogEntry.Amended amended = seen.amendment();
        List<LogEntry.Change> places = amended.changes().stream().map(change -> new LogEntry.Change(change.place(), "", "")).toList();
        return new AmendmentSeen(seen.at(), new LogEntry.Amended(amended.reason(), places, amended.planSha256Before(),
                amended.planSha256After()), seen.afterFirstData());
    }
}
