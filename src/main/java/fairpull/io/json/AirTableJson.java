package fairpull.io.json;

import fairpull.domain.plan.Correction;
import java.util.List;
import java.util.Map;

/** What was written for a table of readings, as JSON. */
public final class AirTableJson {
    private AirTableJson() {
    }

    /**
     * {@return the document}
     *
     * @param standard corrected to which standard
     * @param rows how many readings
     * @param lowest the smallest factor
     * @param highest the largest factor
     * @param file where the table went
     * @param warnings how many rows carry each warning, by its id
     */
    public static String document(Correction standard, int rows, double lowest, double highest, String file,
                                  Map<String, Integer> warnings) {
        return Tree.empty().text("standard", standard.id()).whole("rows", rows).number("lowestFactor", lowest)
                .number("highestFactor", highest).text("file", file)
                .trees("warnings", List.copyOf(warnings.entrySet()), (tree, warning) -> tree.text("warning", warning.getKey())
                        .whole("rows", warning.getValue()))
                .document();
    }
}
