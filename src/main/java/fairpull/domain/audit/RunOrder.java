package fairpull.domain.audit;

import fairpull.domain.plan.Part;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

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
        return (int) count(letters, part);
    }

    /** {@return whether both states were run on one of the days} */
    public boolean sharesADay() {
        return days().anyMatch(day -> day.contains("A") && day.contains("B"));
    }

    /**
     * {@return whether it goes back: each state was run after the other somewhere, so that what drifts with the clock shows; within a day,
     * as in ABA or BAB, over days that begin with either, as in AB|BA, or from day to day where each has one state, as in A|B|A}
     */
    public boolean returns() {
        List<String> spans = days().allMatch(day -> day.matches("A+|B+")) ? List.of(letters.replace("|", "")) : days().toList();
        return spans.stream().anyMatch(day -> day.contains("AB")) && spans.stream().anyMatch(day -> day.contains("BA"));
    }

    /** {@return how many days it takes} */
    public int numberOfDays() {
        return (int) days().count();
    }

    /**
     * {@return how often the variance of days enters the difference of both means: Σ (share of A that a day holds − share of B)²; 2 where
     * either part has one day of its own, 0 where every day holds as large a share of both}
     */
    public double dayWeight() {
        return days().mapToDouble(day -> (double) count(day, Part.A) / installs(Part.A) - (double) count(day, Part.B) / installs(Part.B))
                .map(apart -> apart * apart).sum();
    }

    private Stream<String> days() {
        return Stream.of(letters.split("\\|"));
    }

    private static long count(String day, Part part) {
        return day.chars().filter(letter -> letter == part.name().charAt(0)).count();
    }
}
