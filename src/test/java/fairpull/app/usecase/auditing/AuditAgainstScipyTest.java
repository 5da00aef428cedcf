package fairpull.app.usecase.auditing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.AuditAnswer.OfFigure;
import fairpull.domain.audit.BudgetTerm;
import fairpull.domain.audit.GradedClaim.Ends;
import fairpull.domain.audit.TTest;
import fairpull.domain.audit.TypeErrors;
import fairpull.domain.unit.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Whole publications against another integration in another language: computed/scipy-audit, whose README has the tolerances. */
class AuditAgainstScipyTest {
    private static final Path OWN = Path.of("src/test/resources/computed/scipy-audit");
    private static final Path DEMO = Path.of("demo-data/published");
    private static final double RELATIVE = 2e-6;
    /** Below, sums of tails lose their digits, and a normal distribution goes on in their place. */
    private static final double FAR = 1e-9;

    @ParameterizedTest
    @CsvFileSource(resources = "/computed/scipy-audit/figures.csv", numLinesToSkip = 1)
    void figuresAreThoseOfScipy(String publication, String name, String what, double expected) throws IOException {
        Path own = OWN.resolve(publication + ".json");
        AuditAnswer answer = AuditPublication.audit(Files.exists(own) ? own : DEMO.resolve(publication + ".json"));
        OfFigure figure = answer.figures().stream().filter(known -> known.figure().name().equals(name)).findFirst().orElseThrow();

        double found = found(answer, figure, what);
        if (what.startsWith("chance") && expected < FAR) {
            assertThat(found).isBetween(0.0, FAR);
        } else {
            assertThat(found).isCloseTo(expected, within(tolerance(publication, what) * Math.abs(expected) + 1e-12));
        }
    }

    private static double tolerance(String publication, String what) {
        boolean far = publication.equals("best-of-three");
        return far && what.equals("wrongSign") ? 0.04 : far && what.equals("exaggeration") ? 5e-4 : RELATIVE;
    }

    private static double found(AuditAnswer answer, OfFigure figure, String what) {
        return switch (what) {
            case "chanceAlone" -> figure.chance().ordinary();
            case "chanceLeast" -> figure.chance().least();
            case "chanceMost" -> figure.chance().most();
            case "tippingPullScatter" -> figure.chance().tippingPull().orElseThrow();
            case "wrongSign" -> figure.errors().map(TypeErrors::wrongSign).orElseThrow();
            case "exaggeration" -> figure.errors().map(TypeErrors::exaggeration).orElseThrow();
            case "t" -> figure.test().map(TTest::t).orElseThrow();
            case "pValue" -> figure.test().map(TTest::pValue).orElseThrow();
            case "pickedBest" -> unit(figure).differenceFromSi(figure.budget().stream()
                    .filter(term -> term.kind() == BudgetTerm.Kind.PICKED_BEST).mapToDouble(BudgetTerm::ordinary).findFirst().orElse(0));
            case "ordinaryLow" -> unit(figure).differenceFromSi(ends(answer, figure).ordinary().low());
            case "ordinaryHigh" -> unit(figure).differenceFromSi(ends(answer, figure).ordinary().high());
            case "worstLow" -> unit(figure).differenceFromSi(ends(answer, figure).worst().low());
            case "worstHigh" -> unit(figure).differenceFromSi(ends(answer, figure).worst().high());
            default -> throw new IllegalArgumentException(what);
        };
    }

    /** All claims of a figure rest on the same ends. */
    private static Ends ends(AuditAnswer answer, OfFigure figure) {
        return answer.claims().stream().filter(claim -> claim.claim().figure().equals(figure.figure().name())).findFirst()
                .orElseThrow().graded().ends().orElseThrow();
    }

    private static Unit unit(OfFigure figure) {
        return figure.figure().before().unit();
    }

    /** What no rig record says anything of has no chance: batteries are neither strapped down nor pulled. */
    @Test
    void ofFiguresWhoseScatterNobodyKnowsNoChanceIsTold() throws IOException {
        AuditAnswer answer = AuditPublication.audit(DEMO.resolve("battery-trial-1953.json"));

        assertThat(answer.figures()).flatExtracting(figure -> List.of(figure.chance().ordinary(), figure.chance().least(),
                figure.chance().most())).containsOnly(Double.NaN);
        assertThat(AuditPublication.said(answer, AuditPublication.repeat(answer)).json()).contains("\"chanceAlone\" : null,",
                "\"chanceLeast\" : null,", "\"chanceMost\" : null,", "\"scatter\" : null,");
    }
}
