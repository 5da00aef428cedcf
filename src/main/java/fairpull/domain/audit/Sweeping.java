package fairpull.domain.audit;

import fairpull.domain.curve.SpeedRange;
import java.util.Optional;

/**
 * How the curves behind the figures were run and drawn. What is empty was not disclosed.
 *
 * @param smoothing of each figure or curve, in words or as a width of engine speed
 * @param speeds the engine speeds that were run through
 */
public record Sweeping(BeforeAfter<String> smoothing, Optional<SpeedRange> speeds) {
    /** Nothing was disclosed. */
    public static final Sweeping NOT_DISCLOSED = new Sweeping(BeforeAfter.notDisclosed(), Optional.empty());

    /** {@return the same with another smoothing} */
    public Sweeping withSmoothing(BeforeAfter<String> other) {
        return new Sweeping(other, speeds);
    }

    /** {@return the same with other speeds} */
    public Sweeping withSpeeds(Optional<SpeedRange> other) {
        return new Sweeping(smoothing, other);
    }
}
