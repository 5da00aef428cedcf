package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
    private static final String PUMP = "plans/electric-pump";

    @TempDir
    private Path folder;

    @Test
    void theTableOfPullsIsJudgedAsTheTestIs() throws IOException {
        Run.of("report", PUMP, "--csv", folder.resolve("tables")).succeeded();
        Map<String, String> settings = settings(folder.resolve("tables/settings.csv"));

        List<Object> judge = new ArrayList<>(List.of("judge", "--table", folder.resolve("tables/pulls.csv"), "--drift",
                settings.get("drift"), "--worthwhile", settings.get("worthwhile gain"), "--alpha", settings.get("error rate"), "--sides",
                settings.get("sides"), "--better", settings.get("better"), "--unit", "hp", "--json"));
        for (String scatter : List.of("pull", "refit")) {
            if (!settings.get(scatter + " scatter of the record").isEmpty()) {
                judge.addAll(List.of("--" + scatter + "-scatter", settings.get(scatter + " scatter of the record"), "--" + scatter + "-df",
                        settings.get(scatter + " scatter degrees of freedom")));
            }
        }
        assertThat(judge).contains("--refit-df");
        JsonNode again = Run.of(judge.toArray()).json();
        JsonNode test = Run.of("judge", PUMP, "--json").json();

        for (String key : List.of("verdict", "estimate", "standardError", "degreesOfFreedom", "pValue", "interval", "scatter",
                "installMeans", "tippingScatter")) {
            assertThat(again.path(key).isMissingNode()).as(key).isFalse();
            assertThat(again.get(key)).as(key).isEqualTo(test.get(key));
        }
    }

    @Test
    void theCurvesAreJudgedAsTheTestIsAndNeverSmoothedTwice() throws IOException {
        Path tables = folder.resolve("tables");
        Run.of("report", PUMP, "--csv", tables).succeeded();
        Map<String, String> settings = settings(tables.resolve("settings.csv"));
        JsonNode again = Run.of("judge", "--curves", tables.resolve("curve-points.csv"), "--drift", settings.get("drift"), "--alpha",
                settings.get("error rate"), "--sides", settings.get("sides"), "--refit-scatter",
                settings.get("refit scatter of the record"), "--refit-df", settings.get("refit scatter degrees of freedom"),
                "--record-level", settings.get("curve: level of the record"), "--json").json();
        JsonNode test = Run.of("judge", PUMP, "--json").json().get("curve");

        assertThat(again.get("points").size()).isEqualTo(test.get("points").size()).isGreaterThan(50);
        assertAlike(again.get("points"), test.get("points"), "points");
        assertAlike(again.get("figures"), test.get("figures"), "figures");
        assertThat(again.get("criticalValue").asDouble()).isCloseTo(test.get("criticalValue").asDouble(), within(1e-9));
        Run.of("judge", "--curves", tables.resolve("curves.csv")).refused(3, "there is no such column", "install, part, pull, speed and value");
        Run.of("judge", "--curves", tables.resolve("curve-points.csv"), "--bandwidth", "100").refused(2, "smoothed already");
        Path other = SmallTest.make(folder.resolve("other"), "ABABA", "--pulls", "5");
        Run.of("import", other, tables.resolve("curves.csv")).refused(3, "would be smoothed again", "curve-points.csv");
    }

    private static void assertAlike(JsonNode one, JsonNode other, String where) {
        assertThat(one.isMissingNode()).as(where).isFalse();
        if (other.isNumber()) {
            assertThat(one.asDouble()).as(where).isCloseTo(other.asDouble(), within(1e-9 * Math.max(1, Math.abs(other.asDouble()))));
        } else if (other.isArray()) {
            for (int i = 0; i < other.size(); i++) {
                assertAlike(one.path(i), other.get(i), where + "." + i);
            }
        } else if (other.isObject()) {
            other.fieldNames().forEachRemaining(name -> assertAlike(one.path(name), other.get(name), where + "." + name));
        } else {
            assertThat(one).as(where).isEqualTo(other);
        }
    }

    @Test
    void thePdfIsCompleteNumberedAndTheSameEveryTime() throws IOException {
        for (String paper : List.of("a4", "letter")) {
            Path first = folder.resolve(paper + ".pdf");
            JsonNode answer = Run.of("report", PUMP, "--pdf", first, "--paper", paper, "--json").json();
            Run.of("report", PUMP, "--pdf", folder.resolve("again.pdf"), "--paper", paper).succeeded();

            assertThat(first).hasSameBinaryContentAs(folder.resolve("again.pdf"));
            assertThat(answer.path("file").asText()).isEqualTo(first.toString());
            try (PDDocument document = Loader.loadPDF(first.toFile())) {
                assertThat(answer.path("pages").asInt()).isEqualTo(document.getNumberOfPages()).isGreaterThan(2);
                assertThat(new PDFTextStripper().getText(document)).contains("Electric water pump against belt-driven pump", "Invented data",
                        "seal 19HK-B9YJ-NB", "1 of " + document.getNumberOfPages(), "smaller than worthwhile", "Every pull and its fate",
                        "A3-5", "Cautions");
                float width = document.getPage(0).getMediaBox().getWidth();
                assertThat(width).isCloseTo(paper.equals("a4") ? 595.3f : 612, within(0.5f));
            }
        }
    }

    @Test
    void everythingAskedForIsWrittenAndNothingElse() throws IOException {
        Map<String, String> before = Folders.contents(Path.of(PUMP));
        JsonNode answer = Run.of("report", PUMP, "--out", folder.resolve("a/r.html"), "--pdf", folder.resolve("a/r.pdf"), "--csv",
                folder.resolve("a/pulls-only.csv"), "--json").json();

        assertThat(answer.path("files")).hasSize(3);
        try (var files = Files.list(folder.resolve("a"))) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder("r.html", "r.pdf", "pulls-only.csv");
        }
        assertThat(Files.readAllLines(folder.resolve("a/pulls-only.csv")).get(0)).isEqualTo("install,part,pull,session,minutes,value");
        assertThat(Folders.contents(Path.of(PUMP))).isEqualTo(before);
    }

    @Test
    void theDemoShowsItsChangeOverEngineSpeed() throws IOException {
        Run.of("report", PUMP, "--out", folder.resolve("r.html"), "--csv", folder.resolve("t"), "--without-identity").succeeded();

        assertThat(folder.resolve("r.html")).content().contains("Over engine speed, a gain is shown from", "bandwidth ±",
                "All 25 pulls cover every speed");
        assertThat(folder.resolve("t/curves.csv")).content().startsWith("engine speed (rpm),A1-1 power on the grid (hp),");
        assertThat(folder.resolve("t/difference.csv")).content().startsWith("engine speed (rpm),mean of A (hp),");
        assertThat(Files.readAllLines(folder.resolve("t/pulls.csv")).get(1)).startsWith("A1,A,A1-1,session 1,");
        assertThat(settings(folder.resolve("t/settings.csv"))).containsKeys("curve: critical value", "curve: seed", "curve: bandwidth",
                "curve: degrees of freedom", "curve: directions drawn", "curve: first speed");
    }

    @Test
    void whatIsTypedWrongIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "kept");
        Run.of("report", PUMP).refused(2, "--out", "--pdf", "--csv");
        Run.of("report", PUMP, "--pdf", folder).refused(2, "--pdf", "is a folder");
        Run.of("report", PUMP, "--pdf", folder.resolve("x.pdf"), "--paper", "a5").refused(2, "--paper", "a4 or letter");
        Run.of("report", PUMP, "--csv", file).refused(2, "--csv", "is a file");
        Run.of("report", PUMP, "--csv", PUMP).refused(2, "--csv", "belongs to the test");
        Run.of("report", PUMP, "--csv", PUMP + "/pulls/tables").refused(2, "--csv", "belongs to the test");
        Run.of("report", PUMP, "--pdf", PUMP + "/plan.json").refused(2, "--pdf", "belongs to the test");
        assertThat(file).hasContent("kept");
        assertThat(folder.resolve("x.pdf")).doesNotExist();
    }

    private static Map<String, String> settings(Path file) throws IOException {
        Map<String, String> settings = new HashMap<>();
        Files.readAllLines(file).forEach(line -> settings.put(line.split(",", -1)[0], line.split(",", -1)[1]));
        return settings;
    }
}
