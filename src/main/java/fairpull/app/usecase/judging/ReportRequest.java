package fairpull.app.usecase.judging;

import fairpull.app.usecase.TargetFile;
import fairpull.app.usecase.UsageException;
import fairpull.report.write.Paper;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a report is asked to be, as typed.
 *
 * @param html the page to write
 * @param pdf the same on paper
 * @param csv a folder for all tables, or a file that ends in {@code .csv} for the table of pulls alone
 * @param paper {@code a4} or {@code letter}
 * @param withoutIdentity whether to leave out what identifies customer, car and shop
 */
public record ReportRequest(Optional<Path> html, Optional<Path> pdf, Optional<Path> csv, String paper, boolean withoutIdentity) {
    private static final String TABLE = ".csv";

    /** Refuses what cannot be written, before anything is. */
    void check(Path test) {
        if (html.isEmpty() && pdf.isEmpty() && csv.isEmpty()) {
            throw new UsageException("--out", "is missing; say where to write: --out FILE.html, --pdf FILE.pdf or --csv FOLDER");
        }
        size();
        html.ifPresent(file -> TargetFile.check(test, "--out", file, "report.html"));
        pdf.ifPresent(file -> TargetFile.check(test, "--pdf", file, "report.pdf"));
        csv.ifPresent(place -> {
            if (isOneTable()) {
                TargetFile.check(test, "--csv", place, "pulls.csv");
            } else {
                TargetFile.checkFolder(test, "--csv", place);
            }
        });
    }

    /** {@return whether the table of pulls alone is wanted} */
    boolean isOneTable() {
        return csv.map(place -> String.valueOf(place.getFileName()).toLowerCase(Locale.ROOT).endsWith(TABLE)).orElse(false);
    }

    Paper size() {
        return Arrays.stream(Paper.values()).filter(one -> one.name().equalsIgnoreCase(paper)).findFirst()
                .orElseThrow(() -> new UsageException("--paper", "expected " + Arrays.stream(Paper.values())
                        .map(one -> one.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(" or ")) + "; found “" + paper + "”"));
    }
}
