package fairpull.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import fairpull.report.chart.Role;
import fairpull.ui.Waiting;
import fairpull.ui.form.Line;
import java.awt.Font;
import java.text.Bidi;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToolTip;
import org.junit.jupiter.api.Test;

/** Letters that the typeface of the window lacks come from the typefaces of the system. */
class ScriptsInWindowTest {
    private static final String HEBREW = "\u05de\u05e0\u05d5\u05e2";

    @Test
    void whatIsTypedAndShownFallsBackToTheSystem() {
        assumeThat(new Font(Font.DIALOG, Font.PLAIN, 13).canDisplayUpTo(HEBREW)).as("letters of the system").isEqualTo(-1);
        for (double scale : new double[] {1, 1.5}) {
            Waiting.onWindowThread(() -> {
                Look.install(Mode.LIGHT, scale);
                List<JComponent> all = List.of(new JTextField(), new JTextArea(), new JLabel(), new JTable(), new JComboBox<>(),
                        new JButton(), new JToolTip(), new JTable().getTableHeader());
                all.forEach(one -> assertThat(one.getFont().canDisplayUpTo(HEBREW)).as(one.getClass().getSimpleName()).isEqualTo(-1));
                assertThat(all.get(0).getFont().getFamily()).startsWith("Inter");
                assertThat(Stream.of(Look.Type.values()).map(Look::font)).allSatisfy(font -> {
                    assertThat(font.canDisplayUpTo(HEBREW)).isEqualTo(-1);
                    assertThat(font.deriveFont(font.getSize2D() - 1).canDisplayUpTo(HEBREW)).as("made smaller").isEqualTo(-1);
                });
            });
        }
    }

    @Test
    void aSentenceThatBeginsWithSuchAWordStillRunsFromLeftToRight() {
        Waiting.onWindowThread(() -> {
            Line line = new Line("\u201c" + HEBREW + "\u201d is not understood\n\u201c" + HEBREW + "\u201d neither", Role.INK, Look.Type.BODY);
            assertThat(line.getText().lines()).hasSize(2).allMatch(text -> new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT)
                    .getBaseLevel() == 0);
            assertThat(new Line("12 hp", Role.INK, Look.Type.BODY).getText()).isEqualTo("12 hp");
        });
    }
}
