package fairpull.app.usecase.judging;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.Receipt;
import fairpull.domain.finding.Judgement;
import fairpull.io.folder.Outputs;
import fairpull.report.write.HtmlReport;
import fairpull.report.write.HtmlToPdf;
import fairpull.report.write.ReportOptions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

/** Writes the finding of a test: as a page, on paper, as tables. Nothing is written before everything is made. */
public final class WriteReport {
    private final Path folder;
    private final ReportRequest request;
    private final Judgement judgement;
    private final Map<Path, byte[]> files = new LinkedHashMap<>();
    private OptionalInt pages = OptionalInt.empty();

    private WriteReport(Path folder, ReportRequest request) throws IOException {
        this.folder = folder;
        this.request = request;
        this.judgement = JudgeFolder.judge(folder);
    }

    /** Judges the test in a folder and writes what is asked for; returns what was done. */
    public static Answer write(Path folder, ReportRequest request) throws IOException {
        request.check(folder);
        WriteReport report = new WriteReport(folder, request);
        report.make();
        Outputs.write(report.files);
        return Receipt.reported(report.files.keySet().stream().toList(), report.pages, report.judgement);
    }

    private void make() throws IOException {
        ReportOptions options = new ReportOptions(request.withoutIdentity());
        request.html().ifPresent(file -> files.put(file, utf8(HtmlReport.html(judgement, options))));
        request.pdf().ifPresent(file -> {
            HtmlToPdf.Pdf pdf = HtmlReport.pdf(judgement, options, request.size());
            files.put(file, pdf.bytes());
            pages = OptionalInt.of(pdf.pages());
        });
        if (request.csv().isPresent()) {
            Path place = request.csv().get();
            Map<String, String> tables = ReportTables.of(folder, judgement, request.withoutIdentity());
            if (request.isOneTable()) {
                files.put(place, utf8(tables.get(ReportTables.PULLS)));
            } else {
                tables.forEach((name, text) -> files.put(place.resolve(name), utf8(text)));
            }
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
