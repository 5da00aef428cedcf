package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.unit.UnitSystem;
import fairpull.domain.unit.Units;
import fairpull.report.Examples;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RunSheetTest {
    private static final List<Gate> GATES = List.of(new Gate(Condition.INTAKE_AIR, new Gate.NearReference(2)),
            new Gate(Condition.COOLANT, new Gate.Window(353.15, 368.15)), new Gate(Condition.OIL, new Gate.NearReference(5)),
            new Gate(Condition.TYRE_PRESSURE, new Gate.NearReference(Units.POUND_PER_SQUARE_INCH.differenceToSi(0.5))));
    private static final List<String> CHECKLIST = Stream.iterate(1, number -> number + 1).limit(10)
            .map(number -> "thing " + number + " looked at, and written down where it is not as it was").toList();

    @Test
    void everyPullHasItsBoxAndItsTime() {
        Judgement judgement = Examples.gain();
        String html = html(sheet(judgement));

        judgement.plan().sequence().installs().flatMap(install -> PlannedClock.pullsOf(install).stream()).forEach(pull -> assertThat(html)
                .contains("<span class=\"tick" + (pull.warmUp() ? " warm" : "") + "\"></span>" + pull + "</td><td>"));
        assertThat(boxes(html)).isEqualTo(judgement.plan().sequence().installs()
                .mapToInt(install -> install.countedPulls() + install.warmUpPulls()).sum() + CHECKLIST.size());
        assertThat(html).as("set-up 20 min, a pull every 5 min, swap 30 min").contains("A1-W1</td><td>9:20<", "A1-5</td><td>9:50<",
                "9:55 swap 30 min: A off, B on", "B1-W1</td><td>10:25<", "9:00 set-up 20 min: fit A", "planned 9:00 to 14:15");
    }

    /** DejaVu Sans runs about a sixth wider than the columns are made for; a browser that has nothing narrower takes it narrowed. */
    @Test
    void aBrowserWithoutNarrowFontsTakesAWideOneNarrowed() {
        assertThat(html(sheet(Examples.gain()))).containsPattern("src:local\\(\"DejaVu Sans\"\\)[^}]*size-adjust:86%")
                .containsPattern("body\\{font-family:[^}]*Arial,[^}]*\"wide, narrowed\",sans-serif\\}");
    }

    @Test
    void everyGateHasItsLimitInTheUnitsAskedFor() {
        assertThat(html(sheet(Examples.gain(), Paper.A4, UnitSystem.METRIC))).contains("within ± 2 K of A1-1</b>: <span class=\"fill\">",
                "<b>80 to 95 °C</b>", "within ± 5 K of A1-1", "within ± 0.034 bar of A1-1", "A1-1 ± 2<", "80 – 95<", "A1-1 ± 5<");
        assertThat(html(sheet(Examples.gain(), Paper.A4, UnitSystem.US))).contains("within ± 3.6 °F of A1-1", "<b>176 to 203 °F</b>",
                "within ± 9 °F of A1-1", "within ± 0.5 psi of A1-1", "barometer, inHg", "A1-1 ± 3.6<").doesNotContain("°C", "bar of");
    }

    @Test
    void cautionsAreThereThoughThePlanHasNoGateAndNoChecklist() throws IOException {
        Judgement judgement = Examples.undecided();
        RunSheet sheet = RunSheet.of(content(judgement, with(judgement.plan(), List.of(), List.of())), options(Paper.A4, UnitSystem.METRIC));

        for (String text : List.of(sheet.html(), text(sheet))) {
            assertThat(text).contains("Restraints", "Carbon monoxide", "Noise", "Fire", "Local codes", "licensed practice", "dBA", "ppm",
                    "nobody in the cell", "NOT SEALED", "None in the plan");
        }
    }

    @ParameterizedTest
    @EnumSource
    void fiveInstallsOfSevenPullsFitOnOnePage(Paper paper) throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            RunSheet sheet = sheet(Examples.gain(), paper, units);

            assertThat(sheet.pdf().pages()).isEqualTo(1);
            try (PDDocument document = Loader.loadPDF(sheet.pdf().bytes())) {
                assertThat(document.getNumberOfPages()).isEqualTo(1);
                PDPage page = document.getPage(0);
                assertThat(page.getMediaBox().getWidth()).isCloseTo(paper == Paper.A4 ? 595.28f : 612f, within(0.5f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(paper == Paper.A4 ? 841.89f : 792f, within(0.5f));
            }
        }
    }

    @Test
    void aLongerDayFlowsOnWithItsHeadRepeated() throws IOException {
        RunSheet sheet = sheet(Examples.longTexts());

        assertThat(sheet.pdf().pages()).isBetween(2, 4);
        try (PDDocument document = Loader.loadPDF(sheet.pdf().bytes())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document)).as("page %d", page).contains("SEAL 7KD2-9QXM-41", "Run sheet",
                        page + " of " + document.getNumberOfPages());
            }
        }
    }

    @Test
    void everySessionHasAWholeSheet() {
        String html = sheet(Examples.threeSessions()).html();

        assertThat(html.split("Carbon monoxide", -1)).hasSize(4);
        assertThat(html).contains("session Tuesday · date <b>2026-05-09</b>", "session Wednesday · date <span class=\"fill long\">");
    }

    @Test
    void anInstallOfManyPullsIsContinuedUnderItsOwnHead() {
        String html = sheet(Examples.of("ABA", 30, 0, Examples.POWER.unit())).html();

        assertThat(html).contains("A: belt-driven pump, continued").contains("B1-30");
        assertThat(html.split("<th><b>started</b></th>", -1)).hasSize(1 + 3 * 2);
    }

    @Test
    void textOfStrangersIsEscapedAndCannotReachOut() throws IOException {
        Judgement judgement = Examples.longTexts();
        String evil = "]]><img src=\"file:///etc/passwd\"/><link href='http://example.invalid/x.css'/>&xxe; \u0000\u0007 \ud800 漢 →";
        RunSheet sheet = RunSheet.of(content(judgement, with(judgement.plan(), GATES, List.of(evil))), options(Paper.A4, UnitSystem.METRIC));

        assertThat(sheet.html()).doesNotContain(Examples.HOSTILE, "<script", "<img", "<link", "url(").contains("&lt;script&gt;",
                "default-src 'none'");
        assertThat(text(sheet)).contains("file:///etc/passwd", "→", "<script>").doesNotContain("root:");
    }

    @Test
    void alarmsAndAmendmentsAreSaid() {
        Judgement judgement = Examples.longTexts();

        assertThat(sheet(judgement).html()).contains("ALARM: The plan is not the one that was sealed");
        assertThat(html(sheet(Examples.gain()))).contains("swap takes longer than thought", "1 amendment since the seal",
                "All data of this test are invented.", "third party", "SEAL 7KD2-9QXM-41", "Worthwhile gain:</b> 3 hp");
    }

    @Test
    void theSameTestGivesTheSameBytes() {
        RunSheet one = sheet(Examples.gain());
        RunSheet other = sheet(Examples.gain());

        assertThat(one.html()).isEqualTo(other.html());
        assertThat(one.pdf().bytes()).isEqualTo(other.pdf().bytes());
    }

    @Test
    void thePdfCarriesItsFontsAndTheDateOfTheSeal() throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet(Examples.gain()).pdf().bytes())) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Run sheet: Electric water pump against belt pump");
            assertThat(document.getDocumentInformation().getCreationDate().toInstant()).hasToString("2026-03-14T06:34:00Z");
            for (var name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
        }
    }

    @Test
    void breaksOfTheDayStandWhereTheyFall() {
        Judgement judgement = Examples.gain();
        Hours hours = new Hours(LocalTime.of(9, 0), Optional.of(LocalTime.of(13, 0)), List.of(new Break(LocalTime.of(9, 33), 600),
                new Break(LocalTime.of(10, 10), 900)));
        String html = html(RunSheet.of(content(judgement, withHours(judgement.plan(), hours)), options(Paper.A4, UnitSystem.METRIC)));

        assertThat(html).as("the break at its time, the next pull after it").contains("<td>9:33</td><td colspan=\"5\"><b>break, 10 min</b>",
                "A1-2</td><td>9:43<", "10:10 break, 15 min", "beyond the end of the day");
    }

    @Test
    void withoutAStartOfDayTheClockCounts() {
        Judgement judgement = Examples.gain();
        String html = RunSheet.of(content(judgement, with(judgement.plan(), GATES, CHECKLIST)), options(Paper.A4, UnitSystem.METRIC)).html();

        assertThat(html).contains("A1-W1</td><td>+0:20<", "planned +0:00 to +5:15");
    }

    /** Grey fades on a copier and in the sun: the sheet has black and white alone. */
    @Test
    void thereIsNoColourAndNoGrey() {
        String style = sheet(Examples.gain()).html().replaceAll("(?s).*<style>|</style>.*", "");

        assertThat(style).contains("#000").doesNotContainPattern("#(?!000\\b|fff\\b)[0-9a-fA-F]{3}").doesNotContain("rgb", "opacity", "grey", "gray");
    }

    private static long boxes(String html) {
        return html.split("<span class=\"tick", -1).length - 1L;
    }

    private static RunSheet sheet(Judgement judgement) {
        return sheet(judgement, Paper.A4, UnitSystem.METRIC);
    }

    private static RunSheet sheet(Judgement judgement, Paper paper, UnitSystem units) {
        Plan plan = with(judgement.plan(), GATES, CHECKLIST);
        return RunSheet.of(content(judgement, withHours(plan, new Hours(LocalTime.of(9, 0), Optional.empty(), List.of()))),
                options(paper, units));
    }

    private static SheetContent content(Judgement judgement, Plan plan) {
        return new SheetContent(plan, "0a6335a7", judgement.seal(), judgement.amendments(), judgement.notices().stream()
                .filter(notice -> notice.code().severity() == Notice.Severity.ALARM).toList());
    }

    private static SheetOptions options(Paper paper, UnitSystem units) {
        return new SheetOptions(paper, units, Optional.of(LocalDate.of(2026, 5, 9)));
    }

    private static Plan with(Plan plan, List<Gate> gates, List<String> checklist) {
        return new Plan(plan.title(), plan.remark(), plan.question(), plan.analysis(), plan.rig(), plan.sequence(), gates, checklist);
    }

    private static Plan withHours(Plan plan, Hours hours) {
        return plan.with(plan.sequence()
                .withLabelled(plan.sequence().sessions().stream().map(session -> session.with(hours)).toList()));
    }

    /** Thin spaces as plain ones, so that expectations can be read. */
    private static String html(RunSheet sheet) {
        return sheet.html().replace('\u202f', ' ');
    }

    private static String text(RunSheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.pdf().bytes())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
