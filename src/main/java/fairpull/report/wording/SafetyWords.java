package fairpull.report.wording;

import fairpull.domain.plan.Rig;
import java.util.ArrayList;
import java.util.List;

/**
 * The cautions of a run sheet. They do not depend on the plan's checklist and cannot be switched off.
 *
 * <p>Sources. Noise: 29 CFR 1910.95, table G-16 (90 dBA 8 h, 95 dBA 4 h, 100 dBA 2 h, 105 dBA 1 h, 110 dBA 0.5 h, 115 dBA 0.25 h or
 * less); NIOSH's recommended limit, T = 8 h / 2^((L − 85)/3), which gives 15 min at 100 dBA. Carbon monoxide: NIOSH, 35 ppm as the mean of
 * a working day, ceiling 200 ppm, immediately dangerous to life or health 1200 ppm; OSHA, 50 ppm over 8 h. Restraints, extinguisher, cell:
 * common practice, no source.
 */
public final class SafetyWords {
    private static final double NIOSH_LEVEL_DBA = 85;
    private static final double NIOSH_EXCHANGE_DB = 3;
    private static final double NIOSH_DAY_MIN = 480;
    private static final double LOUD_CELL_DBA = 100;

    private static final String FIRST = "Local codes, the makers’ instructions and licensed practice come first. If in doubt, do not run.";
    private static final String IN_A_ROOM = ", nobody ever in line with turning parts; extraction running, carbon monoxide meter in sight; "
            + "ear and eye protection on; mind hot parts; extinguisher at hand. " + FIRST;

    private SafetyWords() {
    }

    /** {@return what comes before everything else on the sheet} */
    public static String deferral() {
        return "Local codes, the makers’ instructions and licensed practice come first; where they ask for more than this sheet, they "
                + "hold. If in doubt, do not run.";
    }

    /** {@return the cautions for a kind of rig in two sentences, to be in view as long as the day is run} */
    public static String onTheDay(Rig.Kind kind) {
        return switch (kind) {
            case ROLLER_INERTIA, ROLLER_BRAKE -> "A car at full throttle on rollers can kill: look at every strap, hook and anchor before "
                    + "each install; nobody in the cell but the driver" + IN_A_ROOM;
            case HUB -> "A car at full throttle on hubs can kill: look at stands, tether and hub bolts before each install; nobody in the "
                    + "cell but the driver" + IN_A_ROOM;
            case ENGINE_BENCH -> "An engine at full throttle can kill: look at mounts, couplings and the shaft guard before each install; "
                    + "nobody in the cell" + IN_A_ROOM;
            case ROAD, STRIP -> "A car at full throttle can kill: look at harness, tyres and brakes before each run; nobody on or beside "
                    + "the course; ear and eye protection on; mind hot parts; extinguisher at hand. " + FIRST;
        };
    }

    /** {@return the cautions for a kind of rig, each under the word that it is found by} */
    public static List<Said> of(Rig.Kind kind) {
        List<Said> cautions = new ArrayList<>();
        cautions.add(new Said("Restraints", restraints(kind)));
        cautions.add(new Said("People", people(kind)));
        cautions.add(new Said("Carbon monoxide", "never indoors without extraction; meter on and in sight. Limits: 35 ppm over the "
                + "working day and never above 200 ppm (NIOSH), 50 ppm over 8 h (OSHA); 1200 ppm endangers life at once (NIOSH). "
                + "Headache or dizziness: stop the engine, get out, call for help."));
        cautions.add(new Said("Noise", "longest time a day without ear protection (29 CFR 1910.95): 8 h at 90 dBA, 4 h at 95, 2 h at 100, "
                + "1 h at 105, 30 min at 110, 15 min at 115. NIOSH advises no more than " + Math.round(nioshMinutes(LOUD_CELL_DBA))
                + " min at 100 dBA. Wear ear and eye protection."));
        cautions.add(new Said("Fire", "extinguisher at hand, and somebody who can use it; mind fuel, hoses and hot parts after every swap; "
                + "everybody knows the stop switch."));
        return cautions;
    }

    /** Minutes a day at a sound level in dBA by NIOSH's rule. */
    static double nioshMinutes(double level) {
        return NIOSH_DAY_MIN / Math.pow(2, (level - NIOSH_LEVEL_DBA) / NIOSH_EXCHANGE_DB);
    }

    private static String restraints(Rig.Kind kind) {
        return switch (kind) {
            case ROLLER_INERTIA, ROLLER_BRAKE -> "rear tether first on and last off; inspect every strap, hook and anchor before "
                    + "each install; no steering and no braking in the sweep; tyres sound and rated for the speed.";
            case HUB -> "rear tether first on and last off. Car on stands that cannot move, hubs bolted to the torque asked for and "
                    + "looked at before each install. No braking during a sweep.";
            case ENGINE_BENCH -> "engine, shaft and hoses secured, shaft guard closed; inspect mounts and couplings before each install.";
            case ROAD, STRIP -> "belts and helmet as the ground asks for; inspect harness, tyres and brakes before each run. Closed ground "
                    + "only.";
        };
    }

    private static String people(Rig.Kind kind) {
        return switch (kind) {
            case ROLLER_INERTIA, ROLLER_BRAKE, HUB -> "nobody in the cell during a pull but the driver in the seat; nobody ever in line "
                    + "with turning parts. Loose clothing and tools away.";
            case ENGINE_BENCH -> "nobody in the cell during a pull; nobody ever in line with turning parts. Loose clothing and tools away.";
            case ROAD, STRIP -> "nobody on or beside the course during a run; the start is given only when it is clear.";
        };
    }
}
