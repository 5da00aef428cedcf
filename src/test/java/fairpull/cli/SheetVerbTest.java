package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetVerbTest {
    @TempDir
    private Path folder;

    @Test
    void thePdfHasOnePageAndSaysSo() throws IOException {
        Path pdf = folder.resolve("new folder/pump.pdf");

        JsonNode answer = Run.of("sheet", "plans/electric-pump", "--out", pdf, "--paper", "letter", "--date", "2026-05-09", "--start", "8:10",
                "--json").json();

        assertThat(answer.path("file").asText()).isEqualTo(pdf.toString());
        assertThat(answer.path("pages").asInt()).isEqualTo(1);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(document)).contains("SEAL 19HK-B9YJ-NB", "2026-05-09", "8:10 to 11:32", "A3-5", "11:28",
                    "Invented data", "Carbon monoxide");
        }
        assertThat(Files.list(pdf.getParent())).containsExactly(pdf);
    }

    @Test
    void theSameTestGivesTheSameBytesAndNothingOfItChanges() throws IOException {
        Map<String, String> before = Folders.contents(Path.of("plans/panel-filter"));
        for (String name : new String[] {"a.pdf", "b.pdf", "a.html", "b.html"}) {
            Run.of("sheet", "plans/panel-filter", "--out", folder.resolve(name), "--units", "us").succeeded();
        }

        assertThat(folder.resolve("a.pdf")).hasSameBinaryContentAs(folder.resolve("b.pdf"));
        assertThat(folder.resolve("a.html")).hasSameBinaryContentAs(folder.resolve("b.html"));
        assertThat(Folders.contents(Path.of("plans/panel-filter"))).isEqualTo(before);
        assertThat(Files.readString(folder.resolve("a.html"))).contains("°F").doesNotContain("°C");
    }

    @Test
    void aTestWithoutASealSaysSoUntilItIsSealed() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--start", "9:15", "--break", "12:00+30");
        Path html = folder.resolve("sheet.html");

        Run.of("sheet", test, "--out", html).succeeded();
        assertThat(Files.readString(html)).contains("NOT SEALED", "seal the plan, print this sheet again").contains("planned 9:15 to");
        assertThat(Run.of("seal", test, "--json").json().path("code").asText()).isNotEmpty();
        Run.of("sheet", test, "--out", html, "--start", "7:00").succeeded();
        assertThat(Files.readString(html)).doesNotContain("NOT SEALED").contains("planned 7:00 to", "none so far");
        Run.of("amend", test, "--set", "sequence.swapS=900", "--because", "the jack is slow").succeeded();
        Run.of("sheet", test, "--out", html).succeeded();
        assertThat(Files.readString(html)).contains("1 amendment since the seal", "the jack is slow");
    }

    @Test
    void whatIsTypedWrongIsNamed() throws IOException {
        Path pdf = folder.resolve("x.pdf");
        String test = "plans/electric-pump";
        Run.of("sheet", test).refused(2, "--out");
        Run.of("sheet", test, "--out", folder.resolve("x.doc")).refused(2, "--out", ".pdf");
        Run.of("sheet", test, "--out", pdf, "--paper", "a5").refused(2, "--paper", "a4 or letter", "a5");
        Run.of("sheet", test, "--out", pdf, "--units", "si").refused(2, "--units", "metric or us");
        Run.of("sheet", test, "--out", pdf, "--date", "2026-02-30").refused(2, "--date", "2026-05-09");
        Run.of("sheet", test, "--out", pdf, "--start", "25:00").refused(2, "--start", "9:00");
        Run.of("sheet", folder, "--out", pdf).refused(3, "no plan.json");
        Run.of("sheet", test, "--out", test + "/pulls/x.pdf").refused(2, "--out", "belongs to the test");
        Path hours = SmallTest.make(folder.resolve("hours"), "ABA", "--start", "9:00", "--break", "12:00+30");
        Run.of("sheet", hours, "--out", pdf, "--start", "13:00").refused(2, "--start", "12:00");
        assertThat(pdf).doesNotExist();
    }
}
