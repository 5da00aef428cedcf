package fairpull.engine.proving;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.proof.PlannedInstall;
import fairpull.domain.proof.ProofQuestion;
import fairpull.domain.proof.Truth;
import fairpull.engine.stats.Deviates;
import java.util.Optional;

/**
 * Draws the values of campaigns without a change. A scatter that rests on a record is drawn from what the record leaves open where the
 * truth says so: s² = ν·s₀²/χ²(ν). Serial correlation is that of a stationary autoregression of first order over the pulls of a session.
 */
final class CampaignDraw {
    private static final double MINUTES_AN_HOUR = 60;

    private final Truth truth;
    private final Optional<ScatterRecord> pullRecord;
    private final Optional<ScatterRecord> refitRecord;
    private final Deviates deviates;
    private final double[] drift;
    private final boolean[] newInstall;
    private final boolean[] newSession;
    private final double[] values;
    private final double fresh;

    CampaignDraw(ProofQuestion question, long seed) {
        truth = question.truth();
        JudgeSettings settings = question.settings();
        pullRecord = truth.drawn() ? settings.pullRecord().filter(CampaignDraw::isOpen) : Optional.empty();
        refitRecord = truth.drawn() ? settings.refitRecord().filter(CampaignDraw::isOpen) : Optional.empty();
        deviates = new Deviates(seed);
        int pulls = question.installs().stream().mapToInt(install -> install.minutes().size()).sum();
        drift = new double[pulls];
        newInstall = new boolean[pulls];
        newSession = new boolean[pulls];
        values = new double[pulls];
        fresh = Math.sqrt(1 - truth.autocorrelation() * truth.autocorrelation());
        int k = 0;
        String session = "";
        for (PlannedInstall install : question.installs()) {
            newInstall[k] = true;
            newSession[k] = k == 0 || !install.session().equals(session);
            session = install.session();
            for (double minutes : install.minutes()) {
                drift[k++] = truth.driftPerHour() * minutes / MINUTES_AN_HOUR;
            }
        }
    }

    private static boolean isOpen(ScatterRecord record) {
        return Double.isFinite(record.degreesOfFreedom());
    }

    /** The values of the next campaign; the array is the same every time. */
    double[] next() {
        double pullScatter = scatter(pullRecord, truth.pullScatter());
        double refitScatter = scatter(refitRecord, truth.refitScatter());
        double refit = 0;
        double pull = 0;
        for (int k = 0; k < values.length; k++) {
            if (newInstall[k]) {
                refit = refitScatter * deviates.normal();
            }
            double shock = pullScatter * deviates.normal();
            pull = newSession[k] ? shock : truth.autocorrelation() * pull + fresh * shock;
            values[k] = drift[k] + refit + pull + outlier();
        }
        return values;
    }

    private double scatter(Optional<ScatterRecord> record, double typed) {
        if (record.isEmpty()) {
            return typed;
        }
        double df = record.get().degreesOfFreedom();
        return record.get().standardDeviation() * Math.sqrt(df / deviates.chiSquare(df));
    }

    private double outlier() {
        if (truth.outlierShare() == 0 || deviates.uniform() >= truth.outlierShare()) {
            return 0;
        }
        return deviates.uniform() < 0.5 ? truth.outlierSize() : -truth.outlierSize();
    }
}
