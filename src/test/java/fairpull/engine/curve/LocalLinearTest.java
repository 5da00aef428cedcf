package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Curves on a grid: the fits of lm in R, and what must hold whatever the data. */
class LocalLinearTest {
    private static final double[][] PULL = pull();

    @ParameterizedTest
    @CsvFileSource(resources = "/computed/local-linear-r/fits.csv", numLinesToSkip = 1)
    void agreesWithLm(double bandwidth, double at, double fit) {
        assertThat(new LocalLinear(PULL[0], PULL[1], bandwidth).at(at)).isCloseTo(fit, within(1e-9 * fit));
    }

    @Test
    void aStraightLineStaysAndNothingIsExtrapolated() {
        double[] speeds = IntStream.range(0, 40).mapToDouble(i -> 200 + i * i / 7.0).toArray();
        double[] values = IntStream.range(0, 40).mapToDouble(i -> 1e6 + 3 * speeds[i]).toArray();
        LocalLinear fit = new LocalLinear(speeds, values, 12);

        assertThat(fit.at(207.3)).isCloseTo(1e6 + 3 * 207.3, within(1e-7));
        assertThat(fit.at(speeds[39])).isCloseTo(values[39], within(1e-7));
        assertThat(fit.at(speeds[0] - 1e-9)).isNaN();
        assertThat(fit.at(speeds[39] + 1e-9)).isNaN();
        assertThat(fit.isInterpolated(207.3)).isFalse();
        assertThat(fit.isInterpolated(speeds[39] - 8)).isTrue();
    }

    @Test
    void theGridCoversWhatAllPullsCoverAtRoundSpeeds() {
        Resampled one = ramp(2013, 6490);
        Resampled other = ramp(2190, 6900);

        SpeedGrid grid = CommonGrid.over(List.of(one, other)).orElseThrow();

        assertThat(Units.RPM.fromSi(grid.firstRadPerS())).isCloseTo(2200, within(1e-9));
        assertThat(Units.RPM.fromSi(grid.lastRadPerS())).isCloseTo(6450, within(1e-9));
        assertThat(grid.size()).isEqualTo(86);
        assertThat(one.on(grid, Units.RPM.toSi(100)).stream().allMatch(Double::isFinite)).isTrue();
        assertThat(CommonGrid.over(List.of(ramp(2000, 3000), ramp(3100, 4000)))).isEmpty();
    }

    @Test
    void aDeclaredGridLeavesGapsWhereAPullIsShort() {
        SpeedGrid grid = CommonGrid.of(new CurveSettings.Grid(Units.RPM.toSi(2000), Units.RPM.toSi(2500), Units.RPM.toSi(100)));
        Samples values = ramp(2150, 2420).on(grid, Units.RPM.toSi(100));

        assertThat(grid.size()).isEqualTo(6);
        assertThat(values.stream().filter(Double::isNaN).count()).isEqualTo(3);
        assertThat(values.at(2)).isCloseTo(220, within(1e-9));
    }

    @Test
    void measuresAreReadFromTheSmoothedCurveOnlyWhereABandwidthIsDeclared() {
        Channels pull = new Channels(Map.of(Quantity.ENGINE_SPEED, Samples.of(PULL[0]), Quantity.POWER, Samples.of(PULL[1])));
        LocalLinear fit = new LocalLinear(PULL[0], PULL[1], 20);
        Definition at = new Definition.AtSpeed(Quantity.POWER, 412.3);
        Definition peak = new Definition.Peak(Quantity.POWER);

        assertThat(value(MeasureValue.of(pull, at, smoothed(20)))).isEqualTo(fit.at(412.3));
        assertThat(value(MeasureValue.of(pull, at, Optional.empty()))).isEqualTo(value(MeasureValue.of(pull, at)));
        assertThat(value(MeasureValue.of(pull, peak, smoothed(20)))).isLessThan(value(MeasureValue.of(pull, peak)));
    }

    private static double value(Outcome outcome) {
        return outcome.match(Outcome.Value::si, missing -> Double.NaN);
    }

    /** A pull of 1 unit every 10 rpm. */
    private static Resampled ramp(double fromRpm, double toRpm) {
        double[] rpm = IntStream.rangeClosed(0, 500).mapToDouble(i -> fromRpm + i * (toRpm - fromRpm) / 500).toArray();
        return Resampled.ofPoints(IntStream.range(0, rpm.length).mapToDouble(i -> Units.RPM.toSi(rpm[i])).toArray(),
                IntStream.range(0, rpm.length).mapToDouble(i -> rpm[i] / 10).toArray()).orElseThrow();
    }

    private static double[][] pull() {
        try {
            List<String> lines = Files.readAllLines(Path.of("src/test/resources/computed/local-linear-r/pull.csv"));
            double[][] pull = new double[2][lines.size() - 1];
            for (int i = 1; i < lines.size(); i++) {
                String[] cells = lines.get(i).split(",");
                pull[0][i - 1] = Double.parseDouble(cells[0]);
                pull[1][i - 1] = Double.parseDouble(cells[1]);
            }
            return pull;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Optional<CurveSettings> smoothed(double bandwidthRadPerS) {
        return Optional.of(new CurveSettings(OptionalDouble.of(bandwidthRadPerS), Optional.empty(), Optional.empty()));
    }
}
