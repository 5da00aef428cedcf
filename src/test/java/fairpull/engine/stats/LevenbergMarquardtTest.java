package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** NIST StRD, nonlinear regression (published/nist-strd-nonlinear): at least 6 certified digits from both starting points. */
class LevenbergMarquardtTest {
    private static final double SIX_DIGITS = 5e-7;
    private static final Published CERTIFIED = new Published("nist-strd-nonlinear/certified.csv");
    private static final Published RESIDUALS = new Published("nist-strd-nonlinear/residuals.csv");

    @ParameterizedTest
    @CsvSource({"Misra1a,start1", "Misra1a,start2", "Misra1b,start1", "Misra1b,start2", "BoxBOD,start1", "BoxBOD,start2", "MGH17,start1",
        "MGH17,start2", "Lanczos3,start1", "Lanczos3,start2", "Thurber,start1", "Thurber,start2", "DanWood,start1", "DanWood,start2",
        "Chwirut2,start1", "Chwirut2,start2", "Bennett5,start1", "Bennett5,start2"})
    void reachesTheCertifiedDigits(String set, String start) {
        Published data = new Published("nist-strd-nonlinear/" + set + ".csv");
        NonlinearFit fit = LevenbergMarquardt.fit(StandardModels.of(set, data.numbers("x")), data.numbers("y"), column(set, start));

        assertThat(fit.isMinimum()).isTrue();
        double[] value = column(set, "value");
        double[] error = column(set, "standardError");
        for (int j = 0; j < value.length; j++) {
            assertThat(fit.parameter(j) / value[j]).as("b%d", j + 1).isCloseTo(1, within(SIX_DIGITS));
            assertThat(fit.standardError(j) / error[j]).as("standard deviation of b%d", j + 1).isCloseTo(1, within(SIX_DIGITS));
        }
        int row = RESIDUALS.words("set").indexOf(set);
        assertThat(fit.residualSumOfSquares() / RESIDUALS.numbers("sumOfSquares")[row]).isCloseTo(1, within(SIX_DIGITS));
        assertThat(fit.residualDeviation() / RESIDUALS.numbers("deviation")[row]).isCloseTo(1, within(SIX_DIGITS));
    }

    @ParameterizedTest
    @CsvSource({"Misra1a", "Misra1b", "BoxBOD", "MGH17", "Lanczos3", "Thurber", "DanWood", "Chwirut2", "Bennett5"})
    void derivativesAreThoseOfTheModel(String set) {
        NonlinearModel model = StandardModels.of(set, new Published("nist-strd-nonlinear/" + set + ".csv").numbers("x"));
        double[] at = column(set, "value");
        double[][] jacobian = model.at(at).jacobian();
        for (int j = 0; j < at.length; j++) {
            double h = 1e-6 * Math.abs(at[j]);
            double[] up = at.clone();
            up[j] += h;
            double[] down = at.clone();
            down[j] -= h;
            double[] high = model.at(up).values();
            double[] low = model.at(down).values();
            for (int i = 0; i < high.length; i++) {
                double slope = (high[i] - low[i]) / (2 * h);
                double rounding = 8 * Math.ulp(high[i]) / h;
                assertThat(jacobian[i][j]).as("row %d, b%d", i, j + 1).isCloseTo(slope, within(1e-5 * Math.abs(slope) + rounding));
            }
        }
    }

    /** A straight line has its closed form: y = x² at 0…3 has slope 3, level −1, residual sum of squares 4 (computed by hand). */
    @Test
    void aStraightLineIsFittedAsOrdinaryRegressionDoes() {
        NonlinearFit fit = LevenbergMarquardt.fit(b -> new NonlinearModel.Evaluation(
                new double[] {b[0], b[0] + b[1], b[0] + 2 * b[1], b[0] + 3 * b[1]}, new double[][] {{1, 0}, {1, 1}, {1, 2}, {1, 3}}),
                new double[] {0, 1, 4, 9}, new double[] {1, 1});

        assertThat(fit.parameter(0)).isCloseTo(-1, within(1e-12));
        assertThat(fit.parameter(1)).isCloseTo(3, within(1e-12));
        assertThat(fit.residualSumOfSquares()).isCloseTo(4, within(1e-12));
        assertThat(fit.standardError(1)).isCloseTo(Math.sqrt(2.0 / 5), within(1e-12));
        assertThat(fit.correlation(0, 1)).isCloseTo(-1.5 / Math.sqrt(3.5), within(1e-12));
    }

    @Test
    void parametersThatTheDataDoNotTellApartAreNotDetermined() {
        NonlinearFit fit = LevenbergMarquardt.fit(b -> new NonlinearModel.Evaluation(
                new double[] {b[0] + b[1], b[0] + b[1], b[0] + b[1]}, new double[][] {{1, 1}, {1, 1}, {1, 1}}),
                new double[] {1, 2, 3}, new double[] {1, 1});

        assertThat(fit.isDetermined()).isFalse();
        assertThat(fit.standardError(0)).isNaN();
    }

    /** 1 − e^(−bx) with readings on a rising straight line: b falls and the level rises for ever. */
    @Test
    void aValleyWithoutFloorEndsAndSaysThatItIsNoMinimum() {
        double[] x = {1, 2, 3, 4, 5, 6, 7, 8};
        double[] y = {1, 2, 3, 4.2, 5.5, 7, 8.8, 11};
        NonlinearFit fit = LevenbergMarquardt.fit(StandardModels.of("BoxBOD", x), y, new double[] {20, 0.1});
        assertThat(fit.isMinimum() && fit.isDetermined()).isFalse();
    }

    @Test
    void tooFewObservationsAreRefused() {
        assertThatThrownBy(() -> LevenbergMarquardt.fit(b -> new NonlinearModel.Evaluation(b, new double[][] {{1, 0}, {0, 1}}),
                new double[] {1, 2}, new double[] {1, 1})).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("more observations");
    }

    private static double[] column(String set, String name) {
        List<Double> values = new ArrayList<>();
        for (int row = 0; row < CERTIFIED.words("set").size(); row++) {
            if (CERTIFIED.words("set").get(row).equals(set)) {
                values.add(CERTIFIED.numbers(name)[row]);
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
