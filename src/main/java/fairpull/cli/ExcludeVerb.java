package fairpull.cli;

import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.pulls.ExcludePull;
import fairpull.domain.pull.PullId;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code exclude}: leaves a pull out. */
@Command(name = "exclude",
        description = "Leaves a pull out of the judgement, with the reason. It stays on file, and every finding shows it and "
                + "the result with it.",
        footer = "  fairpull exclude pump-test B2-4 --because \"coolant gate broken\"")
final class ExcludeVerb extends Verb {
    @Parameters(index = "0", paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "PULL", description = "The pull, such as B2-4.")
    private String pull;

    @Option(names = "--because", required = true, paramLabel = "WHY", description = "The reason.")
    private String because;

    @Option(names = "--readmit", description = "Take an exclusion back.")
    private boolean readmit;

    @Override
    protected void work() throws IOException {
        if (because.isBlank()) {
            throw new UsageException("--because", "needs a reason");
        }
        PullId named = PullId.parse(pull).orElseThrow(() -> new UsageException("PULL", "expected a pull such as B2-4, found “" + pull
                + "”"));
        if (readmit) {
            ExcludePull.readmit(folder, List.of(named), because, now());
        } else {
            ExcludePull.exclude(folder, List.of(named), because, now());
        }
        answer(Receipt.counted(named, readmit));
    }
}
