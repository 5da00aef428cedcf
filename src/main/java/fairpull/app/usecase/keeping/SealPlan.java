package fairpull.app.usecase.keeping;

import fairpull.app.usecase.Version;
import fairpull.app.usecase.typing.Order;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Sequence;
import fairpull.domain.pull.Seal;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;

/** Seals a plan before the day. */
public final class SealPlan {
    private SealPlan() {
    }

    /**
     * Seals the plan in a folder.
     *
     * @param again whether a plan that is sealed already may be sealed again, which every finding will say
     */
    public static Seal seal(Path folder, boolean again, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        if (content.isSealed() && !again) {
            throw new InputException(Place.of(folder.toString()), "the plan is sealed already",
                    new Remedy("change it with `fairpull amend`, or seal it anew with --again, which every finding will say",
                            "open it again and amend it, with the reason"));
        }
        Sequence sequence = content.plan().sequence();
        if (sequence.origin() == Sequence.Origin.DRAWN && !Order.isAsDrawn(sequence)) {
            throw new InputException(Place.of("plan.json"), "the order " + sequence.letters() + " is not the one that its seed draws",
                    new Remedy("set sequence.origin to \"chosen\", or make the plan anew with --draw",
                            "draw the order again on the page Sequence"));
        }
        return test.seal(content.plan(), now, Version.text());
    }
}
