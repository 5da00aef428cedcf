package fairpull.report.chart;

import fairpull.domain.pull.PullId;
import java.util.Objects;
import java.util.Optional;

/**
 * What is chosen on a day strip.
 *
 * @param install the label of an install
 * @param pull one of its pulls; empty where the install is chosen as a whole
 */
public record Marked(String install, Optional<PullId> pull) {
    public Marked {
        Objects.requireNonNull(install, "the install that is marked");
        pull.filter(one -> !one.install().equals(install)).ifPresent(other -> {
            throw new IllegalArgumentException(other + " is no pull of " + install);
        });
    }

    /** {@return an install as a whole} */
    public static Marked of(String install) {
        return new Marked(install, Optional.empty());
    }

    /** {@return one pull} */
    public static Marked of(PullId pull) {
        return new Marked(pull.install(), Optional.of(pull));
    }

    /** {@return whether this is that install as a whole} */
    boolean isWhole(String other) {
        return pull.isEmpty() && install.equals(other);
    }
}
