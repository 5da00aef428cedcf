package fairpull.report.wording;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Notice;

/** One sentence for each notice, with what to do where something can be done. */
public final class NoticeWords {
    private NoticeWords() {
    }

    /** {@return the sentence of a notice whose figures are in {@code unit}, with what to do on the command line} */
    public static String sentence(Notice notice, String unit) {
        return sentence(notice, unit, Surface.COMMAND_LINE);
    }

    /** {@return the same, with what to do on a surface} */
    public static String sentence(Notice notice, String unit, Surface surface) {
        return switch (notice.code()) {
            case REFIT_SCATTER_NOT_SEEN -> "Refit scatter came out as zero: these installs are too few to show it, which does not "
                    + "mean that this rig has none; repeated baselines would give a record.";
            case UNEQUAL_PULLS -> "Installs have " + whole(notice, 0) + " to " + whole(notice, 1)
                    + " counted pulls; a change is only announced where the test on install means agrees.";
            case RECORD_TOO_SMALL -> "The installs scatter more than the rig record, or the starting guess in its place, says (F = "
                    + given(notice, 0) + ", " + Numbers.p(notice.figures().get(1)) + "), so the interval may be too short; renew the "
                    + "record, or judge by own data.";
            case SCATTER_TAKEN_AS_KNOWN -> "Both scatters were taken as known exactly, so the normal distribution was used; "
                    + "the interval is too short if they are not.";
            case PULLS_IDENTICAL -> "All pulls of each install are equal to the last digit, which real pulls are not; "
                    + "check whether one export was taken several times, or values were rounded or copied.";
            case NO_RETURN_TO_A -> "A was never fitted again after B, so a drift over the day would look the same as a change; "
                    + "fitting A once more would tell them apart.";
            case DID_NOT_COME_BACK -> didNotComeBack(notice, unit);
            case OUTLIERS -> "Far from the other pulls of their install: " + names(notice)
                    + "; they were kept, and only a cause found in the log would be a reason to leave one out.";
            case ONE_PULL_DECIDES -> "The verdict would be another one without " + anyOf(notice)
                    + "; look at its trace and conditions before relying on it.";
            case ONE_INSTALL_DECIDES -> "The verdict would be another one without " + anyOf(notice)
                    + "; a further install would say more than further pulls.";
            case PLANNED_CLOCK_USED -> "The times of the pulls come from the plan, not from the day; "
                    + "drift is only as right as the day ran to plan, so note the start of each pull.";
            case CORRECTION_UNKNOWN -> "It is not known whether the values were already corrected for air when they came in; "
                    + new Remedy("say so with --corrected and --because by importing them again", "ask whoever exported them")
                    .on(surface) + ", as a correction may be missing or applied twice.";
            case CORRECTED_HERE, AIR_CARRIED, AIR_CARRIED_LONG, FACTOR_SPREAD, FACTOR_STEP, FACTOR_OUTSIDE ->
                    CorrectionWords.sentence(notice);
            case PULLS_AWAITED -> "Not in yet: " + names(notice) + "; bring them in, or note why they were not run.";
            case PULLS_MISSING -> "Planned, but never came in: " + names(notice) + "; bring them in, or note why they were not run.";
            case PULLS_EXCLUDED -> "Left out, with the reason in the table of pulls: " + names(notice)
                    + "; the finding with them is given beside it.";
            case GATES_BROKEN -> "Run although a gate did not hold: " + names(notice) + "; compare their conditions with the others.";
            case NOT_SEALED, SEALED_AFTER_DATA, SEALED_AGAIN, AMENDED_AFTER_DATA, PLAN_CHANGED_BY_HAND, SEAL_CHANGED_BY_HAND,
                    LOG_CHANGED_BY_HAND, EXPORT_CHANGED_BY_HAND, MAPPING_CHANGED_BY_HAND, PULLS_BEFORE_SEAL, ORDER_NOT_DRAWN,
                    CLOCK_CONTRADICTS_ORDER, GATES_NOT_READ, PULLS_ABORTED, PULLS_READ_ANEW, FAR_FROM_EXPECTED, LOG_CUT_SHORT,
                    ENTRIES_TAKEN_BACK, EXPORT_NOT_IN_LOG, LOG_STATE ->
                    FolderNoticeWords.sentence(notice, surface);
            case UNITS_MIXED_UP, POWER_NOT_TORQUE_TIMES_SPEED, CORRECTION_TWICE, CORRECTION_NOT_APPLIED, CORRECTION_STEP, PLATEAU,
                    TIME_NOT_RISING, VALUES_IMPLAUSIBLE, BAND_NOT_COVERED, BAND_SPARSE, THROTTLE_NOT_FULL, POWER_COLLAPSES, SPIKES,
                    NUMBERS_REPEATED, PULL_IS_MULTIPLE, STRETCH_COPIED, STARTS_OUT_OF_ORDER -> PullNoticeWords.sentence(notice, surface);
            case SWEEP_NOT_FOUND, SWEEPS_SEVERAL, THROTTLE_NEVER_FULL, SLIP, GEAR_CHANGED, SPEED_RATIO_DIFFERS, SWEEP_RATE_DIFFERS,
                    POWER_FROM_MOTION -> SweepNoticeWords.sentence(notice);
            case NO_RECORD_FOR_MEASURE -> "The rig record is one of the deciding measure; by their own data were judged: "
                    + names(notice) + ".";
            case STARTING_GUESS_USED -> "The scatter taken from outside this test is a starting guess, engineering judgement with "
                    + "no source and no record of this rig; baselines of the rig" + new Remedy(" (fairpull rig add)", "").on(surface)
                    + " would put its own figure in its place.";
            case MEASURE_NOT_SEEN -> "Too few values to judge: " + names(notice)
                    + "; the exports may lack the channel, or values to be typed are not noted yet.";
            case DAY_ENDED_EARLY, DAY_NOT_OVER, LOOK_APPLIED, LOOK_NOT_PLANNED, LOOK_NOT_LOGGED, LOOKED_TOO_OFTEN, PLAN_LOOK_TOO_EARLY,
                    PLAN_LOOK_DECIDES_LITTLE, PLAN_LOOK_APPROXIMATE ->
                    LookWords.sentence(notice, surface);
            case PLAN_TOO_FEW_INSTALLS, PLAN_ORDER_LEANS, PLAN_SINGLE_PULLS, PLAN_NO_WARM_UPS, PLAN_NO_WORTHWHILE_GAIN,
                    PLAN_FUEL_NOT_KNOWN, PLAN_NOT_SIZED ->
                    ofPlan(notice, surface);
        };
    }

