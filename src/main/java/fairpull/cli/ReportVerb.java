package fairpull.cli;

import fairpull.app.usecase.judging.ReportRequest;
import fairpull.app.usecase.judging.WriteReport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code report}: the finding as a page, on paper, as tables. */
@Command(name = "report",
        description = "Writes the finding of a test: as one self-contained HTML file, as PDF, as tables from which it can be reckoned "
                + "again; several at once if asked.",
        footer = {"  fairpull report pump-test --out pump-test.html",
            "  fairpull report pump-test --pdf pump-test.pdf --csv pump-tables"})
final class ReportVerb extends Verb {
    @Parameters(paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Option(names = {"--out", "--html"}, paramLabel = "FILE", description = "Write it as HTML.")
    private Path out;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write it as PDF.")
    private Path pdf;

    @Option(names = "--csv", paramLabel = "FOLDER",
            description = "Write tables: the pulls as `judge --table` reads them, settings, every curve, the difference curve with its "
                    + "band. A name that ends in .csv takes the table of pulls alone.")
    private Path csv;

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 or letter, for the PDF; a4 if not given.")
    private String paper = "a4";

    @Option(names = "--without-identity", description = "Leave out what identifies customer, car and shop.")
    private boolean withoutIdentity;

    @Override
    protected void work() throws IOException {
        answer(WriteReport.write(folder, new ReportRequest(Optional.ofNullable(out), Optional.ofNullable(pdf), Optional.ofNullable(csv),
                paper, withoutIdentity)));
    }
}
