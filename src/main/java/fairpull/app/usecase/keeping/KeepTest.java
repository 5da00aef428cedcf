package fairpull.app.usecase.keeping;

import fairpull.app.document.Document;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Seal;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;

/** Brings a test from disk into a document and back. Documents change on their own thread only: these give what is to be told to them. */
public final class KeepTest {
    private KeepTest() {
    }

    /** {@return the test in a folder} */
    public static Document open(Path folder) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        return Document.of(folder, content.plan(), content.isSealed() ? content.seal().map(Seal::code) : Optional.empty());
    }

    /** Makes a test of a plan in a folder that holds none. */
    public static void create(Path folder, Plan plan) throws IOException {
        TestFolder.create(folder, plan);
    }

    /** Writes the plan of a test that is not sealed. */
    public static void write(Path folder, Plan plan) throws IOException {
        TestFolder test = TestFolder.open(folder);
        if (test.read().isSealed()) {
            throw new InputException(Place.of(folder.toString()), "the plan in it is sealed", "open it anew and amend it, with the reason");
        }
        test.writePlan(plan);
    }

    /** Writes an amendment of a sealed plan with its reason. */
    public static void amend(Path folder, Plan plan, String because, OffsetDateTime now) throws IOException {
        AmendPlan.amend(folder, plan, PlanTyping.words(because), now);
    }

    /** Seals the plan in a folder; returns the code of the seal. */
    public static String seal(Path folder, OffsetDateTime now) throws IOException {
        return SealPlan.seal(folder, false, now).code();
    }
}
