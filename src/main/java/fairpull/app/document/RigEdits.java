package fairpull.app.document;

import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sensor;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Edits of the rig, of what is known about it, and of how the test is run and judged on it. */
public final class RigEdits {
    private RigEdits() {
    }

    /** {@return an edit of the rig's name} */
    public static Edit name(String name) {
        return of("rig", rig -> rig.named(name));
    }

    /** {@return an edit of the kind of rig; gates go by the kind and are set anew with it} */
    public static Edit kind(Rig.Kind kind, List<Gate> gates) {
        return Edit.step("kind of rig", plan -> plan.with(plan.rig().of(kind)).withGates(gates));
    }

    /** {@return an edit of the gear} */
    public static Edit gear(String gear) {
        return of("gear", rig -> rig.inGear(gear));
    }

    /** {@return an edit of the sweep rate} */
    public static Edit sweepRate(OptionalDouble radPerS2) {
        return of("sweep rate", rig -> rig.sweeping(radPerS2));
    }

    /** {@return an edit of the tyre pressure} */
    public static Edit tyrePressure(OptionalDouble pascal) {
        return of("tyre pressure", rig -> rig.onTyresAt(pascal));
    }

    /** {@return an edit of the sensors} */
    public static Edit sensors(List<Sensor> sensors) {
        return of("sensors", rig -> rig.with(sensors));
    }

    /** {@return an edit of both scatter figures at once, as a record, pilot pulls or a guess give them} */
    public static Edit scatter(String label, Optional<Scatter> pull, Optional<Scatter> refit) {
        return Edit.step(label, plan -> plan.with(plan.rig().scattering(pull, refit)));
    }

    /** {@return an edit of pull scatter as it is typed} */
    public static Edit pullScatter(Optional<Scatter> pull) {
        return of("pull scatter", rig -> rig.scattering(pull, rig.refitScatter()));
    }

    /** {@return an edit of refit scatter as it is typed} */
    public static Edit refitScatter(Optional<Scatter> refit) {
        return of("refit scatter", rig -> rig.scattering(rig.pullScatter(), refit));
    }

    /** {@return an edit of how drift is modelled} */
    public static Edit drift(Drift drift) {
        return Edit.step("drift", plan -> plan.with(new Analysis(drift, plan.analysis().covariates())));
    }

    /** {@return an edit of the conditions whose slope is taken out} */
    public static Edit covariates(List<Condition> covariates) {
        return Edit.step("covariates", plan -> plan.with(new Analysis(plan.analysis().drift(), covariates)));
    }

    /** {@return an edit of the gates} */
    public static Edit gates(List<Gate> gates) {
        return Edit.typing("gates", "gates", plan -> plan.withGates(gates));
    }

    /** {@return an edit of the checklist} */
    public static Edit checklist(List<String> checklist) {
        return Edit.typing("checklist", "checklist", plan -> plan.withChecklist(checklist));
    }

    /** {@return an edit of the planned looks} */
    public static Edit looks(Optional<Looks> looks) {
        return Edit.step("looks", plan -> plan.withLooks(looks));
    }

    static Rig withoutScatter(Rig rig) {
        return rig.scattering(Optional.empty(), Optional.empty());
    }

    private static Edit of(String field, UnaryOperator<Rig> change) {
        return Edit.typing(field, field, plan -> plan.with(change.apply(plan.rig())));
    }
}
