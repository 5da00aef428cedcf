package fairpull.cli;

import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.keeping.SealPlan;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code seal}: fixes the plan before data. */
@Command(name = "seal",
        description = "Fixes the plan before the day. The code it prints is the plan's fingerprint: lodge it with a third party "
                + "before the day, and nobody need take your word that the plan came first.",
        footer = "  fairpull seal pump-test")
final class SealVerb extends Verb {
    @Parameters(paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Option(names = "--again", description = "Seal anew a plan that is sealed already; every finding will say so.")
    private boolean again;

    @Override
    protected void work() throws IOException {
        answer(Receipt.sealed(SealPlan.seal(folder, again, now())));
    }
}
