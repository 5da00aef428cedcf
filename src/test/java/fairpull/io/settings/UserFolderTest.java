package fairpull.io.settings;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.StartingPlan;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UserFolderTest {
    private static final Plan PLAN = StartingPlan.in(UnitSystem.METRIC);

    @TempDir
    private Path home;

    /** The process that runs the tests stands for another window that is open; a day later its number would be someone else's. */
    @Test
    void editsOfAProcessThatRunsAreItsOwnAndThoseOfOneThatHadItsNumberBeforeAreFound() throws IOException {
        ProcessHandle running = ProcessHandle.current().parent().orElseThrow();
        UserFolder folder = new UserFolder(home);
        String now = UserFolder.id(running, 0) + "-1";
        String dayBefore = UserFolder.id(running, -86_400_000) + "-1";
        folder.keep(now, Optional.empty(), PLAN);
        folder.keep(dayBefore, Optional.empty(), PLAN);
        folder.keep("4194305-0-1", Optional.of(home), PLAN);
        folder.keep("of-nobody", Optional.empty(), PLAN);
        assertThat(folder.recoverable()).extracting(UserFolder.Recovered::id)
                .containsExactlyInAnyOrder(dayBefore, "4194305-0-1", "of-nobody");
    }

    @Test
    void aWindowOfThisProcessIsNamedByWhenTheProcessStarted() {
        assertThat(UserFolder.id(7)).matches(ProcessHandle.current().pid() + "-\\d{10,}-7");
    }
}
