package fairpull.report.wording;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Notice;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The sentences about what the exports of pulls themselves show. */
final class PullNoticeWords {
    private static final double MOST_TOLD = 10;
    private static final Pattern WRITTEN = Pattern.compile("→ ([^,)]+)");

    private PullNoticeWords() {
    }

    static String sentence(Notice notice, Surface surface) {
        String names = NoticeWords.names(notice);
        return switch (notice.code()) {
            case UNITS_MIXED_UP -> "Power is " + fixed(notice, 0, 3) + " × torque × engine speed all along, which a mixed-up unit explains "
                    + "(read as → likely is): " + names + "; " + remedy(notice, surface);
            case POWER_NOT_TORQUE_TIMES_SPEED -> disagreement(notice) + ": " + names + "; look whether one of the two is corrected, "
                    + "smoothed or of another shaft, and judge by the one that was measured.";
            case CORRECTION_TWICE -> "Corrected power is " + fixed(notice, 0, 4) + " × the uncorrected where the air noted gives "
                    + fixed(notice, 1, 4) + ", as if corrected twice: " + names + "; read the uncorrected column anew: "
                    + ReadAnewWords.remedy(notice, "--column power=P:kW --corrected none", surface) + ".";
            case CORRECTION_NOT_APPLIED -> "Columns named corrected and uncorrected differ by a factor of " + fixed(notice, 0, 4)
                    + " where the air noted gives " + fixed(notice, 1, 4) + ", so no correction was applied: " + names
                    + "; read them anew: " + ReadAnewWords.remedy(notice, "--corrected none", surface) + ".";
            case CORRECTION_STEP -> "From one pull to the next the whole curve steps by the correction factor " + fixed(notice, 0, 4) + ": "
                    + names + "; look whether one was exported corrected and the other not.";
            case PLATEAU -> "The same value stands up to " + NoticeWords.whole(notice, 0) + " rows in a run at the top ("
                    + fixed(notice, 1, 2) + " as exported): " + names + "; ask for the raw export, since the instrument was at its limit "
                    + "or values were filled in.";
            case TIME_NOT_RISING -> "Time stands still or runs back in up to " + NoticeWords.whole(notice, 0) + " rows of a file: " + names
                    + "; look whether rows were moved or several pulls stand in one file.";
            case VALUES_IMPLAUSIBLE -> "Values that no engine and no roller gives: " + names
                    + "; look whether column and unit are right, and read them anew, or leave those pulls out.";
            default -> ofBandOrPairs(notice, names);
        };
    }

    private static String ofBandOrPairs(Notice notice, String names) {
        return switch (notice.code()) {
            case BAND_NOT_COVERED -> "Up to " + rpm(notice, 0) + " of the band " + bare(notice, 1) + " to " + rpm(notice, 2)
                    + " are missing: " + names + "; sweep further, or amend the band.";
            case BAND_SPARSE -> "As few as " + NoticeWords.whole(notice, 0) + " samples in the deciding band, with a gap of "
                    + rpm(notice, 1) + ": " + names + "; export with more samples.";
            case THROTTLE_NOT_FULL -> "Throttle falls to " + AirWords.percent(notice.figures().get(0)) + " within the sweep: "
                    + names + "; leave those pulls out if the pedal was lifted, or look whether the sensor ever shows 100 %.";
            case POWER_COLLAPSES -> "Power falls by up to " + AirWords.percent(notice.figures().get(0)) + " from one row to the next "
                    + "at the end of the sweep (" + rpm(notice, 1) + "), as after lift-off: " + names
                    + "; export the throttle beside it, or cut those rows from a copy of the file, and import that.";
            case SPIKES -> "Up to " + NoticeWords.whole(notice, 0) + " single values stand far from their neighbours, the worst by "
                    + share(notice.figures().get(1)) + " at " + rpm(notice, 2) + ": " + names
                    + "; look for a loose sensor, and compare the finding without those pulls.";
            case NUMBERS_REPEATED -> "The same numbers in two pulls, which no engine repeats: " + names
                    + "; find the export of the pull that is missing, or exclude the copy.";
            case PULL_IS_MULTIPLE -> "One pull is another times a factor (" + fixed(notice, 0, 4) + " for the first) to the last digit: "
                    + names + "; ask where its numbers come from, and exclude it until that is known.";
            case STRETCH_COPIED -> "Up to " + NoticeWords.whole(notice, 0) + " rows in a run stand to the last digit in two pulls: "
                    + names + "; ask for the raw exports, and exclude the copy until then.";
            case STARTS_OUT_OF_ORDER -> "Started before the pull ahead of it in its install, by their times: " + names
                    + "; correct the times or the numbers of the pulls.";
            default -> throw new IllegalArgumentException(notice.code() + " is not about the exports of pulls");
        };
    }

    /** The likely unit stands in the names: the column that it belongs to is the one to be named. */
    private static String remedy(Notice notice, Surface surface) {
        String options = notice.names().stream().flatMap(name -> WRITTEN.matcher(name).results()).map(found -> found.group(1).strip())
                .flatMap(symbol -> Units.find(symbol).stream()).distinct()
                .map(unit -> "--column " + (unit.quantity() == Quantity.TORQUE ? "torque=T:" : "power=P:") + unit.symbol())
                .collect(Collectors.joining(" "));
        return options.isEmpty() ? "look where the decimal point of power or torque belongs, and export it again."
                : "name the unit and read it anew" + new Remedy(" (P or T being the header of the column)", "").on(surface) + ": "
                + ReadAnewWords.remedy(notice, options, surface) + ".";
    }

    private static String disagreement(Notice notice) {
        double ratio = notice.figures().get(0);
        double offset = notice.figures().get(1);
        String worst = ", at worst by " + share(notice.figures().get(2)) + " at " + rpm(notice, 3);
        if (Double.isFinite(ratio)) {
            return "Power is " + fixed(notice, 0, 3) + " × torque × engine speed all along, and no unit explains it";
        }
        return "Power is not torque × engine speed" + (Double.isFinite(offset)
                ? " but differs by about " + AirWords.fixed(Units.KILOWATT.fromSi(offset), 2, "kW") + " all along" : "") + worst;
    }

    /** Beyond tenfold nobody asks by how much; values that nothing gives would print digits without end. */
    private static String share(double share) {
        return share <= MOST_TOLD ? AirWords.percent(share) : "more than " + Numbers.given(100 * MOST_TOLD, "%");
    }

    private static String fixed(Notice notice, int place, int decimals) {
        return AirWords.fixed(notice.figures().get(place), decimals, "");
    }

    private static String rpm(Notice notice, int place) {
        return bare(notice, place) + Numbers.THIN + Units.RPM.symbol();
    }

    private static String bare(Notice notice, int place) {
        Unit rpm = Units.RPM;
        return Long.toString(Math.round(rpm.fromSi(notice.figures().get(place))));
    }
}
