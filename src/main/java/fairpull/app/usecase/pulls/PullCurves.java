package fairpull.app.usecase.pulls;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SweptCurve;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.engine.curve.CommonGrid;
import fairpull.engine.curve.Resampled;
import fairpull.engine.curve.Sweep;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The curves of one quantity of every pull that came in: every row of each sweep, and all of them on one grid by the smoothing of the
 * finding.
 *
 * @param unit of the values
 * @param curves in the order of the plan
 * @param grid the speeds that all of them cover; empty where there are none
 * @param onGrid each curve on that grid, in their order; empty without a grid
 * @param bandwidthRadPerS how far the smoothing reaches
 * @param canBeUncorrected whether the air at some pull is known, so that its factor can be taken out
 */
public record PullCurves(Unit unit, List<SweptCurve> curves, Optional<SpeedGrid> grid, List<Samples> onGrid, double bandwidthRadPerS,
        boolean canBeUncorrected) {
    public PullCurves {
        curves = List.copyOf(curves);
        onGrid = List.copyOf(onGrid);
    }

    /**
     * {@return the curves of the test in a folder}
     *
     * @param quantity power or torque
     * @param corrected whether as they are judged, or with the correction for air taken out where its factor is known
     */
    public static PullCurves of(Path folder, Quantity quantity, boolean corrected, Progress progress) throws IOException {
        TestFolder test = TestFolder.open(folder);
        return new Maker(test, test.read(), quantity, corrected).make(progress);
    }

    private static final class Maker {
        private final TestFolder test;
        private final TestFolder.Content content;
        private final Plan plan;
        private final Quantity quantity;
        private final boolean corrected;
        private final Unit unit;
        private final double bandwidth;

        Maker(TestFolder test, TestFolder.Content content, Quantity quantity, boolean corrected) {
            this.test = test;
            this.content = content;
            this.plan = content.plan();
            this.quantity = quantity;
            this.corrected = corrected;
            this.unit = plan.question().measures().stream().map(measure -> measure.unit())
                    .filter(one -> one.quantity() == quantity).findFirst().orElse(usual(quantity));
            this.bandwidth = plan.bandwidthRadPerS().orElse(CommonGrid.BANDWIDTH_RAD_PER_S);
        }

        private Unit usual(Quantity asked) {
            boolean customary = plan.question().deciding().unit().equals(Units.HORSEPOWER)
                    || plan.question().deciding().unit().equals(Units.POUND_FOOT);
            return asked == Quantity.POWER ? customary ? Units.HORSEPOWER : Units.KILOWATT
                    : customary ? Units.POUND_FOOT : Units.NEWTON_METRE;
        }

        /** A curve, and what is needed to bring it onto the grid. */
        private record Read(SweptCurve curve, Resampled resampled, double scale) {
        }

        PullCurves make(Progress progress) {
            List<PullSeen> seen = Evidence.of(test, content, (pull, trouble) -> { }, progress.part(0, 3)).pulls().stream()
                    .filter(pull -> content.log().pulls().containsKey(pull.pull()) && !pull.pull().warmUp()).toList();
            Map<PullId, LogEntry.PullTaken> taken = content.log().pulls();
            List<Read> read = Chunks.run(seen.size(), place -> read(seen.get(place), taken.get(seen.get(place).pull())), Chunks.cores(),
                    progress.part(1, 3)).stream().flatMap(Optional::stream).toList();
            Optional<SpeedGrid> grid = grid(read.stream().filter(one -> one.curve().used()).map(Read::resampled).toList());
            List<Samples> onGrid = grid.isEmpty() ? List.of() : Chunks.run(read.size(), place -> read.get(place).resampled()
                    .on(grid.get(), bandwidth).map(si -> si * read.get(place).scale()), Chunks.cores(),
                    progress.part(2, 3));
            return new PullCurves(unit, read.stream().map(Read::curve).toList(), grid, onGrid, bandwidth,
                    seen.stream().anyMatch(pull -> pull.correction().isPresent()));
        }

        private Optional<SpeedGrid> grid(List<Resampled> curves) {
            Optional<CurveSettings.Grid> declared = plan.curve().flatMap(CurveSettings::grid);
            try {
                return declared.isPresent() ? declared.map(CommonGrid::of) : CommonGrid.over(curves);
            } catch (IllegalArgumentException tooFine) {
                return CommonGrid.over(curves);
            }
        }

        private Optional<Read> read(PullSeen seen, LogEntry.PullTaken taken) {
            if (taken.file().isEmpty()) {
                return Optional.empty();
            }
            try {
                Channels channels = PullValues.driven(ReadPull.of(test, content.mappings(), taken).channels(), plan);
                double scale = multiplier(seen) / unit.factor();
                return Resampled.of(channels, quantity, plan.scoredWindow()).flatMap(resampled -> rows(channels, scale)
                        .map(rows -> new Read(new SweptCurve(seen.pull(), seen.pull().install().startsWith("A") ? Part.A : Part.B,
                                seen.fate() == Fate.USED, rows.get(0), rows.get(1)), resampled, scale)));
            } catch (InputException unusable) {
                return Optional.empty();
            }
        }

        private double multiplier(PullSeen seen) {
            OptionalDouble applied = seen.correction().map(one -> one.multiplier()).orElse(OptionalDouble.empty());
            double factor = corrected || seen.correction().isEmpty() ? 1 : seen.correction().get().factor();
            return applied.orElse(1) / factor;
        }

        /** {@return the rows of the sweep with a value, in the order of their speed: the speeds, and the values in the unit} */
        private Optional<List<Samples>> rows(Channels channels, double scale) {
            Samples speed = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
            Optional<Samples> own = channels.find(quantity);
            Optional<Samples> power = channels.find(Quantity.POWER);
            Optional<Samples> torque = channels.find(Quantity.TORQUE);
            Sweep sweep = Sweep.of(channels).orElseThrow();
            List<double[]> rows = new ArrayList<>();
            for (int row = sweep.first(); row <= sweep.last(); row++) {
                double at = speed.at(row);
                double value = own.isPresent() ? own.get().at(row)
                        : quantity == Quantity.POWER ? torque.orElseThrow().at(row) * at : power.orElseThrow().at(row) / at;
                if (Double.isFinite(at) && Double.isFinite(value)) {
                    rows.add(new double[] {at, value * scale});
                }
            }
            rows.sort(Comparator.comparingDouble(row -> row[0]));
            return rows.size() < 2 ? Optional.empty() : Optional.of(IntStream.of(0, 1)
                    .mapToObj(place -> Samples.of(rows.stream().mapToDouble(row -> row[place]).toArray())).toList());
        }
    }
}
