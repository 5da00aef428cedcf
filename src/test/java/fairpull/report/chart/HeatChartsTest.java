package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.SoakAnswer;
import fairpull.report.HeatExamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text of a chart about heat is cut or runs into another, and every reading and pull is shown. */
class HeatChartsTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 1, 3})
    void chartsAreLegibleAtAnySize(double stretch) {
        for (String letters : new String[] {"A", "AB", "ABA", "ABBA", "ABABABABAB", "ABABABABABABABABABAB"}) {
            for (String column : new String[] {"IAT", "a very long name ".repeat(12)}) {
                SoakAnswer answer = HeatExamples.of(letters, 2, column, stretch);
                CoolDownLog log = answer.log().orElseThrow();
                CoolDownFit fit = answer.choice().orElseThrow().chosen();
                LayoutTest.assertLegible(StartTemperatureChart.draw(answer));
                LayoutTest.assertLegible(CoolDownChart.curve(log, fit));
                LayoutTest.assertLegible(CoolDownChart.residuals(log, fit));
            }
        }
    }

    @Test
    void everyReadingAndEveryPullIsShown() {
        SoakAnswer answer = HeatExamples.of("ABA", 2, "IAT", 1);
        CoolDownFit fit = answer.choice().orElseThrow().chosen();

        assertThat(CoolDownChart.curve(answer.log().orElseThrow(), fit).shapes()).filteredOn(Shape.Disc.class::isInstance).hasSize(60);
        assertThat(CoolDownChart.residuals(answer.log().orElseThrow(), fit).shapes()).filteredOn(Shape.Disc.class::isInstance).hasSize(60);
        assertThat(StartTemperatureChart.draw(answer).shapes()).filteredOn(Shape.Disc.class::isInstance).hasSize(15);
        assertThat(StartTemperatureChart.draw(answer).shapes()).filteredOn(Shape.Ring.class::isInstance).hasSize(6);
    }
}
