package fairpull.engine.stats;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A published table, by column. */
final class Published {
    private final Map<String, List<String>> columns = new LinkedHashMap<>();

    Published(String path) {
        try {
            List<String> lines = Files.readAllLines(Path.of("src/test/resources/published").resolve(path));
            String[] names = lines.get(0).split(",");
            for (String name : names) {
                columns.put(name, new ArrayList<>());
            }
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",");
                for (int i = 0; i < names.length; i++) {
                    columns.get(names[i]).add(cells[i]);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double[] numbers(String column) {
        return columns.get(column).stream().mapToDouble(Double::parseDouble).toArray();
    }

    List<String> words(String column) {
        return columns.get(column);
    }

    /** Indices of the values of one or several columns together, in the order in which they first appear. */
    int[] index(String... names) {
        Map<String, Integer> seen = new LinkedHashMap<>();
        int[] index = new int[columns.get(names[0]).size()];
        for (int k = 0; k < index.length; k++) {
            StringBuilder key = new StringBuilder();
            for (String name : names) {
                key.append(columns.get(name).get(k)).append('/');
            }
            index[k] = seen.computeIfAbsent(key.toString(), ignored -> seen.size());
        }
        return index;
    }
}
