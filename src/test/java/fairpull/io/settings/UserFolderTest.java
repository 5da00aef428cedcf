package fairpull.io.settings;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import fairpull.io.json.PlanJson;
import fairpull.io.settings.UserFolder.Kind;
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
        keep(folder, now, Optional.empty());
        keep(folder, dayBefore, Optional.empty());
        keep(folder, "4194305-0-1", Optional.of(home));
        keep(folder, "of-nobody", Optional.empty());
        assertThat(folder.recoverable(Kind.PLAN)).extracting(UserFolder.Recovered::id)
                .containsExactlyInAnyOrder(dayBefore, "4194305-0-1", "of-nobody");
    }

    @Test
    void editsOfAPublicationAreNoneOfAPlanAndAreForgottenWithWhereTheyBelong() throws IOException {
        UserFolder folder = new UserFolder(home);
        UserFolder.Recovered draft = new UserFolder.Recovered("4194305-0-1", Optional.of(home.resolve("inlet.json").toAbsolutePath()), "{}");
        folder.keep(Kind.PUBLICATION, draft);
        assertThat(folder.recoverable(Kind.PLAN)).isEmpty();
        assertThat(folder.recoverable(Kind.PUBLICATION)).containsExactly(draft);
        folder.forget(draft.id());
        assertThat(home.resolve("recovery")).isEmptyDirectory();
    }

    private static void keep(UserFolder folder, String id, Optional<Path> where) throws IOException {
        folder.keep(Kind.PLAN, new UserFolder.Recovered(id, where, PlanJson.indented(PLAN)));
    }

    @Test
    void aWindowOfThisProcessIsNamedByWhenTheProcessStarted() {
        assertThat(UserFolder.id(7)).matches(ProcessHandle.current().pid() + "-\\d{10,}-7");
    }
}
