package fairpull.app.usecase;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.engine.planning.Sizing;
import fairpull.io.json.CurveJson;
import fairpull.io.json.FindingJson;
import fairpull.io.json.ProofJson;
import fairpull.io.json.SizeJson;
import fairpull.io.json.SoakJson;
import fairpull.report.wording.HeatNoticeWords;
import fairpull.report.wording.LookWords;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.ProofWords;
import fairpull.report.wording.Subject;
import fairpull.report.write.TextFinding;
import fairpull.report.write.TextPlan;
import fairpull.report.write.TextSoak;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a verb answers, for people and for programs.
 *
 * @param text for people
 * @param json one JSON document, ending in a line feed
 */
public record Answer(String text, String json) {
    /** Control characters of strangers would steer a terminal. */
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cntrl}&&[^\n\t]]");

    /** {@return a text as it leaves the program: without control characters, its last line ended} */
    public static String printed(String text) {
        String safe = UNPRINTABLE.matcher(text).replaceAll("\uFFFD");
        return safe.endsWith("\n") ? safe : safe + "\n";
    }

    /** {@return the answer for a table of pulls} */
    public static Answer of(Finding finding) {
        return new Answer(TextFinding.text(finding, Subject.of("the value")), FindingJson.document(finding, sentences(finding.notices(),
                finding)));
    }

    /** {@return the answer for a table of curves} */
    public static Answer of(CurveFinding curve) {
        return new Answer(TextFinding.text(curve), CurveJson.document(curve, List.of()));
    }

    /** {@return the answer for a test} */
    public static Answer of(Judgement judgement) {
        List<Notice> all = Stream.concat(judgement.notices().stream(), judgement.deciding().notices().stream()).toList();
        return new Answer(TextFinding.text(judgement), FindingJson.document(judgement, sentences(all, judgement.deciding())));
    }

    /** {@return the answer of a sizing} */
    public static Answer of(SizeQuestion question, SizeAnswer answer, String unit) {
        return new Answer(TextPlan.size(question, answer, Sizing.clock(question), unit),
                SizeJson.document(answer, LookWords.warnings(answer, Surface.COMMAND_LINE)));
    }

    /** {@return the answer about heat} */
    public static Answer of(SoakAnswer answer) {
        List<String> sentences = answer.notices().stream().map(HeatNoticeWords::sentence).toList();
        return new Answer(TextSoak.text(answer), SoakJson.document(answer, sentences));
    }

    /** {@return the answer of a proof} */
    public static Answer of(ProofQuestion question, ProofAnswer answer, String order, String unit) {
        return new Answer(TextPlan.proof(question, answer, order, unit),
                ProofJson.document(question, answer, ProofWords.warnings(question, answer)));
    }

    private static List<String> sentences(List<Notice> notices, Finding finding) {
        return notices.stream().map(notice -> NoticeWords.sentence(notice, finding.unit())).toList();
    }
}
