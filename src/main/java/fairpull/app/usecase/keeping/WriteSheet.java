package fairpull.app.usecase.keeping;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.TargetFile;
import fairpull.app.usecase.UsageException;
import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.finding.Notice;
import fairpull.io.folder.Outputs;
import fairpull.io.folder.TestFolder;
import fairpull.report.chart.PrintedPages;
import fairpull.report.write.PdfPages;
import fairpull.report.write.RunSheet;
import fairpull.report.write.SheetContent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes the run sheet of a test, as HTML or as PDF by the ending of the file's name, or gives its pages to a printer. */
public final class WriteSheet {
    private static final List<String> ENDINGS = List.of(".html", ".htm", ".pdf");

    private WriteSheet() {
    }

    /** Writes the sheet of the test in a folder; returns what was done. */
    public static Answer write(Path folder, Path target, SheetRequest request) throws IOException {
        String name = String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT);
        if (ENDINGS.stream().noneMatch(name::endsWith)) {
            throw new UsageException("--out", target + " ends in neither .html nor .pdf; the ending says which is written");
        }
        TargetFile.check(folder, target, name.endsWith(".pdf") ? "sheet.pdf" : "sheet.html");
        RunSheet sheet = RunSheet.of(content(folder, request), request.options());
        Outputs.write(target, name.endsWith(".pdf") ? sheet.pdf().bytes() : sheet.html().getBytes(StandardCharsets.UTF_8));
        return Receipt.sheet(target, sheet.pdf().pages());
    }

    /** {@return the pages of the sheet of the test in a folder, for a printer} */
    public static PrintedPages pages(Path folder, SheetRequest request) throws IOException {
        return new PdfPages(RunSheet.of(content(folder, request), request.options()).pdf());
    }

    private static SheetContent content(Path folder, SheetRequest request) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        List<Notice> alarms = Integrity.check(test, content).stream()
                .filter(notice -> notice.code().severity() == Notice.Severity.ALARM).toList();
        return new SheetContent(request.starting(content.plan()), content.planSha256(), content.seal(),
                PlannedFields.of(AmendmentSeen.in(content.log())), alarms);
    }
}
