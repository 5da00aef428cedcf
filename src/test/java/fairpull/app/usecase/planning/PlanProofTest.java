package fairpull.app.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.task.CancelledException;
import fairpull.app.task.Progress;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.typing.TypedTruth;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PlanProofTest {
    private static final Path TEST = Path.of("plans/electric-pump");

    @Test
    void itSaysWhatTheVerbSaysOfTheSamePlan() throws IOException {
        Plan plan = KeepTest.open(TEST).plan();
        PlanProof proof = PlanProof.of(plan, Progress.none());
        String verb = Prove.test(TEST, new TypedTruth.Words(null, null, null, null, null, null), new TypedTruth.Run(10_000, 1),
                Progress.none()).text().replaceAll("\\s+", " ");
        assertThat(proof.figures()).extracting(Outlook.Row::name).containsExactly("Error rate", "Power", "Coverage");
        assertThat(proof.figures()).allSatisfy(row -> assertThat(verb).contains(row.figure().replaceAll("\\s+", " ")));
        assertThat(verb).contains(proof.sentences().get(proof.sentences().size() - 1).replaceAll("\\s+", " "));
    }

    @Test
    void aPlanThatLacksScatterSaysSo() {
        assertThatThrownBy(() -> PlanProof.of(StartingPlan.in(UnitSystem.METRIC), Progress.none())).isInstanceOf(UsageException.class)
                .hasMessageContaining("pull scatter");
    }

    @Test
    void itStopsWhenAsked() throws IOException {
        Plan plan = KeepTest.open(TEST).plan();
        Progress stopped = new Progress() {
            @Override
            public void reached(int done, int all) {
                // nobody asked
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> PlanProof.of(plan, stopped)).isInstanceOf(CancelledException.class);
    }
}
