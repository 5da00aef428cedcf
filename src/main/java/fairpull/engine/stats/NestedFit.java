package fairpull.engine.stats;

/**
 * The nested model at one pair of ratios, everything in units of s_p²: a = s_r²/s_p² between installs of a session, b = s_d²/s_p² between
 * sessions. The means of a session's installs have the covariance M = diag(v) + b·11ᵀ with v = a + 1/n; with w = 1/v, W = Σw,
 * k = b/(1 + b·W) and q = 1/(1 + b·W) its inverse is diag(w) − k·wwᵀ, so that all sums cost one pass over the installs.
 */
final class NestedFit {
    private final NestedSums sums;
    private final double a;
    private final double b;
    private final double[] weight;
    private final double mean;
    private final double total;

    NestedFit(NestedSums sums, double a, double b) {
        this.sums = sums;
        this.a = a;
        this.b = b;
        this.weight = new double[sums.sessions()];
        double weighted = 0;
        double all = 0;
        for (int s = 0; s < weight.length; s++) {
            double[] means = sums.meansOf(s);
            double sum = 0;
            for (int i = 0; i < means.length; i++) {
                weight[s] += w(s, i);
                sum += w(s, i) * means[i];
            }
            all += q(s) * weight[s];
            weighted += q(s) * sum;
        }
        total = all;
        mean = weighted / all;
    }

    private double w(int session, int install) {
        return 1 / (a + 1.0 / sums.pullsOf(session)[install]);
    }

    private double q(int session) {
        return 1 / (1 + b * weight[session]);
    }

    /** The weighted mean. */
    double mean() {
        return sums.origin() + mean;
    }

    /** 1ᵀH⁻¹1: its inverse is the variance of the mean. */
    double total() {
        return total;
    }

    /** rᵀH⁻¹r, the squares within installs among them. */
    double quadraticForm() {
        double sum = sums.withinSquares();
        for (int s = 0; s < weight.length; s++) {
            double linear = 0;
            double square = 0;
            for (int i = 0; i < sums.meansOf(s).length; i++) {
                double e = sums.meansOf(s)[i] - mean;
                linear += w(s, i) * e;
                square += w(s, i) * e * e;
            }
            sum += square - b * q(s) * linear * linear;
        }
        return sum;
    }

    /** ln|H| + ln 1ᵀH⁻¹1. */
    double logDeterminants() {
        double sum = Math.log(total);
        for (int s = 0; s < weight.length; s++) {
            sum += Math.log1p(b * weight[s]);
            for (int n : sums.pullsOf(s)) {
                sum += Math.log1p(a * n);
            }
        }
        return sum;
    }

    /** Slope in a of the log determinants, and of the quadratic form. */
    double[] slopesInRefit() {
        double trace = 0;
        double squares = 0;
        double ofTotal = 0;
        for (int s = 0; s < weight.length; s++) {
            double square = 0;
            double linear = 0;
            for (int i = 0; i < sums.meansOf(s).length; i++) {
                square += w(s, i) * w(s, i);
                linear += w(s, i) * (sums.meansOf(s)[i] - mean);
            }
            trace += weight[s] - b * q(s) * square;
            ofTotal += q(s) * q(s) * square;
            for (int i = 0; i < sums.meansOf(s).length; i++) {
                double solved = w(s, i) * (sums.meansOf(s)[i] - mean - b * q(s) * linear);
                squares += solved * solved;
            }
        }
        return new double[] {trace - ofTotal / total, -squares};
    }

    /** Slope in b of the log determinants, and of the quadratic form. */
    double[] slopesInDay() {
        double trace = 0;
        double squares = 0;
        double ofTotal = 0;
        for (int s = 0; s < weight.length; s++) {
            double linear = 0;
            for (int i = 0; i < sums.meansOf(s).length; i++) {
                linear += w(s, i) * (sums.meansOf(s)[i] - mean);
            }
            double reduced = q(s) * weight[s];
            trace += reduced;
            ofTotal += reduced * reduced;
            squares += q(s) * linear * (q(s) * linear);
        }
        return new double[] {trace - ofTotal / total, -squares};
    }

    /**
     * The expected information ½·tr(P V_j P V_k) on (s_p², s_r², s_d²), in units of s_p⁻⁴, row by row. With A = M⁻¹ and d_j the diagonal of
     * the derivative of M (1/n for the pull, 1 for the refit):
     * tr(A D_j A D_k) = Σw²d_jd_k − 2k·Σw³d_jd_k + k²·Σw²d_j·Σw²d_k; the day's derivative is 11ᵀ.
     */
    double[] information() {
        double[] traces = new double[9];
        double[] first = new double[3];
        double[] second = new double[9];
        traces[0] = sums.values() - sums.installs();
        for (int s = 0; s < weight.length; s++) {
            add(s, traces, first, second);
        }
        double[] information = new double[9];
        for (int j = 0; j < 3; j++) {
            for (int k = 0; k < 3; k++) {
                information[3 * j + k] = 0.5 * (traces[3 * j + k] - 2 * second[3 * j + k] / total + first[j] * first[k] / (total * total));
            }
        }
        return information;
    }

    /** Adds one session's tr(A V_j A V_k), 1ᵀA V_j A 1 and 1ᵀA V_j A V_k A 1. */
    private void add(int s, double[] traces, double[] first, double[] second) {
        double k = b * q(s);
        double q = q(s);
        double sum = q * weight[s];
        double[] squares = new double[2];
        double[] squared = new double[4];
        double[] cubed = new double[4];
        for (int i = 0; i < sums.meansOf(s).length; i++) {
            double w = w(s, i);
            double[] d = {1.0 / sums.pullsOf(s)[i], 1};
            for (int x = 0; x < 2; x++) {
                squares[x] += w * w * d[x];
                for (int y = 0; y < 2; y++) {
                    squared[2 * x + y] += w * w * d[x] * d[y];
                    cubed[2 * x + y] += w * w * w * d[x] * d[y];
                }
            }
        }
        for (int x = 0; x < 2; x++) {
            first[x] += q * q * squares[x];
            for (int y = 0; y < 2; y++) {
                traces[3 * x + y] += squared[2 * x + y] - 2 * k * cubed[2 * x + y] + k * k * squares[x] * squares[y];
                second[3 * x + y] += q * q * (cubed[2 * x + y] - k * squares[x] * squares[y]);
            }
            double withDay = q * q * squares[x];
            traces[3 * x + 2] += withDay;
            traces[6 + x] += withDay;
            second[3 * x + 2] += withDay * sum;
            second[6 + x] += withDay * sum;
        }
        first[2] += sum * sum;
        traces[8] += sum * sum;
        second[8] += sum * sum * sum;
    }
}
