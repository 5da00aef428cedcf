package fairpull.engine.curve;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.Outcome.Reason;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The value of a measure in one pull.
 *
 * <p>Values over engine speed come from the {@link Sweep} alone; the peak of a pull without engine speed comes from all of its rows.
 * Power is torque × engine speed where the pull has no power, torque is power ÷ engine speed where it has no torque (definition of
 * power, all in SI).
 */
public final class MeasureValue {
    private MeasureValue() {
    }

    /** {@return the value of a measure in SI, curves taken as recorded, or why there is none} */
    public static Outcome of(Channels channels, Definition definition) {
        return of(channels, definition, OptionalDouble.empty());
    }

    /**
     * Computes a measure.
     *
     * @param channels the channels of the pull in SI, rows in the order in which they were recorded
     * @param definition what is asked for
     * @param bandwidthRadPerS how far the window of the local linear fits reaches to which values over engine speed are brought first;
     *     empty where they are taken as recorded
     * @return the value in SI, or why there is none
     */
    public static Outcome of(Channels channels, Definition definition, OptionalDouble bandwidthRadPerS) {
        return definition.match(new Definition.Cases<>() {
            @Override
            public Outcome meanOverBand(Definition.MeanOverBand band) {
                return onCurve(channels, band.quantity(), curve -> meanOver(
                        brought(curve, bandwidthRadPerS, band.lowRadPerS(), band.highRadPerS()), band));
            }

            @Override
            public Outcome peak(Definition.Peak peak) {
                return channels.find(Quantity.ENGINE_SPEED).isPresent()
                        ? onCurve(channels, peak.quantity(), curve -> Outcome.value(brought(curve, bandwidthRadPerS).peak()))
                        : peakOfAll(channels, peak.quantity());
            }

            @Override
            public Outcome atSpeed(Definition.AtSpeed at) {
                return onCurve(channels, at.quantity(), curve -> valueAt(brought(curve, bandwidthRadPerS, at.speedRadPerS()),
                        at.speedRadPerS()));
            }

            @Override
            public Outcome elapsed(Definition.Elapsed elapsed) {
                return ElapsedTime.between(channels, elapsed);
            }

            @Override
            public Outcome typed(Definition.Typed typed) {
                return Outcome.missing(Reason.TYPED_BY_HAND, typed.quantity());
            }
        });
    }

    private static SpeedCurve brought(SpeedCurve curve, OptionalDouble bandwidthRadPerS, double... readAt) {
        return bandwidthRadPerS.isPresent() ? curve.smoothed(bandwidthRadPerS.getAsDouble(), readAt) : curve;
    }

    private static Outcome onCurve(Channels channels, Quantity quantity, Function<SpeedCurve, Outcome> measure) {
        if (channels.find(Quantity.ENGINE_SPEED).isEmpty()) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.ENGINE_SPEED);
        }
        if (!SpeedCurve.canHold(channels, quantity)) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, quantity);
        }
        Optional<SpeedCurve> curve = Sweep.of(channels).flatMap(sweep -> SpeedCurve.of(channels, quantity, sweep));
        return curve.map(measure).orElseGet(() -> Outcome.missing(Reason.NO_SWEEP, Quantity.ENGINE_SPEED));
    }

    private static Outcome peakOfAll(Channels channels, Quantity quantity) {
        OptionalDouble largest = channels.find(quantity).stream().flatMapToDouble(Samples::stream).filter(Double::isFinite).max();
        return largest.isPresent() ? Outcome.value(largest.getAsDouble()) : Outcome.missing(Reason.CHANNEL_ABSENT, quantity);
    }

    private static Outcome meanOver(SpeedCurve curve, Definition.MeanOverBand band) {
        return curve.covers(band.lowRadPerS()) && curve.covers(band.highRadPerS())
                ? Outcome.value(curve.mean(band.lowRadPerS(), band.highRadPerS()))
                : Outcome.missing(Reason.BAND_NOT_COVERED, Quantity.ENGINE_SPEED, curve.lowestRadPerS(), curve.highestRadPerS());
    }

    private static Outcome valueAt(SpeedCurve curve, double speedRadPerS) {
        return curve.covers(speedRadPerS)
                ? Outcome.value(curve.at(speedRadPerS))
                : Outcome.missing(Reason.SPEED_NOT_COVERED, Quantity.ENGINE_SPEED, curve.lowestRadPerS(), curve.highestRadPerS());
    }
}
