package fairpull.report.wording;

import fairpull.domain.pull.LogEntry;
import fairpull.domain.unit.Units;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One change of a plan: claims in their own words, engine speeds in rpm, everything else as it stands in the plan. */
public final class ChangeWords {
    private static final int LONGEST = 160;
    private static final Pattern OWN_WORDS = Pattern.compile("\"words\":\"([^\"\\\\]*)\"");
    private static final String CLAIM = "question.claims.";
    private static final String SPEED = "RadPerS";

    private ChangeWords() {
    }

    /** {@return the place, what stood there and what stands there now} */
    public static String sentence(LogEntry.Change change) {
        return place(change.place()) + ": " + value(change.place(), change.before()) + " → " + value(change.place(), change.after());
    }

    private static String place(String place) {
        return place.matches("question\\.claims\\.\\d+") ? "claim " + (Integer.parseInt(place.substring(CLAIM.length())) + 1) : place;
    }

    private static String value(String place, String json) {
        if (json.isBlank()) {
            return "nothing";
        }
        Matcher words = OWN_WORDS.matcher(json);
        if (place.startsWith(CLAIM) && words.find()) {
            return "“" + words.group(1) + "”";
        }
        if (place.endsWith(SPEED) && json.matches("[\\d.E-]+")) {
            return Numbers.given(Math.round(Units.RPM.fromSi(Double.parseDouble(json)) * 10) / 10.0, Units.RPM.symbol());
        }
        return json.length() <= LONGEST ? json : json.substring(0, LONGEST) + "…";
    }
}
