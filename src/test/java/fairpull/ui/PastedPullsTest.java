package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.document.Document;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.unit.UnitSystem;
import java.awt.datatransfer.StringSelection;
import java.nio.file.Path;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pilot pulls come from the clipboard of a spreadsheet or a notebook. */
class PastedPullsTest {
    private static final double WATT_A_HORSEPOWER = 745.69987158227022;

    @TempDir
    private Path home;

    /** Scatter by hand: means 200 and 202, squares within 2 + 2 over 4 degrees of freedom, so 1 hp. */
    @Test
    void pulledValuesPastedInBecomeTheScatterOfThePlan() {
        Hand hand = Hand.on(Document.unsaved(StartingPlan.in(UnitSystem.METRIC)), home);
        hand.type("question.measure", "peak power in hp");
        hand.go("page.rig");
        JTextArea area = hand.find("pilot.pulls", JTextArea.class);
        Waiting.onWindowThread(() -> assertThat(area.getTransferHandler().importData(area,
                new StringSelection("199 200 201\n201 202 203\n"))).isTrue());
        assertThat(area.getText()).contains("199 200 201");
        hand.press("pilot.take");
        assertThat(hand.document().plan().rig().pullScatter().orElseThrow().standardDeviationSi()).isCloseTo(WATT_A_HORSEPOWER, within(0.5));
    }
}
