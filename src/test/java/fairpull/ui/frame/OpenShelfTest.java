package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Unsaved;
import fairpull.ui.InventedTests.Kind;
import fairpull.ui.InventedTests;
import fairpull.ui.OffScreen;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window of tests in a folder, without a display. */
class OpenShelfTest {
    @TempDir
    private Path home;
    private Path folder;
    private Seat seat;

    @BeforeEach
    void make() throws IOException {
        folder = Files.createDirectories(home.resolve("shop"));
        InventedTests.make(folder, 0, Kind.COMPLETE);
        InventedTests.make(folder, 1, Kind.COMPLETE);
        InventedTests.make(folder, 4, Kind.COMPLETE);
        InventedTests.make(folder, 5, Kind.UNDER_WAY);
        InventedTests.make(folder, 6, Kind.BROKEN);
        seat = new Seat(home.resolve("home"));
        done(() -> seat.windows.begin(Optional.empty(), Unsaved.none(), List.of()));
        done(() -> seat.windows.open().get(0).actions().shelf());
    }

    private OpenShelf shelf() {
        return got(() -> seat.windows.openShelf().orElseThrow());
    }

    private void choose(Path where) {
        ((NoFrame) shelf().shell()).chosen = Optional.of(where);
        click("shelf.choose");
    }

    private <C extends Component> C find(String name, Class<C> type) {
        return Seat.within(shelf().board()).filter(one -> name.equals(one.getName())).map(type::cast).findFirst()
                .orElseThrow(() -> new AssertionError("there is no " + name));
    }

    private void click(String name) {
        done(() -> find(name, AbstractButton.class).doClick(0));
        done(() -> OffScreen.laidOut(shelf().board(), 1280, 800));
    }

    private JTable table() {
        return find("shelf.list", JTable.class);
    }

    private String head() {
        return got(() -> find("shelf.head", JTextArea.class).getText());
    }

    /** {@return a cell as it is read out} */
    private String cell(int row, int column) {
        return got(() -> table().prepareRenderer(table().getCellRenderer(row, column), row, column).getAccessibleContext()
                .getAccessibleName()).replace('\u202f', ' ');
    }

    private void press(JComponent on, int when, String stroke) {
        Object act = on.getInputMap(when).get(KeyStroke.getKeyStroke(stroke));
        assertThat(act).as(stroke).isNotNull();
        done(() -> on.getActionMap().get(act).actionPerformed(new ActionEvent(on, ActionEvent.ACTION_PERFORMED, stroke)));
    }

    @Test
    void everyTestHasItsRowAndABrokenOneSaysWhy() {
        assertThat(head()).startsWith("Choose or drop");
        choose(folder);
        assertThat(head()).isEqualTo("5 tests: 3 complete, 1 under way, 1 cannot be read.");
        assertThat(table().getRowCount()).isEqualTo(5);
        assertThat(cell(0, 0)).isEqualTo("Invented: panel filter, car A. A: standard panel filter · B: other panel filter");
        assertThat(cell(1, 3)).matches("\\+\\d\\.\\d hp\\. 95 %: .* … .* hp");
        assertThat(cell(1, 4)).contains("interval");
        assertThat(cell(3, 1)).startsWith("under way, 7 of 15 pulls");
        assertThat(cell(3, 2)).isEmpty();
        assertThat(cell(4, 0)).contains("plan.json", "line 1");
        assertThat(cell(1, 5)).isEqualTo("2026-01-07");
    }

    @Test
    void aWordAStateAndAVerdictFilter() {
        choose(folder);
        done(() -> find("shelf.find", JTextField.class).setText("other MANIFOLD"));
        assertThat(table().getRowCount()).isEqualTo(1);
        done(() -> find("shelf.find", JTextField.class).setText(""));
        done(() -> find("shelf.state", JComboBox.class).setSelectedItem("UNREADABLE"));
        assertThat(table().getRowCount()).isEqualTo(1);
        done(() -> find("shelf.state", JComboBox.class).setSelectedItem("any"));
        done(() -> find("shelf.verdict", JComboBox.class).setSelectedItem("gain"));
        assertThat(table().getRowCount()).isBetween(1, 2);
        assertThat(cell(0, 2)).startsWith("A gain");
        done(() -> find("shelf.verdict", JComboBox.class).setSelectedItem("none"));
        assertThat(table().getRowCount()).isEqualTo(2);
    }

