package fairpull.cli;

import fairpull.app.usecase.keeping.SheetRequest;
import fairpull.app.usecase.keeping.WriteSheet;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sheet}: the run sheet for the day. */
@Command(name = "sheet",
        description = "Writes the run sheet of a test, for a clipboard: clock, pulls with boxes to tick and fields to fill, gates with "
                + "their limits, checklist, cautions, seal code. The ending of FILE says whether HTML or PDF is written.",
        footer = "  fairpull sheet pump-test --out pump-sheet.pdf --date 2026-05-09 --start 9:00")
final class SheetVerb extends Verb {
    @Parameters(paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Where to write it: .html or .pdf.")
    private Path out;

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 or letter; a4 if not given.")
    private String paper = "a4";

    @Option(names = "--units", paramLabel = "UNITS", description = "metric or us, for temperatures and pressures; metric if not given.")
    private String units = "metric";

    @Option(names = "--date", paramLabel = "DAY",
            description = "Day of the first session, such as 2026-05-09; a field to fill if not given.")
    private String date = "";

    @Option(names = "--start", paramLabel = "TIME",
            description = "When the set-up begins, such as 9:00, if not as planned; where neither is known the clock counts from there.")
    private String start = "";

    @Override
    protected void work() throws IOException {
        answer(WriteSheet.write(folder, out, new SheetRequest(paper, units, date, start)));
    }
}
