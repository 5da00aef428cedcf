package fairpull.cli;

import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.WriteReport;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code report}: the finding as a page. */
@Command(name = "report",
        description = "Writes the finding of a test as one self-contained HTML file.",
        footer = "  fairpull report pump-test --out pump-test.html")
final class ReportVerb extends Verb {
    @Parameters(paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Where to write it.")
    private Path out;

    @Option(names = "--without-identity", description = "Leave out what identifies customer, car and shop.")
    private boolean withoutIdentity;

    @Override
    protected void work() throws IOException {
        answer(Receipt.written(out, WriteReport.write(folder, out, withoutIdentity)));
    }
}
