package fairpull.engine.judging;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import fairpull.engine.stats.Deviates;
import java.util.ArrayList;
import java.util.List;

/**
 * Curves drawn from the model: level + refit curve of the install + pull curve, both Gaussian with a squared-exponential correlation over
 * engine speed, and a change of B that is nil.
 */
final class Curves {
    static final double LEVEL = 150;

    private final double[][] refitFactor;
    private final double[][] pullFactor;

    /** Curves of so many speeds; a length is how many of them the correlation reaches over, 0 for none. */
    Curves(int speeds, double refitLength, double pullLength) {
        refitFactor = factor(speeds, refitLength);
        pullFactor = factor(speeds, pullLength);
    }

    /** Lower Cholesky factor of exp(−d²/2ℓ²), with a trace of noise of its own at every speed so that it has one. */
    private static double[][] factor(int speeds, double length) {
        double[][] l = new double[speeds][speeds];
        for (int j = 0; j < speeds; j++) {
            for (int i = j; i < speeds; i++) {
                double d = i - j;
                double sum = i == j ? 1 + 1e-6 : length == 0 ? 0 : Math.exp(-d * d / (2 * length * length));
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-12)) : sum / l[j][j];
            }
        }
        return l;
    }

    private static double[] draw(double[][] factor, double scatter, Deviates deviates) {
        double[] z = new double[factor.length];
        for (int k = 0; k < z.length; k++) {
            z[k] = deviates.normal();
        }
        double[] curve = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            for (int k = 0; k <= i; k++) {
                curve[i] += scatter * factor[i][k] * z[k];
            }
        }
        return curve;
    }

    /** {@return a campaign in which nothing was changed} */
    CurveTable campaign(String order, int pulls, double refitScatter, double pullScatter, Deviates deviates) {
        List<CurveRow> rows = new ArrayList<>();
        for (int i = 0; i < order.length(); i++) {
            double[] refit = draw(refitFactor, refitScatter, deviates);
            for (int k = 1; k <= pulls; k++) {
                double[] values = draw(pullFactor, pullScatter, deviates);
                for (int j = 0; j < values.length; j++) {
                    values[j] += LEVEL + refit[j];
                }
                rows.add(new CurveRow("1", "I" + i, Part.valueOf(order.substring(i, i + 1)), "" + k, Double.NaN, Samples.of(values),
                        List.of()));
            }
        }
        return table(rows, refitFactor.length);
    }

    static CurveTable table(List<CurveRow> rows, int speeds) {
        return new CurveTable(Units.HORSEPOWER, new SpeedGrid(Units.RPM.toSi(2000), Units.RPM.toSi(50), speeds), Units.RPM.toSi(100),
                List.of(), rows);
    }
}
