package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The ratio of engine speed to the speed of roller or car, in rad/m: constant while neither tyre, clutch nor converter slips and the gear
 * stays.
 *
 * <p>It is read as medians of up to {@value #BLOCKS} blocks of rows, so that coarse readings do not pass for slip. A gear change is a step
 * of {@value #GEAR_STEP} or more between a block and the next but one; neighbouring gears are further apart (common practice, no source).
 * For that, rows after the sweep are read as well: a change of gear makes engine speed fall, which ends the sweep.
 *
 * @param radPerM the median over the sweep
 * @param spread largest less smallest block over the sweep, relative to the median
 * @param gearChanged whether the ratio steps
 */
record SpeedRatio(double radPerM, double spread, boolean gearChanged) {
    static final int BLOCKS = 12;
    static final double GEAR_STEP = 0.1;
    private static final int FEWEST_BLOCKS = 3;
    private static final int ROWS_A_BLOCK = 3;

    /** {@return the ratio over a sweep; empty if the pull lacks the speed of roller or car, or has too few rows of it} */
    static Optional<SpeedRatio> of(Channels channels, Sweep sweep) {
        if (channels.find(Quantity.SPEED).isEmpty()) {
            return Optional.empty();
        }
        double[] within = blocks(channels, sweep);
        if (within.length < FEWEST_BLOCKS) {
            return Optional.empty();
        }
        double[] sorted = within.clone();
        Arrays.sort(sorted);
        double middle = median(sorted);
        return Optional.of(new SpeedRatio(middle, (sorted[sorted.length - 1] - sorted[0]) / middle,
                steps(within) || steps(blocks(channels, toEndOfRun(channels, sweep)))));
    }

    /** The sweep and what follows it until the throttle closes; where that is not known, until roller or car no longer gain speed. */
    private static Sweep toEndOfRun(Channels channels, Sweep sweep) {
        Optional<Samples> opening = channels.find(Quantity.FRACTION);
        Samples speed = channels.find(Quantity.SPEED).orElseThrow();
        int last = opening.isPresent()
                ? Throttle.of(opening.get()).stretches().stream().filter(open -> open.first() <= sweep.first())
                        .filter(open -> open.last() >= sweep.last()).mapToInt(Sweep::last).findFirst().orElse(sweep.last())
                : new Rises(speed, Sweeps.REVERSAL_SHARE).between(sweep.first(), speed.size() - 1).stream()
                        .filter(rise -> rise.first() <= sweep.last()).mapToInt(Sweep::last).max().orElse(sweep.last());
        return new Sweep(sweep.first(), Math.max(last, sweep.last()));
    }

    private static double[] blocks(Channels channels, Sweep rows) {
        Samples engine = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
        Samples speed = channels.find(Quantity.SPEED).orElseThrow();
        double[] ratios = IntStream.rangeClosed(rows.first(), rows.last()).filter(row -> speed.at(row) > 0)
                .mapToDouble(row -> engine.at(row) / speed.at(row)).filter(ratio -> Double.isFinite(ratio) && ratio > 0).toArray();
        int blocks = Math.min(BLOCKS, ratios.length / ROWS_A_BLOCK);
        return IntStream.range(0, blocks).mapToDouble(block -> {
            double[] part = Arrays.copyOfRange(ratios, block * ratios.length / blocks, (block + 1) * ratios.length / blocks);
            Arrays.sort(part);
            return median(part);
        }).toArray();
    }

    private static boolean steps(double[] blocks) {
        return IntStream.range(2, blocks.length).anyMatch(i -> Math.abs(blocks[i] / blocks[i - 2] - 1) >= GEAR_STEP);
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
