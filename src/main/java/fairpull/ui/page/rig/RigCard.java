package fairpull.ui.page.rig;

import fairpull.app.document.RigEdits;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.typing.RigTyping;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sensor;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.OptionalDouble;

/** The rig itself. */
final class RigCard extends Card {
    private final Desk desk;
    private final Entry<String> name;
    private final Choice<Rig.Kind> kind;
    private final Entry<String> gear;
    private final Entry<OptionalDouble> sweepRate;
    private final Entry<OptionalDouble> tyres;
    private final Entry<List<Sensor>> sensors;
    private final Choice<Drift> drift;

    RigCard(Desk desk) {
        super(Words.of("rig.head"));
        this.desk = desk;
        Runnable settle = desk.document()::settle;
        name = new Entry<>("rig.name", PlanTyping::words, words -> desk.typed(RigEdits.name(words)), settle).asWritten();
        kind = new Choice<>("rig.kind", List.of(Rig.Kind.values()), RigTyping::kind,
                chosen -> desk.edit(RigEdits.kind(chosen, RigTyping.gates(chosen))));
        gear = new Entry<>("rig.gear", String::strip, words -> desk.typed(RigEdits.gear(words)), settle).asWritten();
        sweepRate = new Entry<>("rig.sweepRate", RigTyping::sweepRate, rate -> desk.typed(RigEdits.sweepRate(rate)), settle);
        tyres = new Entry<>("rig.tyres", RigTyping::pressure, pressure -> desk.typed(RigEdits.tyrePressure(pressure)), settle);
        sensors = new Entry<>("rig.sensors", RigTyping::sensors, known -> desk.typed(RigEdits.sensors(known)), settle);
        drift = new Choice<>("rig.drift", List.of(Drift.values()), kindOf -> Words.of("rig.drift." + kindOf.name()),
                chosen -> desk.edit(RigEdits.drift(chosen)));
        name.addTo(this);
        kind.addTo(this);
        gear.addTo(this);
        sweepRate.addTo(this);
        tyres.addTo(this);
        sensors.addTo(this);
        drift.addTo(this);
        desk.settings().listen(this::refresh);
    }

    void refresh() {
        Rig rig = desk.document().plan().rig();
        name.show(rig.name());
        kind.show(rig.kind());
        gear.show(rig.gear());
        sweepRate.show(RigTyping.sweepRateText(rig.sweepRateRadPerS2()));
        tyres.show(RigTyping.pressureText(rig.tyrePressurePa(), desk.settings().units()));
        tyres.hintIn(desk.settings().units());
        sensors.show(RigTyping.text(rig.sensors()));
        drift.show(desk.document().plan().analysis().drift());
        boolean open = !desk.document().isFixed();
        List.of(name, gear, sweepRate, tyres, sensors).forEach(entry -> entry.enable(open));
        kind.enable(open);
        drift.enable(open);
    }
}
