package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.AuditCheck.State;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.GradedClaim.Reason;
import fairpull.io.json.PublicationJson;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values published one by one against the figures printed of them, and values that do not scatter; invented throughout. */
class ValuesQuestionsTest {
    private static final double HP = 745.69987;

    /** 199.6 to 200.2 average 200.0 hp, 203.8 to 204.2 average 204.0 hp. */
    @ParameterizedTest
    @CsvSource({"200.0 hp, 204.0 hp, '', CLEAR", "200 hp, 204 hp, '', CLEAR", "200.1 hp, 204.0 hp, '', CLEAR", "200.0 hp, 260.0 hp, '', RAISED",
        "200.2 hp, 204.0 hp, '', RAISED", "200.2 hp, 204.2 hp, best, CLEAR", "200.0 hp, 204.0 hp, best, RAISED",
        "190.0 hp, 204.0 hp, single, NOT_APPLICABLE"})
    void aFigureIsWhatItsValuesComeTo(String before, String after, String quoted, State state) {
        AuditAnswer answer = audit(before, after, "\"199.6 hp\", \"200.2 hp\", \"200.2 hp\"", "\"203.8 hp\", \"204.2 hp\", \"204.0 hp\"",
                "no", quoted);

        assertThat(ask(Code.VALUES_AGAINST_FIGURES, answer).state()).isEqualTo(state);
        assertThat(answer.claims().get(0).graded().reason() == Reason.FIGURES_DISAGREE).isEqualTo(state == State.RAISED);
    }

    @Test
    void whatIsPrintedAndWhatTheValuesComeToIsFound() {
        AuditCheck raised = ask(Code.VALUES_AGAINST_FIGURES, audit("200.0 hp", "260.0 hp", "\"199.9 hp\", \"200.1 hp\"",
                "\"204.0 hp\", \"204.2 hp\"", "no", ""));

        assertThat(raised.found()).singleElement().satisfies(found -> {
            assertThat(found.side()).isEqualTo(Side.AFTER);
            assertThat(found.si(FoundFigure.PRINTED)).isCloseTo(260 * HP, within(0.1));
            assertThat(found.si(FoundFigure.OF_VALUES)).isCloseTo(204.1 * HP, within(0.1));
            assertThat(found.si(FoundFigure.ALLOWED)).as("half a tenth each").isCloseTo(0.1 * HP, within(0.01));
        });
    }

    /** Differences of 4 hp to the last digit, but for what is lost in reckoning, and constant values on either side. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"\"199.9 hp\", \"200.1 hp\" | \"203.9 hp\", \"204.1 hp\" | yes",
        "\"200.0 hp\", \"200.0 hp\" | \"204.0 hp\", \"204.0 hp\" | no"})
    void valuesThatDoNotScatterAreNotTested(String before, String after, String paired) {
        AuditAnswer answer = audit("200.0 hp", "204.0 hp", before, after, paired, "");

        assertThat(ask(Code.VALUES_DO_NOT_SCATTER, answer).found()).singleElement()
                .satisfies(found -> assertThat(found.si(FoundFigure.DIFFERENCE)).isCloseTo(4 * HP, within(1e-4)));
        assertThat(answer.figures().get(0).test()).isEmpty();
        assertThat(answer.claims().get(0).graded().reason()).isEqualTo(Reason.SCATTER_UNKNOWN);
        assertThat(ask(Code.VALUES_DO_NOT_SCATTER, audit("200.0 hp", "204.0 hp", "\"199.9 hp\", \"200.1 hp\"",
                "\"203.9 hp\", \"204.2 hp\"", "yes", "")).state()).isEqualTo(State.CLEAR);
    }

    private static AuditCheck ask(Code code, AuditAnswer answer) {
        return answer.checks().stream().filter(check -> check.code() == code).findFirst().orElseThrow();
    }

    private static AuditAnswer audit(String before, String after, String valuesBefore, String valuesAfter, String paired, String quoted) {
        return audit(before, after, ", \"values\": {\"before\": [%s], \"after\": [%s], \"paired\": \"%s\", \"each\": \"install\"}"
                .formatted(valuesBefore, valuesAfter, paired), quoted);
    }

    private static AuditAnswer audit(String before, String after, String values, String quoted) {
        String pulls = quoted.equals("best") ? "3" : "";
        return Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "%s", "after": "%s"%s}],
                 "procedure": {"quotedBefore": "%s", "quotedAfter": "%s", "pullsBefore": "%s", "pullsAfter": "%s"},
                 "claims": [{"words": "more", "figure": "f"}]}""".formatted(before, after, values, quoted, quoted, pulls, pulls),
                "invented"), List.of());
    }
}
