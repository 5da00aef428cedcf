package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Question;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Every check of the pulls of a test, in the order in which their outcomes are shown. */
public final class Checklist {
    private Checklist() {
    }

    /** A pull that the checks of one pull have looked at; pulls may be looked at side by side. */
    public static final class Looked {
        private final Traced pull;
        private final List<Optional<EachPull.Reading>> readings;

        private Looked(Traced pull, List<Optional<EachPull.Reading>> readings) {
            this.pull = pull;
            this.readings = readings;
        }

        /** {@return what was looked at} */
        public PullTrace pull() {
            return pull.pull();
        }

        /** {@return how many numbers it holds beside those of the pull} */
        public long numbers() {
            return 4L * pull.channels().rows();
        }
    }

    /** {@return a pull as the checks that look at one pull at a time see it, made ready for those that hold it against others} */
    public static Looked look(Question question, PullTrace pull) {
        Traced traced = new Traced(pull);
        traced.stretches();
        return new Looked(traced, each(question).stream().map(check -> check.readUsed(traced)).toList());
    }

    /** {@return what came of the checks that look at one pull at a time} */
    public static List<CheckOutcome> ofEach(Question question, List<Looked> pulls) {
        List<EachPull> checks = each(question);
        return IntStream.range(0, checks.size()).mapToObj(check -> checks.get(check).of(traced(pulls),
                pulls.stream().map(pull -> pull.readings.get(check)).toList())).toList();
    }

    private static List<EachPull> each(Question question) {
        List<EachPull> checks = new ArrayList<>(List.of(new UnitMixUp(), new PowerAgainstTorque(), CorrectionRatio.twice(),
                CorrectionRatio.notApplied(), new Plateau(), new TimeRises(),
                new ValuesPlausible()));
        if (question.deciding().definition() instanceof Definition.MeanOverBand band) {
            double low = band.lowRadPerS();
            double high = band.highRadPerS();
            checks.addAll(List.of(new BandCovered(low, high), new BandSampled(low, high), new FullThrottle(low, high),
                    new PowerCollapse(), new Spikes(low, high)));
        } else {
            if (question.deciding().definition().isReadOffCurve()) {
                checks.addAll(List.of(new FullThrottle(0, Double.POSITIVE_INFINITY), new PowerCollapse()));
            }
            checks.add(new Spikes(0, Double.POSITIVE_INFINITY));
        }
        return checks;
    }

    private static List<Traced> traced(List<Looked> pulls) {
        return pulls.stream().map(looked -> looked.pull).toList();
    }

    /** {@return what came of the checks that hold pulls against each other} */
    public static List<CheckOutcome> ofPairs(Question question, List<Looked> pulls) {
        List<PullCheck> checks = new ArrayList<>(List.of(new NumbersRepeated(), new PullIsMultiple(), new StretchCopied()));
        if (question.deciding().definition() instanceof Definition.MeanOverBand band
                && (band.quantity() == Quantity.POWER || band.quantity() == Quantity.TORQUE)) {
            checks.add(new CorrectionStep(band));
        }
        return checks.stream().map(check -> check.of(traced(pulls))).toList();
    }
}
