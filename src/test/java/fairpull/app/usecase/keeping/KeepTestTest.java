package fairpull.app.usecase.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.document.Document;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.InputException;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepTestTest {
    private static final OffsetDateTime EVE = OffsetDateTime.parse("2026-05-08T16:10:00+02:00");

    @TempDir
    private Path folder;

    @Test
    void aSealedPlanIsChangedByAnAmendmentOnly() throws IOException {
        Path test = folder.resolve("test");
        Plan plan = StartingPlan.in(UnitSystem.METRIC);
        KeepTest.create(test, plan);
        String code = KeepTest.seal(test, EVE);
        Plan other = plan.titled("another title");
        assertThatThrownBy(() -> KeepTest.write(test, other)).isInstanceOf(InputException.class).hasMessageContaining("sealed");
        assertThatThrownBy(() -> KeepTest.amend(test, other, " ", EVE)).isInstanceOf(UsageException.class);
        assertThat(Files.readString(test.resolve("log.jsonl")).lines()).hasSize(1);

        KeepTest.amend(test, other, "a typing mistake", EVE.plusHours(1));
        Document reopened = KeepTest.open(test);
        assertThat(reopened.plan()).isEqualTo(other);
        assertThat(reopened.sealCode()).contains(code);
        assertThat(Files.readString(test.resolve("log.jsonl")).lines()).hasSize(2).last().asString().contains("a typing mistake");
        assertThatThrownBy(() -> KeepTest.amend(test, other, "nothing new", EVE)).isInstanceOf(UsageException.class);
    }
}
