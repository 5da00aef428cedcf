package fairpull.ui.form;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.Point;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whoever has no mouse goes along the spots of a chart and takes one. */
class ChartKeysTest {
    private static final Drawing DRAWN = new Drawing(300, 200, "Three days", "Three days to choose among.", List.of());
    private final List<Integer> taken = new ArrayList<>();
    private ChartView chart;

    @BeforeEach
    void show() {
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            chart = new ChartView("days.chart", 200, (width, height) -> Optional.of(new ChartView.Shown(DRAWN,
                    List.of(new Point(50, 50), new Point(150, 80), new Point(250, 120)))));
            chart.onClick(taken::add);
            OffScreen.laidOut(chart, 300, 200);
        });
    }

    private void press(String stroke) {
        Object key = chart.getInputMap(ChartView.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(stroke));
        Waiting.onWindowThread(() -> chart.getActionMap().get(key).actionPerformed(new ActionEvent(chart, 0, "")));
    }

    private String read() {
        return chart.getAccessibleContext().getAccessibleDescription();
    }

    @Test
    void arrowsGoAlongAndStopAtTheEnds() {
        assertThat(chart.isFocusable()).isTrue();
        press("RIGHT");
        press("ENTER");
        press("RIGHT");
        press("RIGHT");
        press("RIGHT");
        press("SPACE");
        press("HOME");
        press("LEFT");
        press("ENTER");
        assertThat(taken).containsExactly(0, 2, 0);
    }

    @Test
    void theSpotIsReadOut() {
        assertThat(read()).isEqualTo("Three days to choose among.");
        press("END");
        assertThat(read()).contains("3").endsWith("Three days to choose among.").isNotEqualTo("Three days to choose among.");
    }

    @Test
    void nothingIsTakenBeforeASpotWasReached() {
        press("ENTER");
        assertThat(taken).isEmpty();
    }
}
