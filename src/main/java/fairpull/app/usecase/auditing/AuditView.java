package fairpull.app.usecase.auditing;

import fairpull.app.usecase.planning.Outlook;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Publication;
import fairpull.report.wording.AuditWords;
import fairpull.report.wording.DifferenceWords;
import fairpull.report.wording.UndisclosedWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * How the claims of a publication stand, in the words of the window.
 *
 * @param answer what the audit answers
 * @param heading how they stand together
 * @param claims how each stands, in their order
 * @param rows figures by name, of the figure that is measured by
 * @param gaps what is not disclosed and could matter most
 */
public record AuditView(AuditAnswer answer, String heading, List<Stand> claims, List<Outlook.Row> rows, List<String> gaps) {
    private static final int MOST_GAPS = 3;

    /**
     * How a claim stands.
     *
     * @param words as it was published
     * @param grade in a word or two
     * @param why with the figures behind it
     */
    public record Stand(String words, String grade, String why) {
    }

    public AuditView {
        claims = List.copyOf(claims);
        rows = List.copyOf(rows);
        gaps = List.copyOf(gaps);
    }

    /** {@return the audit of a publication; the files of its curves lie in a folder} */
    public static AuditView of(Publication publication, Path folder) throws IOException {
        AuditAnswer answer = AuditPublication.audit(publication, folder);
        List<Stand> claims = answer.claims().stream().map(claim -> new Stand(claim.claim().words(),
                AuditWords.grade(claim.graded().grade()), AuditWords.reason(answer, claim))).toList();
        List<String> gaps = UndisclosedWords.all(answer).stream().limit(MOST_GAPS).map(gap -> gap.head() + ": " + gap.text()).toList();
        return new AuditView(answer, AuditWords.heading(answer), claims, rows(answer), gaps);
    }

    private static List<Outlook.Row> rows(AuditAnswer answer) {
        List<Outlook.Row> rows = new ArrayList<>();
        answer.figures().stream().filter(figure -> answer.measured().filter(figure.figure()::equals).isPresent()).forEach(figure -> {
            rows.add(new Outlook.Row("Printed gain", DifferenceWords.gain(figure.figure())));
            rows.add(new Outlook.Row("Unchanged cars that differ as much", AuditWords.chance(figure.chance().ordinary())));
        });
        return rows;
    }
}
