package fairpull.app.usecase.keeping;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import java.util.List;

/** Is a pull in the plan? */
public final class Planned {
    private Planned() {
    }

    /** Refuses a pull that the plan does not have. */
    public static void check(Plan plan, PullId pull) {
        List<PullId> known = List.copyOf(PlannedClock.of(plan.sequence()).minutes().keySet());
        if (known.contains(pull)) {
            return;
        }
        checkInstall(plan, pull.install());
        throw unknown(plan, "pull " + pull);
    }

    /** Refuses an install that the plan does not have. */
    public static void checkInstall(Plan plan, String label) {
        if (plan.sequence().installs().noneMatch(install -> install.label().equals(label))) {
            throw unknown(plan, "install " + label);
        }
    }

    private static InputException unknown(Plan plan, String what) {
        return new InputException(Place.none(), "the plan has no " + what,
                "its installs are " + String.join(", ", plan.sequence().installs().map(install -> install.label() + " ("
                        + install.warmUpPulls() + " warm-up and " + install.countedPulls() + " counted pulls)").toList())
                        + "; amend the plan first if it is to have more");
    }

    /** {@return the pull that a text names} */
    public static PullId parse(String text) {
        return PullId.parse(text).orElseThrow(() -> new UsageException("PULL", "expected a pull such as B1-3 or A1-W2, found “" + text
                + "”"));
    }
}
