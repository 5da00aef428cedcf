package fairpull.engine.judging;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Part;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The tables of pulls with figures computed by R beside them. */
final class GoldenTables {
    static final Path SIMULATED = Path.of("src/test/resources/computed/judge-lme4-pbkrtest");
    static final Path FURTHER = Path.of("src/test/resources/computed/judge-more");
    private static final ObjectMapper JSON = new ObjectMapper();

    private GoldenTables() {
    }

    static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".csv"))
                    .map(name -> name.replace(".csv", "")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode expected(Path folder, String name) {
        try {
            return JSON.readTree(folder.resolve(name + ".json").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static PullTable table(Path folder, String name) {
        try {
            List<String> lines = Files.readAllLines(folder.resolve(name + ".csv"));
            List<String> header = List.of(lines.get(0).replace("\"", "").split(","));
            boolean covariate = header.contains("iat_c");
            List<PullRow> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = List.of(line.replace("\"", "").split(","));
                rows.add(new PullRow(header.contains("session") ? cells.get(header.indexOf("session")) : "1",
                        cells.get(header.indexOf("install")), Part.valueOf(cells.get(header.indexOf("part"))),
                        cells.get(header.indexOf("pull")), number(header, cells, "minutes"), number(header, cells, "value"),
                        covariate ? List.of(number(header, cells, "iat_c")) : List.of()));
            }
            return new PullTable("hp", covariate ? List.of("iat_c") : List.of(), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double number(List<String> header, List<String> cells, String column) {
        return header.contains(column) ? Double.parseDouble(cells.get(header.indexOf(column))) : Double.NaN;
    }
}
