package fairpull.engine.curve;

import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.ScoredWindow;
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
 * <p>Values over engine speed come from the {@link Sweep} alone, and of that only what is scored; the peak of a pull without engine speed
 * comes from all of its rows. Power is torque × engine speed where the pull has no power, torque is power ÷ engine speed where it has no
 * torque (definition of power, all in SI).
 */
public final class MeasureValue {
    private MeasureValue() {
    }

    /** Computes a measure: the whole sweep is scored, curves are taken as recorded. */
    public static Outcome of(Channels channels, Definition definition) {
        return of(channels, definition, Optional.empty());
    }

    /**
     * Computes a measure.
     *
     * @param channels the channels of the pull in SI, rows in the order in which they were recorded
     * @param definition what is asked for
     * @param settings what is dropped at the ends of the sweep and to which bandwidth values over engine speed are brought; measures of
     *     time are not touched by it
     * @return the value in SI, or why there is none
     */
    public static Outcome of(Channels channels, Definition definition, Optional<CurveSettings> settings) {
        Optional<ScoredWindow> window = settings.flatMap(CurveSettings::scored);
        OptionalDouble bandwidthRadPerS = settings.map(CurveSettings::bandwidthRadPerS).orElseGet(OptionalDouble::empty);
        return definition.match(new Definition.Cases<>() {
            @Override
            public Outcome meanOverBand(Definition.MeanOverBand band) {
                return onCurve(channels, window, band.quantity(), curve -> meanOver(
                        brought(curve, bandwidthRadPerS, band.lowRadPerS(), band.highRadPerS()), band));
            }

            @Override
            public Outcome peak(Definition.Peak peak) {
                return channels.find(Quantity.ENGINE_SPEED).isPresent()
                        ? onCurve(channels, window, peak.quantity(),
                                curve -> Outcome.value(brought(curve, bandwidthRadPerS).peak()))
                        : peakOfAll(channels, peak.quantity());
            }

            @Override
            public Outcome atSpeed(Definition.AtSpeed at) {
                return onCurve(channels, window, at.quantity(), curve -> valueAt(brought(curve, bandwidthRadPerS, at.speedRadPerS()),
                        at.speedRadPerS()));
            }

            @Override
            public Outcome elapsed(Definition.Elapsed elapsed) {
                return ElapsedTime.between(channels, elapsed);
            }

            @Override
            public Outcome response(Definition.Response response) {
                return ResponseTime.of(channels.known(Quantity.FRACTION), response);
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

    private static Outcome onCurve(Channels channels, Optional<ScoredWindow> window, Quantity quantity,
            Function<SpeedCurve, Outcome> measure) {
        if (channels.find(Quantity.ENGINE_SPEED).isEmpty()) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.ENGINE_SPEED);
        }
        if (!SpeedCurve.canHold(channels, quantity)) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, quantity);
        }
        if (window.isPresent() && window.get().needsTime() && channels.find(Quantity.TIME).isEmpty()) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.TIME);
        }
        Optional<Sweep> sweep = Sweep.of(channels);
        if (sweep.isEmpty()) {
            return Outcome.missing(Reason.NO_SWEEP, Quantity.ENGINE_SPEED);
        }
        Optional<Sweep> scored = window.isEmpty() ? sweep : sweep.get().scored(channels, window.get());
        return scored.flatMap(rows -> SpeedCurve.of(channels, quantity, rows)).map(measure)
                .orElseGet(() -> Outcome.missing(window.isEmpty() ? Reason.NO_SWEEP : Reason.NOTHING_SCORED, Quantity.ENGINE_SPEED));
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
