package fairpull.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code open}: the window. */
@Command(name = "open",
        description = "Opens the window on a test, or on a new one; the same as no verb at all.",
        footer = "  fairpull open pump-test")
final class OpenVerb extends Verb {
    @Parameters(paramLabel = "TEST", arity = "0..1", description = "Folder of a test.")
    private Path folder;

    @Override
    protected void work() throws IOException {
        program().opener().open(Optional.ofNullable(folder));
    }

    @Override
    protected int status() {
        return CommandLineProgram.STAYS;
    }
}
