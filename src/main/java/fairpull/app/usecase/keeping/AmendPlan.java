package fairpull.app.usecase.keeping;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.NewPlan;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.pull.LogEntry;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.PlanJson;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Changes a sealed plan, with the reason. */
public final class AmendPlan {
    private AmendPlan() {
    }

    /**
     * Changes some places of a sealed plan, or replaces it by another one.
     *
     * @param places new values by place, as in the plan file
     * @param replacement a plan file that takes the plan's place; then no single places are changed
     * @param claims claims that join those of the plan, as typed for {@code new}
     * @param because why
     */
    public static LogEntry.Amended amend(Path folder, Map<String, String> places, Optional<Path> replacement, List<String> claims,
            String because, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        Plan before = sealed(folder, test.read());
        Plan after = before;
        if (replacement.isPresent()) {
            after = TestFolder.readPlan(replacement.get());
        }
        for (Map.Entry<String, String> place : places.entrySet()) {
            after = PlanJson.with(after, place.getKey(), place.getValue());
        }
        after = claims.isEmpty() ? after : claiming(after, claims);
        if (after.equals(before)) {
            throw new UsageException("--set", "nothing changes; name a place of plan.json and its new value");
        }
        return test.amend(before, after, because, now);
    }

    private static Plan claiming(Plan plan, List<String> typed) {
        Question question = plan.question();
        List<Claim> claims = new ArrayList<>(question.claims());
        for (String claim : typed) {
            claims.add(NewPlan.claim("--claim", claim, question.deciding(), new Typed(question.deciding(), question.expectedLevelSi())));
        }
        try {
            return plan.with(question.claiming(claims));
        } catch (IllegalArgumentException contradiction) {
            throw new UsageException("--claim", contradiction.getMessage());
        }
    }

    /** Replaces a sealed plan by one that was edited from it. */
    static LogEntry.Amended amend(Path folder, Plan after, String because, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        Plan before = sealed(folder, test.read());
        if (after.equals(before)) {
            throw new UsageException("amend", "nothing was changed, so there is nothing to amend");
        }
        return test.amend(before, after, because, now);
    }

    private static Plan sealed(Path folder, TestFolder.Content content) {
        String planned = content.log().planSha256().orElseThrow(() -> new InputException(Place.of(folder.toString()),
                "the plan is not sealed, so there is nothing to amend",
                new Remedy("edit plan.json, then `fairpull check` and `fairpull seal` it",
                        "open it again, change it and seal it")));
        if (!planned.equals(content.planSha256())) {
            throw new InputException(Place.of("plan.json"), "it was changed by hand since it was sealed or amended",
                    "put the sealed plan back, then amend it");
        }
        return content.plan();
    }
}
