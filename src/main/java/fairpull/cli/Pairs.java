package fairpull.cli;

import fairpull.app.usecase.UsageException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Options of the form {@code NAME=VALUE} that may be given several times, each name once. */
final class Pairs {
    private Pairs() {
    }

    /** {@return the values by name, in the order in which they were typed} */
    static Map<String, String> of(String option, List<String> typed) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : typed) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new UsageException(option, "expected a name, = and a value; found “" + pair + "”");
            }
            if (pairs.put(pair.substring(0, equals).strip(), pair.substring(equals + 1)) != null) {
                throw new UsageException(option, pair.substring(0, equals) + " is given twice; give it once");
            }
        }
        return pairs;
    }
}
