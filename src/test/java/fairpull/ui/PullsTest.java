package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatLaf;
import fairpull.app.document.Document;
import fairpull.app.task.Progress;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.pulls.PullCurves;
import fairpull.app.usecase.pulls.PullsView;
import fairpull.domain.curve.SweptCurve;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.report.chart.Role;
import fairpull.report.chart.Shape;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import javax.swing.text.View;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of pulls, driven in the real components: exports come in, pulls are left out and taken back, curves are read off. */
class PullsTest {
    private static final Path DEMO = Path.of("demo-data/electric-pump");
    /** 550 lbf·ft/s by definition. */
    private static final double KILOWATTS_A_HORSEPOWER = 0.74569987158227022;

    private final Locale usual = Locale.getDefault();

    @TempDir
    private Path home;

    @AfterEach
    void usualLocale() {
        Locale.setDefault(usual);
    }

    private Hand at(Path test) throws IOException {
        Hand hand = Hand.on(KeepTest.open(test), home.resolve("settings"));
        hand.go("page.pulls");
        hand.settle();
        return hand;
    }

    private Hand empty() throws IOException {
        return at(LongDay.planned(home, 2));
    }

    private Hand complete() throws IOException {
        return at(CopiedTest.of(Path.of("plans/electric-pump"), Files.createDirectories(home.resolve("complete"))));
    }

    private static Path folder(Hand hand) {
        return hand.document().folder().orElseThrow();
    }

    private static String said(Hand hand, String name) {
        return hand.find(name, JTextComponent.class).getText();
    }

    private static List<String> log(Hand hand) throws IOException {
        return Files.readAllLines(folder(hand).resolve("log.jsonl"));
    }

