package fairpull.app.usecase;

import fairpull.domain.finding.Judgement;
import fairpull.io.folder.AtomicWrite;
import fairpull.report.write.HtmlReport;
import fairpull.report.write.ReportOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the finding of a test as one self-contained HTML file. */
public final class WriteReport {
    private WriteReport() {
    }

    /** Judges the test in a folder and writes its report; returns the judgement. */
    public static Judgement write(Path folder, Path target, boolean withoutIdentity) throws IOException {
        TargetFile.check(folder, target, "report.html");
        Judgement judgement = JudgeFolder.judge(folder);
        String html = HtmlReport.html(judgement, new ReportOptions(withoutIdentity));
        Path parent = target.toAbsolutePath().getParent();
        Files.createDirectories(parent);
        AtomicWrite.text(target, html);
        return judgement;
    }
}
