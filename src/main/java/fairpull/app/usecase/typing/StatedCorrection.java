package fairpull.app.usecase.typing;

import fairpull.domain.plan.Correction;
import java.util.Optional;

/**
 * What was said at import of how values are corrected. “Not known” is something that can be said; saying nothing leaves what is
 * remembered for the header.
 *
 * @param stated whether anything was said
 * @param standard the standard; empty where it is not known or nothing was said
 */
public record StatedCorrection(boolean stated, Optional<Correction> standard) {

    /** {@return nothing was said} */
    public static StatedCorrection nothing() {
        return new StatedCorrection(false, Optional.empty());
    }

    /** {@return it was said that it is not known} */
    public static StatedCorrection unknown() {
        return new StatedCorrection(true, Optional.empty());
    }

    /** {@return a standard was named} */
    public static StatedCorrection of(Correction standard) {
        return new StatedCorrection(true, Optional.of(standard));
    }

    /** {@return what holds, given what is remembered} */
    public Optional<Correction> over(Optional<Correction> remembered) {
        return stated ? standard : remembered;
    }
}
