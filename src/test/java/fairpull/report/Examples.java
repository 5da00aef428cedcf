package fairpull.report;

import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.plan.Sides;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Seal;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Judgements to write reports of. All figures are invented; they only have to look like findings, not to follow from the pulls. */
public final class Examples {
    /** A text that would be markup, if it were not escaped. */
    public static final String HOSTILE = "<script>alert(1)</script>";
    public static final Measure POWER = new Measure("mean power 3000–6500 rpm",
            new Definition.MeanOverBand(Quantity.POWER, Units.RPM.toSi(3000), Units.RPM.toSi(6500)), Units.HORSEPOWER,
            Correction.SAE_J1349, Better.MORE);
    public static final Measure TORQUE = new Measure("peak torque", new Definition.Peak(Quantity.TORQUE), Units.POUND_FOOT,
            Correction.SAE_J1349, Better.MORE);
    private static final double[] NOISE = {0.3, -0.5, 0.1, 0.6, -0.4, -0.1, 0.5, -0.6, 0.2, -0.2, 0.4, -0.3};

    private Examples() {
    }

    /** Five installs, a gain shown to be worthwhile, with a record, an exclusion, an amendment, claims and a further measure. */
    public static Judgement gain() {
        Day day = new Day("ABABA", 5, 2, 5.1);
        Plan plan = day.plan("Electric water pump against belt pump", "All data of this test are invented.", "Saturday");
        List<PullSeen> pulls = new ArrayList<>(day.pulls(true));
        int left = pulls.size() - 11;
        PullSeen seen = pulls.get(left);
        pulls.set(left, new PullSeen(seen.pull(), Fate.EXCLUDED, "coolant gate broken, fan had tripped", seen.startedAt(), seen.minutes(),
                seen.values(), seen.conditionsSi()));
        Finding finding = Findings.gain(pulls);
        return new Judgement(plan, Optional.of(seal()), finding, Optional.of(Findings.gain(pulls)),
                List.of(new Judgement.Secondary(TORQUE, Findings.undecided("lbf·ft"), OptionalDouble.of(0.21))),
                List.of(new ClaimStanding(plan.question().claims().get(0), ClaimStanding.Standing.SHOWN),
                        new ClaimStanding(plan.question().claims().get(1), ClaimStanding.Standing.OPEN)), pulls,
                List.of(new AmendmentSeen(at(-60), new LogEntry.Amended("swap takes longer than thought",
                        List.of(new LogEntry.Change("sequence.swapS", "1200", "1800")), "0a", "0b"), false)),
                List.of(Notice.naming(Notice.Code.PULLS_EXCLUDED, List.of(seen.pull().toString()))));
    }

    /** Three installs, undecided, with nothing known beforehand. */
    public static Judgement undecided() {
        Day day = new Day("ABA", 3, 1, 0.8);
        List<PullSeen> pulls = day.pulls(true);
        return new Judgement(day.plan("Open air filter", "Invented.", "Monday"), Optional.empty(), Findings.undecided("hp", pulls),
                Optional.empty(), List.of(), List.of(), pulls, List.of(), List.of(Notice.of(Notice.Code.NOT_SEALED)));
    }

    /** A and B once each: cannot be judged. Clock times are not known. */
    public static Judgement cannotBeJudged() {
        Day day = new Day("AB", 4, 0, 4.2);
        List<PullSeen> pulls = day.pulls(false);
        return new Judgement(day.plan("Intake pipe", "Invented.", "Monday"), Optional.of(seal()), Findings.cannotBeJudged(pulls),
                Optional.empty(), List.of(), List.of(), pulls, List.of(), List.of());
    }

    /** Three sessions, no difference that matters. */
    public static Judgement threeSessions() {
        Day day = new Day("ABA|BAB|ABA", 4, 1, 0.1);
        List<PullSeen> pulls = day.pulls(true);
        return new Judgement(day.plan("Oil additive", "Invented.", "Tuesday", "Wednesday", "Thursday"), Optional.of(seal()),
                Findings.noDifference(pulls), Optional.empty(), List.of(), List.of(), pulls, List.of(), List.of());
    }

    /** Nine installs of twelve pulls, texts as long as they may be, a hostile title, alarms. */
    public static Judgement longTexts() {
        Day day = new Day("ABABABABA", 12, 3, 3);
        List<PullSeen> pulls = new ArrayList<>(day.pulls(true));
        pulls.set(20, new PullSeen(pulls.get(20).pull(), Fate.ABORTED, "converter would not lock", Optional.empty(), Double.NaN, Map.of(),
                Map.of()));
        pulls.set(40, new PullSeen(pulls.get(40).pull(), Fate.MISSING, "", Optional.empty(), Double.NaN, Map.of(), Map.of()));
        String title = HOSTILE + " & a title that goes on ".repeat(8);
        Plan plan = day.plan(title, "Invented. ".repeat(12), "Wednesday_with_a_name_that_never_breaks_".repeat(3));
        return new Judgement(plan, Optional.of(seal()), Findings.gain(pulls), Optional.empty(), List.of(),
                List.of(new ClaimStanding(new Claim("a claim that goes on and on ".repeat(6), POWER.name(), 9000),
                        ClaimStanding.Standing.CONTRADICTED)), pulls, List.of(),
                List.of(Notice.of(Notice.Code.PLAN_CHANGED_BY_HAND), Notice.of(Notice.Code.LOG_CHANGED_BY_HAND, 17.0),
                        Notice.naming(Notice.Code.EXPORT_CHANGED_BY_HAND, List.of("B1-3.csv", "A2-1.csv"))));
    }

