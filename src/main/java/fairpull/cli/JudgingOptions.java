package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import java.util.Locale;
import picocli.CommandLine.Option;

/** How a test is judged: options that planning and judging share. */
final class JudgingOptions {
    @Option(names = "--alpha", defaultValue = "0.05", paramLabel = "P",
            description = "Error rate: how often a change may be announced where there is none; default ${DEFAULT-VALUE}.")
    private String errorRate;

    @Option(names = "--sides", defaultValue = "two", paramLabel = "two|one",
            description = "Look for a change either way, or only for a gain; default ${DEFAULT-VALUE}.")
    private String sides;

    @Option(names = "--drift", defaultValue = "none", paramLabel = "none|linear|quadratic",
            description = "How what changes with the clock is modelled; default ${DEFAULT-VALUE}.")
    private String drift;

    double errorRate() {
        return Numbers.share("--alpha", errorRate, 0.5);
    }

    Sides sides() {
        return constant("--sides", sides, Sides.values());
    }

    Drift drift() {
        return constant("--drift", drift, Drift.values());
    }

    /** {@return the constant that a word names, in lower case with hyphens} */
    static <E extends Enum<E>> E constant(String option, String word, E[] constants) {
        StringBuilder known = new StringBuilder();
        for (E constant : constants) {
            String name = constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
            if (name.equals(word.strip().toLowerCase(Locale.ROOT))) {
                return constant;
            }
            known.append(known.isEmpty() ? "" : ", ").append(name);
        }
        throw new UsageException(option, "expected one of " + known + "; found “" + word + "”");
    }
}
