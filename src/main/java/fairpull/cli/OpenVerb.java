package fairpull.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code open}: the window. */
@Command(name = "open",
        description = "Opens the window on a test, on a publication to be audited, or, the same as no verb at all, on a new test.",
        footer = "  fairpull open pump-test")
final class OpenVerb extends Verb {
    @Parameters(paramLabel = "TEST", arity = "0..1", description = "Folder of a test, or file of a publication.")
    private Path test;

    @Override
    protected void work() throws IOException {
        program().opener().open(Optional.ofNullable(test));
    }

    @Override
    protected int status() {
        return CommandLineProgram.STAYS;
    }
}