    /** All of them, by a short name. */
    public static Map<String, Judgement> all() {
        return new java.util.TreeMap<>(Map.of("gain", gain(), "undecided", undecided(), "cannot", cannotBeJudged(), "sessions",
                threeSessions(), "long", longTexts()));
    }

    /** A test of one order of installs, with pulls of one value but for a fixed scatter. */
    public static Judgement of(String letters, int pullsEach, int warmUps, Unit unit) {
        Day day = new Day(letters, pullsEach, warmUps, 3);
        String[] names = new String[letters.split("\\|").length];
        for (int place = 0; place < names.length; place++) {
            names[place] = "day " + (place + 1);
        }
        List<PullSeen> pulls = day.pulls(true);
        return new Judgement(day.plan("Any", "Invented.", names), Optional.empty(), Findings.inUnit(Findings.gain(pulls), unit.symbol()),
                Optional.empty(), List.of(), List.of(), pulls, List.of(), List.of());
    }

    private static Seal seal() {
        return new Seal("00", "7KD2-9QXM-41", at(-90), "0.1.0", Optional.empty(), Optional.empty());
    }

    private static OffsetDateTime at(double minutes) {
        return OffsetDateTime.parse("2026-03-14T09:04:00+01:00").plusSeconds(Math.round(minutes * 60));
    }

    /** The layout of a day, and pulls that fit it. */
    private record Day(String letters, int pullsEach, int warmUps, double change) {
        Plan plan(String title, String remark, String... sessionNames) {
            Question question = new Question("belt-driven pump", "electric pump", POWER, List.of(TORQUE), OptionalDouble.of(157000),
                    OptionalDouble.of(Units.HORSEPOWER.differenceToSi(3)), Sides.TWO, 0.05, 0.8,
                    List.of(new Claim("gains at least 3 hp", POWER.name(), Units.HORSEPOWER.differenceToSi(3)),
                            new Claim("gains at least 5 hp", POWER.name(), Units.HORSEPOWER.differenceToSi(5))));
            Rig rig = new Rig("rollers in bay 2", Rig.Kind.ROLLER_INERTIA, OptionalDouble.empty(), "4", OptionalDouble.empty(), List.of(),
                    Optional.empty(), Optional.empty());
            Sequence sequence = new Sequence(sessions(sessionNames), Sequence.Origin.CHOSEN, OptionalLong.empty(), 300, 1800, 1200);
            return new Plan(title, remark, question, new Analysis(Drift.LINEAR, List.of()), rig, sequence,
                    List.of(new Gate(Condition.COOLANT, new Gate.Window(355, 365))), List.of());
        }

        private List<Session> sessions(String... names) {
            List<Session> sessions = new ArrayList<>();
            Map<Character, Integer> count = new HashMap<>();
            String[] parts = letters.split("\\|");
            for (int place = 0; place < parts.length; place++) {
                List<Install> installs = new ArrayList<>();
                for (char letter : parts[place].toCharArray()) {
                    String label = "" + letter + count.merge(letter, 1, Integer::sum);
                    installs.add(new Install(label, Part.valueOf("" + letter), pullsEach, warmUps, true));
                }
                sessions.add(new Session(names[place], installs));
            }
            return sessions;
        }

        List<PullSeen> pulls(boolean timed) {
            List<PullSeen> pulls = new ArrayList<>();
            String[] names = letters.split("\\|");
            int session = 0;
            for (Session each : sessions(names)) {
                double clock = 0;
                for (Install install : each.installs()) {
                    for (int number = 1; number <= warmUps + pullsEach; number++) {
                        boolean warm = number <= warmUps;
                        PullId id = new PullId(install.label(), warm, warm ? number : number - warmUps);
                        pulls.add(pull(id, timed, clock, session));
                        clock += 5.2;
                    }
                    clock += 27;
                }
                session++;
            }
            return pulls;
        }

        private PullSeen pull(PullId id, boolean timed, double clock, int session) {
            int install = Integer.parseInt(id.install().substring(1));
            double value = 211 + session * 4 + (id.install().startsWith("B") ? change : 0) + 0.3 * NOISE[install % 12]
                    + NOISE[(id.number() + 5 * install) % 12];
            Map<Condition, Double> conditions = Map.of(Condition.INTAKE_AIR, 300 + value / 500, Condition.COOLANT, 361.2,
                    Condition.BAROMETER, 98620.0);
            return new PullSeen(id, id.warmUp() ? Fate.WARM_UP : Fate.USED, "",
                    timed ? Optional.of(at(session * 1440 + clock)) : Optional.empty(), timed ? clock : Double.NaN,
                    Map.of(POWER.name(), value, TORQUE.name(), value * 0.9), conditions);
        }
    }
}
