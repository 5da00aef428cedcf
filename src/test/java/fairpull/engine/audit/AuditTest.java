package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.GradedClaim.Reason;
import fairpull.io.json.PublicationJson;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How single publications are graded, each of them sound but for one thing. All of them are invented. */
class AuditTest {
    private static final double HP = 745.69987;
    private static final String SOUND = """
            "quotedBefore": "mean", "pullsBefore": "5", "quotedAfter": "mean", "pullsAfter": "5", "rig": "same", "strapDown": "same",
            "day": "same", "allElse": "same", "order": "%s", "namedBefore": "yes", "correctionBefore": "%s", "correctionAfter": "%s",
            "barometerBefore": "station", "barometerAfter": "station" %s""";

    private static String sound(String order, String correction, String more) {
        return SOUND.formatted(order, correction, correction, more);
    }

    private static AuditAnswer audit(String figure, String gain, String procedure) {
        return Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", %s}], "procedure": {%s},
                 "claims": [{"words": "more", "figure": "f", "gain": "%s"}]}""".formatted(figure, procedure, gain), "invented"), List.of());
    }

    private static GradedClaim graded(String figure, String gain, String procedure) {
        return audit(figure, gain, procedure).claims().get(0).graded();
    }

    private static String pair(String before, String after) {
        return "\"before\": \"%s\", \"after\": \"%s\"".formatted(before, after);
    }

    private static String values(String each, String... sides) {
        return ", \"values\": {\"before\": [%s], \"after\": [%s], \"paired\": \"no\", \"each\": \"%s\"}".formatted(sides[0], sides[1], each);
    }

    @Test
    void pullsOfOneInstallDoNotStandForStrapDowns() {
        String before = "\"200.1 hp\", \"199.9 hp\", \"200.3 hp\", \"199.7 hp\", \"200.0 hp\"";
        String after = "\"204.1 hp\", \"203.9 hp\", \"204.3 hp\", \"203.7 hp\", \"204.0 hp\"";
        String figure = pair("200.0 hp", "204.0 hp");
        String procedure = sound("ABA", "sae-j1349", "");

        assertThat(graded(figure + values("install", before, after), "", procedure).grade()).isEqualTo(Grade.SHOWN);
        assertThat(graded(figure + values("pull", before, after), "", procedure).reason())
                .isEqualTo(Reason.HANGS_ON_WHAT_IS_NOT_DISCLOSED);
        assertThat(graded(figure + values("not disclosed", before, after), "", procedure).reason())
                .isEqualTo(Reason.WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED);
    }

    @Test
    void valuesOneByOneArePassedOverByNothingThatBarsAnyOtherFigure() {
        String before = "\"200.1 hp\", \"199.9 hp\", \"200.3 hp\"";
        String after = "\"214.1 hp\", \"213.9 hp\", \"214.3 hp\"";
        String figure = pair("200.1 hp", "214.1 hp") + values("install", before, after);
        String procedure = sound("ABA", "sae-j1349", "");

        assertThat(graded(figure, "", procedure).reason()).isEqualTo(Reason.STANDS_AT_THE_WORST);
        assertThat(graded(figure, "", procedure.replace("\"rig\": \"same\"", "\"rig\": \"different\"")
                .replace("\"strapDown\": \"same\"", "\"strapDown\": \"different\"")).reason())
                .isEqualTo(Reason.RIGS_DIFFER);
        assertThat(graded(figure, "", procedure.replace("\"allElse\": \"same\"", "\"alsoChanged\": \"tyres\"")).reason())
                .isEqualTo(Reason.OTHER_CHANGES);
        assertThat(graded(figure, "", sound("AB", "sae-j1349", "")).reason()).isEqualTo(Reason.NO_RETURN);
    }

    @Test
    void valuesThatDoNotScatterAreNotTested() {
        String figure = pair("200.0 hp", "204.0 hp") + values("install", "\"200 hp\", \"200 hp\"", "\"204 hp\", \"204 hp\"");
        AuditAnswer answer = audit(figure, "", sound("ABA", "sae-j1349", ""));

        assertThat(answer.figures().get(0).test()).isEmpty();
        assertThat(answer.claims().get(0).graded().reason()).isEqualTo(Reason.SCATTER_UNKNOWN);
    }

    @Test
    void aClaimIsAsSmallAsItsRoundingAllows() {
        String procedure = sound("ABA", "sae-j1349", "");

        assertThat(graded(pair("200.0 hp", "204.8 hp"), "5 hp", procedure).reason()).isNotEqualTo(Reason.FIGURES_FALL_SHORT);
        assertThat(graded(pair("200.0 hp", "203.9 hp"), "2 %", procedure).reason()).isNotEqualTo(Reason.FIGURES_FALL_SHORT);
        assertThat(graded(pair("200.0 hp", "204.2 hp"), "5 hp", procedure).reason()).isEqualTo(Reason.FIGURES_FALL_SHORT);
    }

    /** A claim of what was printed, to the digit, cannot be shown to be at least that; that there is a gain can. */
    @Test
    void whereTheAmountIsNotShownSomeGainMayBe() {
        AuditAnswer answer = audit(pair("200.0 hp", "220.0 hp"), "20.0 hp", sound("ABA", "sae-j1349", ""));

        assertThat(answer.claims().get(0).graded().grade()).isEqualTo(Grade.NOT_SHOWN);
        assertThat(answer.claims().get(0).someGain()).isEqualTo(Grade.SHOWN);
    }

    @Test
    void onlyAnIntervalContradicts() {
        String procedure = sound("ABA", "sae-j1349", "");
        String handicapped = procedure.replace("\"quotedBefore\": \"mean\"", "\"quotedBefore\": \"best\"");

        assertThat(graded(pair("301.0 hp", "299.6 hp"), "", handicapped).reason()).isEqualTo(Reason.FIGURES_FALL_SHORT);
        assertThat(graded(pair("300.0 hp", "240.0 hp"), "", procedure).grade()).isEqualTo(Grade.CONTRADICTED);
    }

    @Test
    void whatRollersScatterJudgesNoOtherQuantity() {
        String procedure = sound("ABA", "none", "");

        assertThat(graded(pair("100 W·h", "120 W·h"), "", procedure)).extracting(GradedClaim::reason, GradedClaim::ends)
                .containsExactly(Reason.SCATTER_UNKNOWN, Optional.empty());
        assertThat(graded(pair("100 W·h", "120 W·h"), "", procedure + ", \"scatter\": {\"pull\": {\"deviation\": \"1 W·h\"}}").ends())
                .isPresent();
    }

    /** Means of five, +7 %: the air of two days may make 16 % (RangeOfAirTest), and is corrected for where it is. */
    @Test
    void uncorrectedFiguresOfTwoDaysHangOnTheirAir() {
        String days = sound("ABA", "none", "").replace("\"day\": \"same\"", "\"day\": \"different\"");

        AuditAnswer uncorrected = audit(pair("200.0 hp", "220.0 hp"), "", days);
        assertThat(uncorrected.claims().get(0).graded().reason()).isEqualTo(Reason.HANGS_ON_WHAT_IS_NOT_DISCLOSED);
        assertThat(uncorrected.checks()).anyMatch(check -> check.code() == AuditCheck.Code.UNCORRECTED_DAYS
                && check.state() == AuditCheck.State.RAISED);
        assertThat(graded(pair("200.0 hp", "220.0 hp"), "", days.replace("none", "sae-j1349")).grade()).isEqualTo(Grade.SHOWN);
    }

    /** Power is 1.045 times torque × speed before, and the text says nothing of it. */
    @Test
    void aFigureThatContradictsItselfShowsNothing() {
        AuditAnswer answer = Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [
                  {"name": "power", "before": "200.0 hp", "after": "230.0 hp", "at": "5000 rpm"},
                  {"name": "torque", "before": "201.0 lbf·ft", "after": "241.6 lbf·ft", "at": "5000 rpm"}],
                 "procedure": {%s}, "claims": [{"words": "more power", "figure": "power"}]}"""
                .formatted(sound("ABA", "sae-j1349", "")), "invented"), List.of());

        assertThat(answer.claims().get(0).graded().reason()).isEqualTo(Reason.FIGURES_DISAGREE);
    }

    /** Another rig reads up to 10 % apart: 20 hp of 200 off the near end, and onto the far one. */
    @Test
    void aRigThatIsNotSaidStandsInTheWorst() {
        String procedure = sound("ABA", "sae-j1349", "");
        GradedClaim said = graded(pair("200.0 hp", "260.0 hp"), "", procedure);
        GradedClaim unsaid = graded(pair("200.0 hp", "260.0 hp"), "", procedure.replace("\"rig\": \"same\"", "\"rig\": \"\""));

        assertThat(said.ends().orElseThrow().worst().low() - unsaid.ends().orElseThrow().worst().low()).isCloseTo(20 * HP, within(1.0));
        assertThat(unsaid.ends().orElseThrow().worst().high() - said.ends().orElseThrow().worst().high()).isCloseTo(20 * HP, within(1.0));
    }

    @Test
    void onlyCorrectionsThatAreOpenOrSaidExplainAGain() {
        String other = SOUND.formatted("ABA", "iso-1585", "sae-j607", "");

        assertThat(audit(pair("200.0 hp", "208.0 hp"), "", other).figures().get(0).mixes().standards()).hasValueSatisfying(mix ->
                assertThat(List.of(mix.before().id(), mix.after().id())).containsExactly("iso-1585", "sae-j607"));
        assertThat(audit(pair("200.0 hp", "208.0 hp"), "", sound("ABA", "sae-j1349", "")).figures().get(0).mixes().standards()).isEmpty();
        assertThat(audit(pair("200.0 hp", "208.0 hp"), "", sound("ABA", "sae-j1349", "").replace("\"barometerBefore\": \"station\", "
                + "\"barometerAfter\": \"station\"", "\"barometerBefore\": \"\"")).figures().get(0).mixes().barometers())
                .as("one rig on one day has one barometer").isEmpty();
    }

    /** The factors of SAE J1349 and ISO 1585 are both 1 in their reference air, so that mixing them makes nothing of 0.1 hp. */
    @ParameterizedTest
    @ValueSource(strings = {"200.0 hp", "200.1 hp"})
    void nothingIsNoMixtureOfCorrections(String after) {
        assertThat(audit(pair("200.0 hp", after), "", "\"rig\": \"same\"").figures().get(0).mixes().standards()).isEmpty();
    }
}
