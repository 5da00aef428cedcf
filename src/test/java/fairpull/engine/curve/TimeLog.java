package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** A log at even times, each channel a function of the time. */
final class TimeLog {
    private final Map<Quantity, Samples> channels = new EnumMap<>(Quantity.class);
    private final double[] times;

    TimeLog(double untilS, double stepS) {
        times = IntStream.rangeClosed(0, (int) Math.round(untilS / stepS)).mapToDouble(row -> row * stepS).toArray();
        channels.put(Quantity.TIME, Samples.of(times));
    }

    TimeLog with(Quantity quantity, DoubleUnaryOperator ofTime) {
        channels.put(quantity, Samples.of(times).map(ofTime));
        return this;
    }

    Channels channels() {
        return new Channels(channels);
    }
}
