package fairpull.ui.page.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.document.Settings;
import fairpull.app.usecase.tracing.TraceChart;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.tracing.Tracing;
import fairpull.engine.tracing.DrawnChart;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pane driven by clicks, keys and fields, without a display. */
class TracingPaneTest {
    @TempDir
    private Path folder;
    private final DrawnChart chart = TracedExample.chart();
    private TracingPane pane;

    @BeforeEach
    void open() throws IOException {
        Path file = Files.write(folder.resolve("chart.png"), chart.png());
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            pane = new TracingPane(Settings.in(folder.resolve("home")));
            OffScreen.laidOut(pane, 1280, 760);
            pane.open(file);
        });
        Waiting.forQuiet();
    }

    private static Stream<Component> parts(Component component) {
        return Stream.concat(Stream.of(component), component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(TracingPaneTest::parts) : Stream.empty());
    }

    private <C extends Component> C find(String name, Class<C> type) {
        return parts(pane).filter(component -> name.equals(component.getName()) && type.isInstance(component)).map(type::cast).findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    private void press(String name) {
        Waiting.onWindowThread(() -> {
            AbstractButton button = find(name, AbstractButton.class);
            assertThat(button.isEnabled()).as(name).isTrue();
            button.doClick(0);
        });
        Waiting.forQuiet();
    }

    private void type(String name, String text) {
        Waiting.onWindowThread(() -> {
            JTextField field = find(name, JTextField.class);
            field.setText(text);
            field.postActionEvent();
        });
        Waiting.forQuiet();
    }

    private void key(String stroke) {
        Waiting.onWindowThread(() -> {
            PictureView view = pane.view();
            Object name = view.getInputMap().get(KeyStroke.getKeyStroke(stroke));
            view.getActionMap().get(name).actionPerformed(new ActionEvent(view, ActionEvent.ACTION_PERFORMED, stroke));
        });
    }

    private void mouse(int id, PixelPoint place) {
        Waiting.onWindowThread(() -> {
            int x = (int) Math.round(pane.view().x(place));
            int y = (int) Math.round(pane.view().y(place));
            pane.view().dispatchEvent(new MouseEvent(pane.view(), id, 0, MouseEvent.BUTTON1_DOWN_MASK, x, y, x, y, 1, false,
                    MouseEvent.BUTTON1));
        });
        Waiting.forQuiet();
    }

    private void click(PixelPoint place) {
        mouse(MouseEvent.MOUSE_PRESSED, place);
        mouse(MouseEvent.MOUSE_RELEASED, place);
    }

    private Tracing tracing() {
        return pane.document().tracing().orElseThrow();
    }

    private String words(String name) {
        String[] text = new String[1];
        Waiting.onWindowThread(() -> text[0] = find(name, JTextArea.class).isVisible() ? find(name, JTextArea.class).getText() : "");
        return text[0];
    }

    /** Clicks and types the marks of both axes, as a user does. */
    private void setAxes() {
        press("tracing.x.first");
        click(new PixelPoint(chart.xPx(2000), chart.yPx(0)));
        click(new PixelPoint(chart.xPx(6000), chart.yPx(0)));
        click(new PixelPoint(chart.xPx(1000), chart.yPx(0)));
        click(new PixelPoint(chart.xPx(1000), chart.yPx(200)));
        type("tracing.x.first.value", "2000 rpm");
        type("tracing.x.second.value", "6000");
        type("tracing.y.first.value", "0 kW");
        type("tracing.y.second.value", "200");
    }

    private void follow(Part part) {
        press("tracing.part." + part);
        press("tracing.follow");
        click(chart.on(part == Part.A ? DrawnChart::power : TracedExample::changed, 5600));
    }

    @Test
    void bothCurvesAreTracedByFourMarksAndAClickEach() {
        setAxes();
        assertThat(words("tracing.axes.complaint")).isEmpty();
        follow(Part.A);
        assertThat(words("tracing.said")).contains("Followed from", "rpm");
        follow(Part.B);
        for (Part part : Part.values()) {
            List<TracedPoint> points = TraceChart.points(tracing(), part);
            assertThat(points).hasSizeGreaterThan(100);
            for (TracedPoint point : points) {
                double known = part == Part.A ? DrawnChart.power(point.x()) : TracedExample.changed(point.x());
                assertThat(point.y()).isCloseTo(known, within(0.005 * 200));
                assertThat(point.yError()).isBetween(0.05, 2.0);
            }
        }
        assertThat(find("tracing.table", JTable.class).getColumnName(2)).isEqualTo("y, kW");
    }

    @Test
    void everythingIsTakenBackAndDoneAgain() {
        Tracing before = tracing();
        setAxes();
        follow(Part.A);
        press("tracing.part.A");
        press("tracing.points");
        click(new PixelPoint(chart.xPx(1200), chart.yPx(100)));
        key("DELETE");
        key("PAGE_DOWN");
        key("shift UP");
        press("tracing.clear");
        Tracing after = tracing();
        Waiting.onWindowThread(() -> {
            while (pane.document().undoLabel().isPresent()) {
                pane.document().undo();
            }
        });
        assertThat(tracing()).isEqualTo(before);
        assertThat(find("tracing.undo", AbstractButton.class).isEnabled()).isFalse();
        Waiting.onWindowThread(() -> {
            while (pane.document().redoLabel().isPresent()) {
                pane.document().redo();
            }
        });
        assertThat(tracing()).isEqualTo(after);
    }

    @Test
    void pointsAreSnappedDraggedNudgedAndDeleted() {
        follow(Part.A);
        int count = tracing().a().points().size();
        press("tracing.points");
        PixelPoint empty = new PixelPoint(chart.xPx(1200), chart.yPx(150));
        click(empty);
        assertThat(tracing().a().points()).hasSize(count + 1);
        assertThat(tracing().a().points().get(0).source()).isEqualTo(PointSource.PLACED);
        PixelPoint placed = tracing().a().points().get(0).at();
        mouse(MouseEvent.MOUSE_PRESSED, placed);
        mouse(MouseEvent.MOUSE_DRAGGED, placed.moved(3, 10));
        mouse(MouseEvent.MOUSE_DRAGGED, placed.moved(6, 20));
        mouse(MouseEvent.MOUSE_RELEASED, placed.moved(6, 20));
        assertThat(tracing().a().points().get(0).at().distance(placed.moved(6, 20))).isLessThan(1.5);
        Waiting.onWindowThread(pane.document()::undo);
        assertThat(tracing().a().points().get(0).at()).as("a drag is taken back as one").isEqualTo(placed);
        Waiting.onWindowThread(() -> pane.bench().choose(OptionalInt.of(0)));
        key("RIGHT");
        key("shift DOWN");
        assertThat(tracing().a().points().get(0).at().distance(placed.moved(1, 0.1))).isLessThan(1e-9);
        key("DELETE");
        assertThat(tracing().a().points()).hasSize(count);
    }

    @Test
    void aClickByTheLineTakesItsMiddle() {
        follow(Part.A);
        Waiting.onWindowThread(() -> pane.bench().delete(IntStream.range(40, 60).boxed().toList()));
        PixelPoint gone = chart.on(DrawnChart::power, 2900);
        press("tracing.points");
        click(gone.moved(0, 6));
        assertThat(tracing().a().points()).anySatisfy(point -> {
            assertThat(point.source()).isEqualTo(PointSource.SNAPPED);
            assertThat(point.at().yPx()).isCloseTo(gone.yPx(), within(1.2));
        });
    }

    @Test
    void aTraceIsSavedOnceAndNothingElseIsWrittenOver() throws IOException {
        setAxes();
        follow(Part.A);
        assertThat(pane.document().isChanged()).isTrue();
        Waiting.onWindowThread(() -> pane.save(folder.resolve("mine")));
        Waiting.forQuiet();
        assertThat(Files.readString(folder.resolve("mine.json"))).contains("\"traceVersion\" : 1", tracing().file().sha256());
        assertThat(Files.readAllLines(folder.resolve("mine.csv"))).hasSizeGreaterThan(100).first().asString().contains("x (rpm)");
        assertThat(pane.document().isChanged()).isFalse();
        Files.writeString(folder.resolve("theirs.csv"), "not ours");
        Waiting.onWindowThread(() -> pane.save(folder.resolve("theirs.json")));
        Waiting.forQuiet();
        assertThat(words("tracing.message")).contains("theirs.csv is there already");
        assertThat(folder.resolve("theirs.json")).doesNotExist();
        Waiting.onWindowThread(() -> pane.save(folder.resolve("mine.json")));
        Waiting.forQuiet();
        assertThat(words("tracing.message")).contains("Saved", "mine.json");
    }

    @Test
    void whatIsWrongIsSaidInPlace() throws IOException {
        type("tracing.x.first.value", "plenty");
        assertThat(find("tracing.x.first.value.complaint", JLabel.class).isVisible()).isTrue();
        assertThat(find("tracing.x.first.value", JTextField.class).getText()).isEqualTo("plenty");
        type("tracing.gap", "999 px");
        assertThat(find("tracing.gap.complaint", JLabel.class).getText()).contains("from 0 to 200");
        setAxes();
        type("tracing.x.second.value", "2000");
        assertThat(words("tracing.axes.complaint")).contains("same value");
        press("tracing.follow");
        click(new PixelPoint(chart.xPx(5500), chart.yPx(12)));
        assertThat(words("tracing.said")).contains("no line at the click");
        Path text = Files.write(folder.resolve("notes.png"), "just words".getBytes(StandardCharsets.UTF_8));
        Waiting.onWindowThread(() -> {
            pane.document().savedAs(tracing());
            pane.open(text);
        });
        Waiting.forQuiet();
        assertThat(words("tracing.message")).contains("notes.png", "not a picture");
    }

    @Test
    void aPictureIsDroppedOrPasted() {
        TransferHandler drops = pane.getTransferHandler();
        Transferable picture = new Transferable() {
            @Override
            public DataFlavor[] getTransferDataFlavors() {
                return new DataFlavor[] {DataFlavor.imageFlavor};
            }

            @Override
            public boolean isDataFlavorSupported(DataFlavor flavor) {
                return flavor.equals(DataFlavor.imageFlavor);
            }

            @Override
            public Object getTransferData(DataFlavor flavor) {
                return new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
            }
        };
        Waiting.onWindowThread(() -> {
            assertThat(drops.importData(new TransferHandler.TransferSupport(pane, new StringSelection("words")))).isFalse();
            assertThat(drops.importData(new TransferHandler.TransferSupport(pane, picture))).isTrue();
        });
        Waiting.forQuiet();
        assertThat(tracing().file().name()).isEqualTo("pasted.png");
        assertThat(tracing().file().widthPx()).isEqualTo(60);
    }

    @Test
    void zoomKeepsThePlaceUnderThePointer() {
        Waiting.onWindowThread(() -> {
            PixelPoint before = pane.view().at(300, 200);
            pane.view().zoom(4, 300, 200);
            assertThat(pane.view().at(300, 200).distance(before)).isLessThan(1e-9);
            assertThat(pane.view().x(before.moved(1, 0)) - pane.view().x(before)).isGreaterThan(1.5);
            pane.view().fit();
            assertThat(pane.view().holds(pane.view().at(440, 340))).isTrue();
        });
    }

    @Test
    void everyControlHasANameIsExplainedAndHasItsOwnMnemonic() {
        Waiting.onWindowThread(() -> {
            List<JComponent> controls = parts(pane).filter(component -> component.getName() != null && (component instanceof AbstractButton
                    || component instanceof JComboBox || component instanceof JTable || component instanceof PictureView
                    || component instanceof JTextComponent text && text.isEditable())).map(JComponent.class::cast).toList();
            assertThat(controls).hasSizeGreaterThan(20).allSatisfy(control -> {
                assertThat(control.getAccessibleContext().getAccessibleName()).as(control.getName()).isNotBlank();
                assertThat(control.getToolTipText()).as(control.getName()).isNotBlank();
            });
            Map<Integer, Long> keys = parts(pane).map(component -> component instanceof JLabel label ? label.getDisplayedMnemonic()
                    : component instanceof AbstractButton button ? button.getMnemonic() : 0).filter(key -> key != 0)
                    .collect(Collectors.groupingBy(key -> key, Collectors.counting()));
            assertThat(keys).hasSizeGreaterThan(12);
            assertThat(keys.values()).containsOnly(1L);
        });
    }
}
