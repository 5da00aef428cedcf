package fairpull.domain.audit;

import fairpull.domain.plan.Part;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The order in which the state before (A) and the state after (B) were run.
 *
 * @param letters one an install, such as {@code ABA}; a bar parts days
 */
public record RunOrder(String letters) {
    private static final Pattern FORM = Pattern.compile("[AB]+(\\|[AB]+)*");
    private static final int LONGEST = 60;

    public RunOrder {
        boolean sound = letters.length() <= LONGEST && FORM.matcher(letters).matches() && letters.contains("A") && letters.contains("B");
        if (!sound) {
            throw new IllegalArgumentException("an order is written as A and B, one letter an install, such as ABA or ABBA, a bar between "
                    + "days; was “" + letters + "”");
        }
    }

    /** {@return the order in a text such as {@code A/B/A}; slashes, hyphens and blanks do not count} */
    public static RunOrder parse(String text) {
        return new RunOrder(text.toUpperCase(Locale.ROOT).replaceAll("[\\s/,→–-]", ""));
    }

    /** {@return how many installs of a part there are} */
    public int installs(Part part) {
        return (int) letters.chars().filter(letter -> letter == part.name().charAt(0)).count();
    }

    /** {@return whether the state before was run again after the change, on one of the days} */
    public boolean returns() {
        for (String day : letters.split("\\|")) {
            int changed = day.indexOf('B');
            if (day.indexOf('A') >= 0 && day.indexOf('A') < changed && day.indexOf('A', changed) > changed) {
                return true;
            }
        }
        return false;
    }
}
