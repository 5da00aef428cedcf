package fairpull.report.wording;

import fairpull.domain.plan.Rig;
import java.util.List;

/** What must be said wherever full-throttle pulls are reported. Common practice, no source. */
public final class CautionWords {
    private CautionWords() {
    }

    /** {@return the cautions for a kind of rig} */
    public static List<String> of(Rig.Kind kind) {
        String first = "Full-throttle pulls can injure and damage: ";
        String last = " Local codes, the maker’s instructions and licensed practice come first.";
        return List.of(switch (kind) {
            case ROLLER_INERTIA, ROLLER_BRAKE -> first + "strap the car down, keep people out of line with the wheels and away from the "
                    + "rollers, check tyres and loose parts, lead exhaust gas outdoors, protect hearing, and mind hot parts and fire."
                    + last;
            case HUB, ENGINE_BENCH -> first + "guard turning parts, secure car and hoses, lead exhaust gas outdoors, protect hearing, and "
                    + "mind hot parts and fire." + last;
            case ROAD, STRIP -> first + "run on closed ground only, with the safety gear and marshals that it asks for, and mind hot "
                    + "parts, brakes and tyres." + last;
        });
    }
}
