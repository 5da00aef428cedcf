package fairpull.engine.judging;

import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Tables of pulls for tests, written as sessions of installs: {@code install(table, "1", Part.A, 400.1, 400.3)}. */
final class Tables {
    private final List<PullRow> rows = new ArrayList<>();
    private final Map<String, Double> clock = new LinkedHashMap<>();
    private int installs;

    /** Adds an install of a session; pulls come every 5 minutes, swaps take 20 more. */
    Tables install(String session, Part part, double... values) {
        installs++;
        for (int k = 0; k < values.length; k++) {
            double minutes = clock.getOrDefault(session, 0.0);
            rows.add(new PullRow(session, part + "" + installs, part, "" + (k + 1), minutes, values[k], List.of()));
            clock.put(session, minutes + 5);
        }
        clock.merge(session, 20.0, Double::sum);
        return this;
    }

    PullTable table() {
        return new PullTable("hp", List.of(), rows);
    }

    /** One session of installs drawn at random. */
    static PullTable drawn(String order, int pulls, double change, double refitScatter, long seed) {
        Random random = new Random(seed);
        Tables tables = new Tables();
        for (char letter : order.toCharArray()) {
            double level = 400 + (letter == 'B' ? change : 0) + refitScatter * random.nextGaussian();
            double[] values = new double[pulls];
            for (int k = 0; k < pulls; k++) {
                values[k] = level + random.nextGaussian();
            }
            tables.install("1", letter == 'B' ? Part.B : Part.A, values);
        }
        return tables.table();
    }
}