    @Test
    void aTestThatIsNotSealedSaysWhyItHasNoPulls() throws IOException {
        Hand hand = Hand.on(KeepTest.open(LongDay.planned(home, 2)), home.resolve("settings"));
        assertThat(hand.find("page.pulls", AbstractButton.class).isEnabled()).isTrue();
        Hand unsaved = Hand.on(Document.unsaved(hand.document().plan()), home.resolve("settings"));
        assertThat(unsaved.find("page.pulls", AbstractButton.class).isEnabled()).isFalse();
        assertThat(unsaved.find("page.pulls", AbstractButton.class).getToolTipText()).contains("seal");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "en-US"})
    void droppedExportsAreLookedAtThenTaken(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Hand hand = empty();
        List<String> before = log(hand);
        Path unnamed = Files.copy(DEMO.resolve("A1-2.csv"), home.resolve("run 17.csv"));
        hand.drop(Files.copy(DEMO.resolve("B1-1.csv"), home.resolve("B1-1.csv")), unnamed);

        List<String> places = List.of(hand.cell("import.files", 0, 1), hand.cell("import.files", 1, 1));
        assertThat(places).as("by its name, and the next of the plan").containsExactlyInAnyOrder("B1-1", "A1-1");
        assertThat(hand.cell("import.files", 0, 2)).contains("mean power 3000-6500 rpm 1");
        assertThat(log(hand)).as("nothing is taken before it was asked").isEqualTo(before);

        hand.press("import.take");
        hand.settle();
        assertThat(log(hand)).hasSize(before.size() + 2);
        assertThat(said(hand, "import.said")).isEqualTo("Took 2 pulls.");
        assertThat(folder(hand).resolve("pulls/A1-1.csv")).hasSameBinaryContentAs(DEMO.resolve("A1-2.csv"));
        PullsView view = PullsView.of(folder(hand), Progress.none());
        int row = IntStream.range(0, view.rows().size()).filter(one -> view.rows().get(one).pull().toString().equals("B1-1")).findFirst()
                .orElseThrow();
        String shown = view.rows().get(row).values().get(0).text();
        assertThat(hand.cell("pulls.list", row, 3)).isEqualTo(locale.startsWith("de") ? shown.replace('.', ',') : shown);
    }

    @Test
    void aFileGoesWhereItIsToldAndAsAWarmUp() throws IOException {
        Hand hand = at(CopiedTest.of(Path.of("plans/electric-pump"), Files.createDirectories(home.resolve("more"))));
        hand.drop(Files.copy(DEMO.resolve("B1-1.csv"), home.resolve("spare.csv")));
        assertThat(hand.cell("import.files", 0, 2)).as("its bytes are there already").isNotBlank();
        hand.press("import.drop");
        Hand fresh = empty();
        fresh.drop(Files.copy(DEMO.resolve("A1-1.csv"), home.resolve("another.csv")));
        fresh.choose("import.place", PullId.parse("A2-1").orElseThrow());
        fresh.settle();
        assertThat(fresh.cell("import.files", 0, 1)).isEqualTo("A2-1");
        fresh.press("import.take");
        fresh.settle();
        assertThat(folder(fresh).resolve("pulls/A2-1.csv")).exists();
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "en-US"})
    void aGuessIsOverriddenByAChoice(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Hand hand = empty();
        Path export = Files.writeString(home.resolve("A1-1.csv"), Files.readString(DEMO.resolve("A1-1.csv")));
        hand.drop(export);
        double guessed = value(hand);
        int power = IntStream.range(0, hand.find("import.columns", JTable.class).getRowCount())
                .filter(row -> hand.cell("import.columns", row, 1).equals("power")).findFirst().orElseThrow();
        String unit = hand.cell("import.columns", power, 2);
        hand.select("import.columns", power, power);
        boolean metric = unit.equals("kW");
        hand.choose("import.unit", Optional.of(metric ? Units.HORSEPOWER : Units.KILOWATT));
        hand.settle();
        assertThat(hand.cell("import.columns", power, 2)).isEqualTo(metric ? "hp" : "kW");
        assertThat(hand.cell("import.columns", power, 3)).isEqualTo("chosen by hand");
        double expected = metric ? guessed * KILOWATTS_A_HORSEPOWER : guessed / KILOWATTS_A_HORSEPOWER;
        assertThat(value(hand)).isCloseTo(expected, Percentage.withPercentage(0.01));
        assertThat(said(hand, "import.doubts")).as("power is not torque × engine speed any more").isNotBlank();
    }

    @Test
    void aGuessedColumnIsLeftOut() throws IOException {
        Hand hand = empty();
        hand.drop(Files.writeString(home.resolve("A1-1.csv"), Files.readString(DEMO.resolve("A1-1.csv"))));
        double guessed = value(hand);
        int power = IntStream.range(0, hand.find("import.columns", JTable.class).getRowCount())
                .filter(row -> hand.cell("import.columns", row, 1).equals("power")).findFirst().orElseThrow();
        hand.select("import.columns", power, power);
        hand.choose("import.quantity", Optional.empty());
        hand.settle();
        assertThat(hand.cell("import.columns", power, 1)).isEqualTo("not used");
        assertThat(hand.cell("import.columns", power, 3)).isEqualTo("left out by hand");
        assertThat(value(hand)).as("torque × engine speed stands in").isCloseTo(guessed, Percentage.withPercentage(0.1));
    }

    private static double value(Hand hand) {
        Matcher value = Pattern.compile("mean power 3000-6500 rpm ([\\d.]+) hp").matcher(hand.cell("import.files", 0, 2));
        assertThat(value.find()).as(hand.cell("import.files", 0, 2)).isTrue();
        return Double.parseDouble(value.group(1));
    }

    @Test
    void aTableOutOfASpreadsheetIsLookedAtLikeAFile() throws IOException {
        Hand hand = empty();
        hand.press("import.paste");
        StringBuilder pasted = new StringBuilder("Engine speed (rpm)\tPower (hp)\n");
        for (int rpm = 2500; rpm <= 7000; rpm += 50) {
            pasted.append(rpm).append('\t').append(rpm / 50 + "." + rpm % 7).append('\n');
        }
        hand.write("import.table", pasted.toString());
        hand.press("import.read");
        hand.settle();
        assertThat(hand.cell("import.files", 0, 0)).startsWith("pasted-");
        assertThat(hand.cell("import.files", 0, 1)).isEqualTo("A1-1");
        assertThat(value(hand)).as("mean of rpm ÷ 50 from 3000 to 6500").isBetween(95.0, 95.8);
    }

    @Test
    void aTypedTableIsNotedBesideItsPullsAndABadOneSaysWhere() throws IOException {
        Hand hand = empty();
        hand.press("import.paste");
        hand.write("import.table", "pull; intake-air (°C)\nA9-1; 21");
        hand.press("import.read");
        hand.settle();
        assertThat(hand.find("import.table.complaint", JLabel.class).getText()).contains("A9");
        hand.write("import.table", "pull; intake-air (°C)\nA1-1; 21.5\nA1-2; 22.5");
        hand.press("import.read");
        hand.settle();
        assertThat(said(hand, "import.said")).contains("A1-1, A1-2");
        assertThat(PullsView.of(folder(hand), Progress.none()).rows()).filteredOn(row -> row.pull().toString().equals("A1-1"))
                .extracting(row -> row.start().text()).containsExactly("21.5");
    }

    @Test
    void aPullIsLeftOutWithItsReasonAndThatIsUndone() throws IOException {
        Hand hand = complete();
        hand.select("pulls.list", 3, 3);
        String pull = hand.cell("pulls.list", 3, 0);
        hand.press("pulls.exclude");
        assertThat(hand.complaint("pulls.because")).contains("reason");
        assertThat(hand.cell("pulls.list", 3, 2)).isEqualTo("used");

        hand.type("pulls.because", "coolant gate broken");
        hand.settle();
        assertThat(hand.cell("pulls.list", 3, 2)).contains("coolant gate broken");
        assertThat(seen(hand, pull).reason()).isEqualTo("coolant gate broken");
        hand.press("pulls.undo");
        hand.settle();
        assertThat(hand.cell("pulls.list", 3, 2)).isEqualTo("used");
        assertThat(log(hand)).filteredOn(line -> line.contains(pull) && line.contains("coolant gate")).hasSize(1);
        assertThat(log(hand)).last().asString().contains("readmitted").contains(pull);
    }

    @Test
    void aReasonThatIsCutShortStandsWholeInItsTip() throws IOException {
        Hand hand = complete();
        hand.select("pulls.list", 3, 3);
        String why = "the coolant gate was broken by eleven kelvin and nobody saw it before the pull was over";
        hand.type("pulls.because", why);
        hand.settle();
        JTable table = hand.find("pulls.list", JTable.class);
        Waiting.onWindowThread(() -> {
            assertThat(tip(table, 3, 2).replace("<br>", " ")).contains(why);
            assertThat(tip(table, 4, 2)).doesNotContain("used").isEqualTo(table.getToolTipText());
        });
    }

    private static String tip(JTable table, int row, int column) {
        Rectangle cell = table.getCellRect(row, column, true);
        return table.getToolTipText(new MouseEvent(table, MouseEvent.MOUSE_MOVED, 0, 0, cell.x + 3, cell.y + 3, 0, 0, 0, false,
                MouseEvent.NOBUTTON));
    }

    private static PullSeen seen(Hand hand, String pull) throws IOException {
        return JudgeFolder.judge(folder(hand)).pulls().stream().filter(one -> one.pull().toString().equals(pull)).findFirst().orElseThrow();
    }

    @Test
    void theTableShowsTheValuesOfTheJudge() throws IOException {
        Path test = CopiedTest.of(Path.of("plans/electric-pump"), Files.createDirectories(home.resolve("judged")));
        Judgement judgement = JudgeFolder.judge(test);
        PullsView view = PullsView.of(test, Progress.none());
        List<String> measures = judgement.plan().question().measures().stream().map(measure -> measure.name()).toList();
        assertThat(view.rows()).hasSameSizeAs(judgement.pulls());
        int compared = 0;
        for (int row = 0; row < view.rows().size(); row++) {
            PullSeen seen = judgement.pulls().get(row);
            assertThat(view.rows().get(row).pull()).isEqualTo(seen.pull());
            assertThat(view.rows().get(row).fate()).isEqualTo(seen.fate());
            for (int measure = 0; measure < measures.size(); measure++) {
                Double value = seen.values().get(measures.get(measure));
                double shown = view.rows().get(row).values().get(measure).value();
                assertThat(Double.valueOf(shown)).isEqualTo(value == null ? Double.valueOf(Double.NaN) : value);
                compared += value == null ? 0 : 1;
            }
        }
        assertThat(compared).isGreaterThan(50);
    }

    @Test
    void aLongHeadOfAColumnIsReadInLines() throws IOException {
        Hand hand = complete();
        JTable table = hand.find("pulls.list", JTable.class);
        Waiting.onWindowThread(() -> {
            assertThat(table.getColumnName(3)).doesNotContain("<").contains("3000-6500 rpm, hp");
            for (int round = 0; round < 2; round++) {
                JLabel head = (JLabel) table.getTableHeader().getDefaultRenderer().getTableCellRendererComponent(table, "a < b & c", false, false,
                        -1, 3);
                assertThat(head.getClientProperty("html")).as("laid out in lines").isInstanceOf(View.class);
                assertThat(head.getText()).contains("a &lt; b &amp; c");
                FlatLaf.updateUI();
                SwingUtilities.updateComponentTreeUI(table.getTableHeader());
            }
        });
    }

    @Test
    void oneChoiceHoldsInTableStripAndChart() throws IOException {
        Hand hand = complete();
        hand.drag("B1", "B1");
        assertThat(hand.find("pulls.list", JTable.class).getSelectedRowCount()).isEqualTo(7);
        int row = IntStream.range(0, 35).filter(one -> hand.cell("pulls.list", one, 0).equals("A2-3")).findFirst().orElseThrow();
        hand.select("pulls.list", row, row);
        assertThat(hand.pane().strip().chosen()).contains("A2");
        hand.settle();
        hand.key("overlay.chart", "RIGHT");
        assertThat(hand.described("overlay.chart")).as("arrows read what is chosen").contains("A2-3").doesNotContain("A2-2");
    }

    @Test
    void aPullIsChosenOnTheStripByAClickAndByKeysAndInTheTable() throws IOException {
        Hand hand = complete();
        JTable table = hand.find("pulls.list", JTable.class);
        hand.click(new PullId("B1", false, 2));
        assertThat(hand.pane().strip().chosenPull()).contains(new PullId("B1", false, 2));
        assertThat(table.getSelectedRowCount()).isEqualTo(1);
        assertThat(hand.cell("pulls.list", table.getSelectedRow(), 0)).isEqualTo("B1-2");
        hand.strip("RIGHT");
        assertThat(hand.cell("pulls.list", table.getSelectedRow(), 0)).isEqualTo("B1-3");
        hand.strip("UP");
        assertThat(hand.pane().strip().chosenPull()).isEmpty();
        assertThat(table.getSelectedRowCount()).as("the install again").isEqualTo(7);
        hand.strip("RIGHT");
        hand.strip("DOWN");
        assertThat(hand.pane().strip().chosenPull().map(PullId::install)).contains("A2");
        int row = IntStream.range(0, 35).filter(one -> hand.cell("pulls.list", one, 0).equals("A3-4")).findFirst().orElseThrow();
        hand.select("pulls.list", row, row);
        assertThat(hand.pane().strip().chosenPull()).contains(new PullId("A3", false, 4));
        assertThat(hand.pane().strip().drawing().shapes().stream().filter(Shape.Frame.class::isInstance).map(Shape.Frame.class::cast))
                .as("marked by a frame in ink").anyMatch(frame -> frame.role() == Role.INK && frame.bounds().width() < 20);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "en-US"})
    void theCrosshairReadsTheRowsOfTheFiles(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Hand hand = complete();
        JComponent chart = hand.find("overlay.chart", JComponent.class);
        hand.select("pulls.list", 2, 2);
        hand.settle();
        for (int step = 0; step < 5; step++) {
            hand.key("overlay.chart", "RIGHT");
        }
        Matcher read = Pattern.compile("(\\d+) rpm; (A1-1)  ([\\d.,]+)\u202fhp").matcher(hand.described("overlay.chart"));
        assertThat(read.find()).as(hand.described("overlay.chart")).isTrue();
        SweptCurve curve = PullCurves.of(folder(hand), Quantity.POWER, true, Progress.none()).curves().stream()
                .filter(one -> one.pull().toString().equals("A1-1")).findFirst().orElseThrow();
        double rpm = Double.parseDouble(read.group(1));
        int row = IntStream.range(0, curve.values().size()).boxed()
                .min(Comparator.comparingDouble(one -> Math.abs(Units.RPM.fromSi(curve.speedsRadPerS().at(one)) - rpm)))
                .orElseThrow();
        String shown = read.group(3);
        assertThat(shown.contains(",")).isEqualTo(locale.startsWith("de"));
        double value = Double.parseDouble(shown.replace(',', '.'));
        assertThat(value).isCloseTo(curve.values().at(row), Offset.offset(0.051));
        assertThat(raw("A1-1", curve.values().at(row))).as("a row of the file itself").isTrue();
        assertThat(chart.isFocusable()).isTrue();
    }

    /** Whether the demonstration export of a pull holds a power in its unit. */
    private static boolean raw(String pull, double hp) throws IOException {
        List<String> lines = Files.readAllLines(DEMO.resolve(pull + ".csv"));
        String head = lines.stream().filter(line -> line.toLowerCase(Locale.ROOT).contains("power")).findFirst().orElseThrow();
        String mark = head.contains(";") ? ";" : head.contains("\t") ? "\t" : ",";
        List<String> heads = List.of(head.split(mark));
        int column = IntStream.range(0, heads.size()).filter(one -> heads.get(one).toLowerCase(Locale.ROOT).contains("power")).findFirst()
                .orElseThrow();
        double factor = heads.get(column).contains("kW") ? KILOWATTS_A_HORSEPOWER : 1;
        return lines.stream().map(line -> line.split(mark)).filter(cells -> cells.length > column)
                .map(cells -> cells[column].replace(',', '.').replace("\"", "")).filter(cell -> cell.matches("[\\d.]+"))
                .anyMatch(cell -> Math.abs(Double.parseDouble(cell) / factor - hp) < 1e-6);
    }

    @Test
    void theChartIsZoomedAndReset() throws IOException {
        Hand hand = complete();
        String whole = hand.described("overlay.chart");
        hand.drag("overlay.chart", 300, 500, 100);
        String zoomed = hand.described("overlay.chart");
        hand.key("overlay.chart", "ESCAPE");
        zoomed = hand.described("overlay.chart");
        assertThat(zoomed).isNotEqualTo(whole).contains("25 pulls");
        hand.key("overlay.chart", "PLUS");
        assertThat(width(hand.described("overlay.chart"))).isCloseTo(0.8 * width(zoomed), Offset.offset(3.0));
        hand.press("overlay.reset");
        assertThat(hand.described("overlay.chart")).isEqualTo(whole);
    }

    private static double width(String described) {
        Matcher range = Pattern.compile("from (\\d+) to (\\d+) rpm").matcher(described);
        assertThat(range.find()).as(described).isTrue();
        return Double.parseDouble(range.group(2)) - Double.parseDouble(range.group(1));
    }

    @Test
    void partsAndInstallsAreShownAndLeftOut() throws IOException {
        Hand hand = complete();
        assertThat(hand.described("overlay.chart")).contains("25 pulls of A1, B1, A2, B2, A3");
        hand.press("overlay.part.B");
        assertThat(hand.described("overlay.chart")).contains("15 pulls of A1, A2, A3");
        hand.press("overlay.install.A2");
        assertThat(hand.described("overlay.chart")).contains("10 pulls of A1, A3");
        hand.press("overlay.part.B");
        assertThat(hand.described("overlay.chart")).contains("20 pulls of A1, B1, B2, A3");
        hand.choose("overlay.view", "all");
        hand.choose("overlay.quantity", Quantity.TORQUE);
        hand.settle();
        assertThat(hand.find("overlay.chart", JComponent.class).getAccessibleContext().getAccessibleName()).startsWith("Torque less the mean");
        assertThat(hand.find("overlay.quantity", JComboBox.class).getSelectedItem()).isEqualTo(Quantity.TORQUE);
    }
}
