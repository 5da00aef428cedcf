package fairpull.cli;

import fairpull.app.usecase.keeping.CheckPlan;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code check}: what a plan says and can see, and whether everything is as the log says. */
@Command(name = "check",
        description = "Reads a test and says what its plan can see, what a fair test would have that it lacks, and whether plan, "
                + "seal, log and exports are as the log says they were.",
        footer = "  fairpull check pump-test")
final class CheckVerb extends Verb {
    @Parameters(paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Override
    protected void work() throws IOException {
        answer(CheckPlan.check(folder));
    }
}
