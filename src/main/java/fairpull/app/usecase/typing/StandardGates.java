package fairpull.app.usecase.typing;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Rig;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;

/** The gates and the checklist that a new plan begins with; common practice, no source. All of it can be edited in the plan. */
public final class StandardGates {
    private static final List<String> CHECKLIST = List.of(
            "same rig, same gear, same operator, who is not told the expected figure",
            "straps untouched within an install; notch or load written down",
            "tyre pressure set at each install",
            "fan, bonnet and doors as on the photo and the floor marks",
            "electrical loads and air conditioning as on the fixed list",
            "fuel from one batch; level and temperature written down",
            "no reset of the engine controller in one part only",
            "load cell zero before and after each install",
            "least-smoothed data exported, one correction standard for both parts",
            "extraction running, restraints inspected, ear and eye protection on, extinguisher at hand, nobody in the cell during a pull");

    private StandardGates() {
    }

    /** {@return the gates for a kind of rig} */
    public static List<Gate> of(Rig.Kind kind) {
        List<Gate> gates = new ArrayList<>();
        gates.add(new Gate(Condition.INTAKE_AIR, near(2)));
        gates.add(new Gate(Condition.COOLANT, near(3)));
        gates.add(new Gate(Condition.OIL, near(5)));
        if (kind != Rig.Kind.ENGINE_BENCH && kind != Rig.Kind.HUB) {
            gates.add(new Gate(Condition.TYRE_PRESSURE, new Gate.NearReference(Units.POUND_PER_SQUARE_INCH.differenceToSi(0.5))));
        }
        return gates;
    }

    /** {@return what is ticked off on the day} */
    public static List<String> checklist() {
        return CHECKLIST;
    }

    private static Gate.NearReference near(double kelvin) {
        return new Gate.NearReference(kelvin);
    }
}
