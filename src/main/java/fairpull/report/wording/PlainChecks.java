package fairpull.report.wording;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Finding;
import fairpull.domain.plan.Drift;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The checks of {@link CheckWords} without their figures, for whoever only wants to know what they say. */
public final class PlainChecks {
    private static final double SMALL_P = 0.05;

    private final Finding finding;

    private PlainChecks(Finding finding) {
        this.finding = finding;
    }

    /** {@return every check that applies and then what does not, each with a head of {@link CheckWords}} */
    public static List<Said> all(Finding finding) {
        PlainChecks words = new PlainChecks(finding);
        List<Said> figures = CheckWords.all(finding);
        List<Optional<String>> plain = List.of(words.returned(), words.drift(), words.record(),
                words.leaveOneOut("pull", finding.leaveOnePullOut()), words.leaveOneOut("install", finding.leaveOneInstallOut()),
                words.outliers(), words.randomisation(), words.installMeans());
        List<Said> said = new ArrayList<>();
        for (int check = 0; check < figures.size(); check++) {
            Said of = figures.get(check);
            said.add(new Said(of.head(), plain.get(check).orElse(of.text())));
        }
        return List.copyOf(said);
    }

    private Optional<String> returned() {
        return finding.returnCheck().map(check -> !check.byRecord()
                ? "A was fitted again at the end. How far refitting alone moves this car is not on record, so what came of it decides "
                + "nothing."
                : check.cameBack() ? "Fitted with A again at the end, the car gave what it gave at first, within what refitting moves it."
                : "Fitted with A again at the end, the car did not give what it gave at first: something else changed during the day.");
    }

    private Optional<String> drift() {
        return finding.settings().drift() == Drift.NONE ? Optional.empty() : finding.drift()
                .map(found -> "What changed with the clock, whichever part was fitted, is not counted as a change by the part.");
    }

    private Optional<String> record() {
        return finding.recordCheck().map(check -> check.pValue() < SMALL_P
                ? "The installs of this test scatter more than was known of the rig, so the interval may be too narrow."
                : "The installs of this test scatter no more than was known of the rig.");
    }

    private Optional<String> leaveOneOut(String what, Optional<Checks.LeaveOneOut> found) {
        return found.map(range -> range.changing().isEmpty() ? "Whichever " + what + " is left out, the verdict stays."
                : "The verdict hangs on " + String.join(", ", range.changing()) + ": without it the verdict is another.");
    }

    private Optional<String> outliers() {
        return Optional.of(finding.outliers().isEmpty() ? "Every pull lies among the others of its install."
                : finding.outliers().stream().map(outlier -> outlier.pull() + " of " + outlier.install())
                .collect(Collectors.joining(", ")) + " lies far from the others of its install. It counts all the same.");
    }

    private Optional<String> randomisation() {
        return finding.randomisation().map(test -> test.pValue() < SMALL_P
                ? "The order was drawn by lot, and hardly another order would have made these pulls look as different."
                : "The order was drawn by lot, and a good many other orders would have made these pulls look as different.");
    }

    private Optional<String> installMeans() {
        return finding.installMeansTest().map(test -> "The plainest comparison, of one mean an install, for anyone to redo: its "
                + "figures are kept beside the verdict and do not make it.");
    }
}
