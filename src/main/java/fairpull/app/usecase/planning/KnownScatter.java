package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.unit.Units;
import fairpull.io.folder.Bounded;
import fairpull.io.json.RigRecordJson;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/** The scatter that whoever audits knows of the rig: typed, or out of a rig record. */
public final class KnownScatter {
    private static final long MOST_BYTES = 4L << 20;
    private static final int DECIMALS = 3;

    private KnownScatter() {
    }

    /**
     * One layer as it is typed.
     *
     * @param option the option, for messages
     * @param deviation such as {@code 0.5%} or {@code 1.2hp}
     * @param degreesOfFreedom behind it; empty where they are not known
     * @return the layer
     * @throws UsageException if it cannot be used
     */
    public static StatedScatter.Layer layer(String option, String deviation, OptionalDouble degreesOfFreedom) {
        try {
            Printed printed = Printed.parse(deviation).filter(typed -> !typed.unit().equals(Units.ONE)).orElseThrow(
                    () -> new UsageException(option, "needs a standard deviation in percent or in the unit of the figures, such as 0.5% or "
                            + "1.2hp, was “" + deviation + "”"));
            return new StatedScatter.Layer(printed, degreesOfFreedom);
        } catch (IllegalArgumentException refused) {
            throw new UsageException(option, refused.getMessage());
        }
    }

    /** {@return typed layers together} */
    public static StatedScatter of(StatedScatter.Layer pull, Optional<StatedScatter.Layer> refit) {
        try {
            return new StatedScatter(pull, refit, Optional.empty());
        } catch (IllegalArgumentException refused) {
            throw new UsageException("--pull-scatter", refused.getMessage());
        }
    }

    /** {@return the scatter of a rig record, each layer that it tells apart with its degrees of freedom, where they tell anything} */
    public static StatedScatter ofRecord(Path file) throws IOException {
        RigRecord record = RigRecordJson.read(Bounded.text(file, MOST_BYTES), file.toString());
        StatedScatter.Layer pulls = record.of(Layer.PULL).map(KnownScatter::layer).orElseThrow(() -> new InputException(
                Place.of(file.toString()), "the record does not tell the scatter of pulls apart", "give a record with repeated pulls"));
        return new StatedScatter(pulls, told(record, Layer.REFIT), told(record, Layer.DAY));
    }

    /** A layer that hardly shows above the one within has next to no degrees of freedom: it is then as good as not known. */
    private static Optional<StatedScatter.Layer> told(RigRecord record, Layer layer) {
        return record.of(layer).filter(known -> known.degreesOfFreedom() >= StatedScatter.Layer.FEWEST).map(KnownScatter::layer);
    }

    private static StatedScatter.Layer layer(LayerScatter scatter) {
        Printed percent = new Printed(Units.PERCENT.fromSi(scatter.share()), DECIMALS, Units.PERCENT);
        return new StatedScatter.Layer(percent, OptionalDouble.of(scatter.degreesOfFreedom()));
    }
}
