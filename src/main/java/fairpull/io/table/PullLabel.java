package fairpull.io.table;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a pull in a heading, and what the heading says beside it: {@code A1-2 power (kW)} is the power of pull A1-2,
 * {@code Torque run 3 (Nm)} the torque of run 3.
 *
 * @param label the pull, as a plan names it or as word and number
 * @param rest the heading without it
 */
record PullLabel(String label, String rest) {
    private static final Pattern OF_A_PLAN =
            Pattern.compile("(?<![\\p{L}\\p{N}])([AB][1-9]\\d{0,2}-W?[1-9]\\d{0,3})(?![\\p{L}\\p{N}])");
    /** The words are common practice, no source. */
    private static final Pattern COUNTED = Pattern.compile(
            "(?<!\\p{L})(pull|run|sweep|lauf|messung|versuch)[\\s_.#-]*(?:no\\.?|nr\\.?)?[\\s_.#-]*(\\d{1,4})(?![\\p{L}\\p{N}]|[.,]\\d)",
            Pattern.CASE_INSENSITIVE);
    private static final String LOOSE = "[\\s_:/|,.–-]+";

    /** {@return the label in a heading, if there is one} */
    static Optional<PullLabel> in(String heading) {
        Matcher planned = OF_A_PLAN.matcher(heading);
        if (planned.find()) {
            return Optional.of(new PullLabel(planned.group(1), without(heading, planned)));
        }
        Matcher counted = COUNTED.matcher(heading);
        return counted.find()
                ? Optional.of(new PullLabel(counted.group(1).toLowerCase(Locale.ROOT) + " " + Integer.parseInt(counted.group(2)),
                        without(heading, counted)))
                : Optional.empty();
    }

    private static String without(String heading, Matcher found) {
        String before = heading.substring(0, found.start()).replaceAll(LOOSE + "$", "").strip();
        String after = heading.substring(found.end()).replaceAll("^" + LOOSE, "").strip();
        return (before + " " + after).strip();
    }
}