    @Test
    void changesAreSortedByWorthwhileGainsAndARowThatIsChosenStaysSo() {
        choose(folder);
        done(() -> table().setRowSelectionInterval(2, 2));
        done(() -> table().getRowSorter().toggleSortOrder(3));
        List<Double> changes = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            changes.add(Double.parseDouble(cell(row, 3).replaceAll(" hp.*", "").replace('−', '-')));
        }
        assertThat(changes).isSorted();
        assertThat(cell(got(() -> table().getSelectedRow()), 0)).contains("car E");
        click("shelf.again");
        assertThat(cell(got(() -> table().getSelectedRow()), 0)).contains("car E");
    }

    @Test
    void copiesOfATestAreToldApartByWhereTheyLie() throws IOException {
        InventedTests.make(folder.resolve("spring/rollers 2"), 0, Kind.SEALED);
        InventedTests.make(folder.resolve("autumn"), 6, Kind.BROKEN);
        choose(folder);
        assertThat(got(() -> IntStream.range(0, 7).mapToObj(row -> cell(row, 0)).toList()))
                .anyMatch(cell -> cell.equals("Invented: panel filter, car A. in 000 panel filter · A: standard panel filter · B: other "
                        + "panel filter"))
                .anyMatch(cell -> cell.startsWith("Invented: panel filter, car A. in " + Path.of("spring", "rollers 2", "000 panel filter")))
                .anyMatch(cell -> cell.startsWith("006 air box. in " + Path.of("autumn", "006 air box")))
                .anyMatch(cell -> cell.startsWith("Invented: exhaust manifold, car B. A: "));
    }

    @Test
    void whatIsWrongWithTheChosenTestIsReadWholeBeneathTheList() {
        choose(folder);
        done(() -> table().setRowSelectionInterval(4, 4));
        done(() -> OffScreen.laidOut(shelf().board(), 1280, 800));
        assertThat(got(() -> find("shelf.wrong", JTextArea.class).getText())).contains("plan.json", "line 1");
        assertThat(got(() -> find("shelf.wrong", JTextArea.class).getHeight())).isGreaterThan(14);
        assertThat(got(() -> find("shelf.where", JTextArea.class).getText())).isEqualTo(folder.resolve("006 air box").toString());
        done(() -> table().setRowSelectionInterval(0, 0));
        assertThat(got(() -> find("shelf.wrong", JTextArea.class).isVisible())).isFalse();
    }

    @Test
    void enterOpensATestAndABrokenOneSaysWhatIsWrong() {
        choose(folder);
        done(() -> table().setRowSelectionInterval(1, 1));
        press(table(), JComponent.WHEN_FOCUSED, "ENTER");
        assertThat(got(seat.windows::open)).hasSize(2).anyMatch(open -> open.isIn(folder.resolve("001 exhaust manifold")));
        done(() -> table().setRowSelectionInterval(4, 4));
        press(table(), JComponent.WHEN_FOCUSED, "ENTER");
        assertThat(got(seat.windows::open)).hasSize(2);
        assertThat(got(() -> find("banner.words", JTextArea.class).getText())).contains("plan.json").doesNotContain("Exception");
    }

    @Test
    void whatCameMeanwhileIsSeenWhenAskedFor() throws IOException {
        choose(folder);
        InventedTests.make(folder.resolve("later"), 9, Kind.SEALED);
        press(shelf().board().pane(), JComponent.WHEN_IN_FOCUSED_WINDOW, "F5");
        assertThat(head()).startsWith("6 tests").contains("1 still ahead");
    }

    @Test
    void theFolderIsListedAgainWhenTheWindowIsOpenedAgainAndThereIsOneWindowOfIt() {
        choose(folder);
        done(() -> seat.windows.shelf());
        assertThat(((NoFrame) shelf().shell()).front).isEqualTo(1);
        done(() -> shelf().end());
        assertThat(got(seat.windows::openShelf)).isEmpty();
        done(() -> seat.windows.shelf());
        assertThat(head()).startsWith("5 tests");
    }

    @Test
    void aDayThatIsRunBlindIsNotToldHere() {
        Path underWay = folder.resolve("005 ignition map");
        done(() -> seat.settings.set("run.blind:" + underWay.toAbsolutePath().normalize(), "on"));
        choose(folder);
        assertThat(cell(3, 0)).isEqualTo("A test, run blind");
        done(() -> table().setRowSelectionInterval(3, 3));
        assertThat(got(() -> find("shelf.where", JTextArea.class).getText())).isEmpty();
        assertThat(cell(3, 1)).startsWith("under way");
    }

    @Test
    void aFolderWithoutTestsAndOneThatIsGoneSayWhatGoesThere() throws IOException {
        choose(Files.createDirectories(home.resolve("nothing")));
        assertThat(head()).startsWith("No test lies below this folder");
        choose(home.resolve("gone"));
        assertThat(head()).contains("no such folder").doesNotContain("Exception");
    }

    @Test
    void theRigOverTimeStandsBeside() throws IOException {
        choose(folder);
        click("shelf.rigs");
        assertThat(rig()).anyMatch(text -> text.startsWith("No rig record lies below"));
        InventedTests.record(folder.resolve("rig"));
        click("shelf.again");
        assertThat(rig()).anyMatch(text -> text.startsWith("No change of the rig") || text.startsWith("The rig looks changed"));
        assertThat(rig()).anyMatch(text -> text.contains("3 tests taken in"));
        Files.writeString(Files.createDirectories(folder.resolve("rig 2")).resolve("x.rig.json"), "{}");
        click("shelf.again");
        assertThat(rig()).anyMatch(text -> text.contains("not a rig record")).anyMatch(text -> text.contains("3 tests taken in"));
    }

    private List<String> rig() {
        return got(() -> Seat.within(find("shelf.rig", JComponent.class)).filter(JTextArea.class::isInstance)
                .map(text -> ((JTextArea) text).getText()).toList());
    }

    @Test
    void everyControlHasANameAKeyOfItsOwnAndIsExplained() {
        choose(folder);
        List<Component> all = Seat.within(shelf().board()).toList();
        List<Component> labelled = all.stream().filter(JLabel.class::isInstance).map(label -> ((JLabel) label).getLabelFor()).toList();
        List<Component> controls = all.stream().filter(one -> one.getName() != null && (one instanceof AbstractButton
                || one instanceof JTextComponent text && text.isEditable() || one instanceof JComboBox || one instanceof JTable
                || one instanceof JProgressBar)).toList();
        assertThat(controls).hasSizeGreaterThan(9).allSatisfy(control -> {
            assertThat(control.getAccessibleContext().getAccessibleName()).as(control.getName()).isNotBlank();
            assertThat(((JComponent) control).getToolTipText() != null || labelled.contains(control)).as(control.getName()).isTrue();
        });
        Map<Integer, List<String>> keys = new TreeMap<>();
        all.forEach(one -> {
            int key = one instanceof JLabel label ? label.getDisplayedMnemonic() : one instanceof AbstractButton button ? button.getMnemonic() : 0;
            if (key != 0) {
                keys.computeIfAbsent(key, none -> new ArrayList<>()).add(String.valueOf(one.getName()));
            }
        });
        assertThat(keys).hasSize(9);
        assertThat(keys.values()).allSatisfy(named -> assertThat(named).hasSize(1));
    }
}
