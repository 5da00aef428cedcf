package fairpull.cli;

import fairpull.domain.pull.DecimalMark;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The decimal mark of a file that does not tell its own. */
final class DecimalOption {
    @Option(names = "--decimal", paramLabel = "point|comma",
            description = "The decimal mark, where the file does not tell: 1,234 is one thousand or one and a bit.")
    private String decimal;

    Optional<DecimalMark> mark() {
        return Optional.ofNullable(decimal).map(word -> JudgingOptions.constant("--decimal", word, DecimalMark.values()));
    }
}
