package fairpull.engine.stats;

import static java.lang.Math.exp;
import static java.lang.Math.log;
import static java.lang.Math.pow;

/** The curves of the NIST reference data sets, with their derivatives. */
final class StandardModels {
    private StandardModels() {
    }

    /** One observation of a curve: value first, then the derivatives by the parameters. */
    private interface Curve {
        double[] at(double x, double[] b);
    }

    static NonlinearModel of(String set, double[] x) {
        Curve curve = curve(set);
        return b -> {
            double[] values = new double[x.length];
            double[][] jacobian = new double[x.length][b.length];
            for (int i = 0; i < x.length; i++) {
                double[] row = curve.at(x[i], b);
                values[i] = row[0];
                System.arraycopy(row, 1, jacobian[i], 0, b.length);
            }
            return new NonlinearModel.Evaluation(values, jacobian);
        };
    }

    private static Curve curve(String set) {
        return switch (set) {
            case "Misra1a", "BoxBOD" -> (x, b) -> new double[] {b[0] * (1 - exp(-b[1] * x)), 1 - exp(-b[1] * x),
                b[0] * x * exp(-b[1] * x)};
            case "Misra1b" -> (x, b) -> {
                double u = 1 + b[1] * x / 2;
                return new double[] {b[0] * (1 - 1 / (u * u)), 1 - 1 / (u * u), b[0] * x / (u * u * u)};
            };
            case "MGH17" -> (x, b) -> {
                double e = exp(-x * b[3]);
                double f = exp(-x * b[4]);
                return new double[] {b[0] + b[1] * e + b[2] * f, 1, e, f, -b[1] * x * e, -b[2] * x * f};
            };
            case "Lanczos3" -> (x, b) -> {
                double e = exp(-b[1] * x);
                double f = exp(-b[3] * x);
                double g = exp(-b[5] * x);
                return new double[] {b[0] * e + b[2] * f + b[4] * g, e, -b[0] * x * e, f, -b[2] * x * f, g, -b[4] * x * g};
            };
            case "Thurber" -> StandardModels::thurber;
            case "DanWood" -> (x, b) -> new double[] {b[0] * pow(x, b[1]), pow(x, b[1]), b[0] * pow(x, b[1]) * log(x)};
            case "Chwirut2" -> (x, b) -> {
                double e = exp(-b[0] * x);
                double d = b[1] + b[2] * x;
                return new double[] {e / d, -x * e / d, -e / (d * d), -x * e / (d * d)};
            };
            case "Bennett5" -> (x, b) -> {
                double u = b[1] + x;
                double power = pow(u, -1 / b[2]);
                return new double[] {b[0] * power, power, -b[0] / b[2] * power / u, b[0] * power * log(u) / (b[2] * b[2])};
            };
            default -> throw new IllegalArgumentException(set);
        };
    }

    private static double[] thurber(double x, double[] b) {
        double n = b[0] + x * (b[1] + x * (b[2] + x * b[3]));
        double d = 1 + x * (b[4] + x * (b[5] + x * b[6]));
        double k = -n / (d * d);
        return new double[] {n / d, 1 / d, x / d, x * x / d, x * x * x / d, k * x, k * x * x, k * x * x * x};
    }
}
