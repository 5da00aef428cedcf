package fairpull.report.wording;

import fairpull.domain.plan.Correction;
import java.util.Map;
import java.util.stream.Collectors;

/** What was written for a table of readings, in words. */
public final class AirTableWords {
    private AirTableWords() {
    }

    /**
     * {@return the sentences}
     *
     * @param rows how many readings
     * @param standard corrected to which standard
     * @param lowest the smallest factor
     * @param highest the largest factor
     * @param file where the table went
     * @param warnings how many rows carry each warning, by its id
     */
    public static String sentence(int rows, Correction standard, double lowest, double highest, String file,
                                  Map<String, Integer> warnings) {
        String counts = warnings.entrySet().stream().map(warning -> warning.getKey() + " (" + Numbers.count(warning.getValue(), "row")
                + ")").collect(Collectors.joining(", "));
        return "Corrected " + Numbers.count(rows, "reading") + " to " + PlanWords.standard(standard) + ", factors "
                + AirWords.fixed(lowest, 4, "") + " to " + AirWords.fixed(highest, 4, "") + ", written to " + file + "."
                + (counts.isEmpty() ? "" : " Warnings: " + counts + ".");
    }
}