    private static String ofPlan(Notice notice, Surface surface) {
        return switch (notice.code()) {
            case PLAN_TOO_FEW_INSTALLS -> "With " + whole(notice, 0) + " installs and no rig record nothing can be judged: refit scatter "
                    + "cannot show; plan at least " + whole(notice, 1) + " installs, or name a record with its degrees of freedom.";
            case PLAN_ORDER_LEANS -> "B stands " + (notice.figures().get(0) > 0 ? "later" : "earlier")
                    + " than A on average, and no drift is modelled, so a drift over the day "
                    + "would pass for a change; plan a balanced order such as ABABA or ABBA, or model a linear drift.";
            case PLAN_SINGLE_PULLS -> "One counted pull an install: a pull that went wrong cannot be told from a refit; "
                    + "plan two or more.";
            case PLAN_NO_WARM_UPS -> "Some installs have no warm-up pull; first pulls differ from later ones, whatever is fitted.";
            case PLAN_NO_WORTHWHILE_GAIN -> "No worthwhile gain is named, so “no difference that matters” can never be said; "
                    + "name the smallest gain that matters.";
            case PLAN_FUEL_NOT_KNOWN -> "iso-1585-ci follows fuel and boost, which change through a pull and which this program does "
                    + "not read, so it cannot bring values to it: " + names(notice) + "; export them corrected so and "
                    + new Remedy("import with --corrected iso-1585-ci", "say so when they come in").on(surface)
                    + ", or plan with no correction and gates on the air.";
            case PLAN_NOT_SIZED -> "Without figures for pull scatter and refit scatter it is not known what this plan can see; "
                    + "give both, a guess labelled as one if need be.";
            default -> throw new IllegalArgumentException(notice.code() + " is not about a plan");
        };
    }

    private static String didNotComeBack(Notice notice, String unit) {
        double low = notice.figures().get(1);
        double high = notice.figures().get(2);
        Numbers numbers = Numbers.resolving((high - low) / 2, unit);
        return "The last A does not agree with the first: it differs by " + numbers.signed(notice.figures().get(0)) + " ("
                + Numbers.level(notice.figures().get(3)) + " interval " + numbers.fromTo(low, high)
                + "); something other than B has changed over the day.";
    }

    static String whole(Notice notice, int place) {
        return Long.toString(Math.round(notice.figures().get(place)));
    }

    private static String given(Notice notice, int place) {
        return Numbers.resolving(notice.figures().get(place), "").bare(notice.figures().get(place));
    }

    static String names(Notice notice) {
        return String.join(", ", notice.names());
    }

    private static String anyOf(Notice notice) {
        return notice.names().size() == 1 ? notice.names().get(0) : "any one of " + names(notice);
    }
}
