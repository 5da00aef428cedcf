package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.app.usecase.planning.Outlook;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sides;
import fairpull.domain.unit.UnitSystem;
import fairpull.io.json.PlanJson;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Locale;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A test planned from nothing to complete in the components of the window, taken back step by step and done again. */
class PlanningTest {
    private static final double HORSEPOWER = 745.69987158227022;

    private final Locale usual = Locale.getDefault();

    @TempDir
    private Path home;

    @AfterEach
    void usualLocale() {
        Locale.setDefault(usual);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "en-US"})
    void aTestIsPlannedFromNothingAndEveryStepIsTakenBackAndDoneAgain(String locale) {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Hand hand = Hand.on(Document.unsaved(StartingPlan.in(UnitSystem.METRIC)), home);
        String nothing = PlanJson.indented(hand.document().plan());

        question(hand);
        rig(hand);
        sequence(hand);
        limits(hand);
        isComplete(hand.document().plan());

        String complete = PlanJson.indented(hand.document().plan());
        hand.undoAll();
        assertThat(PlanJson.indented(hand.document().plan())).isEqualTo(nothing);
        hand.redoAll();
        assertThat(PlanJson.indented(hand.document().plan())).isEqualTo(complete);
    }

    @Test
    void aLimitOfTheSearchStandsAsItWasSet() {
        Hand hand = Hand.on(Document.unsaved(ExamplePlan.plan()), home);
        hand.go("page.sequence");
        hand.type("days.hours", "8.5 h");
        hand.settle();
        assertThat(hand.find("days.hours", JTextField.class).getText().replaceAll("\\h", " ")).isEqualTo("8.5 h");
        hand.type("days.installs", "5");
        hand.settle();
        assertThat(hand.find("days.installs", JTextField.class).getText()).isEqualTo("5");
    }

    private static void question(Hand hand) {
        hand.type("question.title", "Larger intercooler");
        hand.type("question.partA", "small cooler");
        hand.type("question.partB", "large cooler");
        hand.type("question.remark", "an invented car");
        hand.choose("measure.kind", "peakTorque");
        hand.choose("measure.kind", "band");
        hand.type("question.measure", "mean power 3000-6500 rpm in hp");
        hand.choose("measure.correction", Correction.SAE_J1349);
        hand.type("measure.further", "peak power in hp; peak torque in N·m");
        hand.type("question.expected", "190 hp");
        hand.type("question.worthwhile", "1.5 %");
        hand.choose("gain.sides", Sides.ONE);
        hand.type("gain.powerWanted", "85 %");
        hand.type("gain.errorRate", "4 %");
        hand.type("gain.claims", "5 hp");
    }

    private static void rig(Hand hand) {
        hand.go("page.rig");
        hand.type("rig.name", "the long room");
        hand.choose("rig.kind", Rig.Kind.HUB);
        hand.type("rig.gear", "4");
        hand.type("rig.sweepRate", "350 rpm/s");
        hand.type("rig.tyres", "32 psi");
        hand.type("rig.sensors", "intake air 1 K; barometer 0.5 hPa");
        hand.choose("rig.drift", Drift.LINEAR);
        hand.press("scatter.guess");
        hand.write("pilot.pulls", "190.1 190.9 191.3\n189.2 189.9 190.4");
        hand.press("pilot.take");
        hand.type("scatter.pull", "0.6 %");
        hand.type("scatter.pullDf", "20");
        hand.type("scatter.refit", "0.8 %");
        hand.type("scatter.refitDf", "12");
    }

    private static void sequence(Hand hand) {
        hand.go("page.sequence");
        hand.choose("sequence.template", "ABBA");
        hand.type("sequence.letters", "ABABA");
        hand.press("sequence.draw");
        hand.type("sequence.pulls", "4");
        hand.type("sequence.warmUps", "1");
        hand.type("sequence.interval", "6 min");
        hand.type("sequence.swap", "35 min");
        hand.type("sequence.setUp", "40 min");
        hand.type("sequence.start", "8:30");
        hand.type("sequence.end", "18:00");
        hand.click("days.chart", 0);
        hand.type("sequence.letters", "ABABA");
        hand.drag("A1", "A1");
        assertThat(hand.pane().strip().chosen()).contains("A1");
        hand.drag("A1", "A2");
        assertThat(letters(hand)).isEqualTo("BAABA");
        hand.strip("alt LEFT");
        hand.strip("alt LEFT");
        assertThat(letters(hand)).isEqualTo("ABABA");
        hand.strip("RIGHT");
        hand.strip("PLUS");
        hand.strip("INSERT");
        assertThat(letters(hand)).isEqualTo("ABAABA");
        hand.strip("RIGHT");
        hand.strip("X");
        assertThat(letters(hand)).isEqualTo("ABBABA");
        assertThat(hand.pane().strip().chosen()).as("the choice stays with the install, whatever it is called now").contains("B2");
        hand.strip("DELETE");
        hand.drag("B2", "B2");
        hand.type("install.pulls", "6");
        hand.press("install.unstrapped");
        hand.press("install.earlier");
        assertThat(letters(hand)).isEqualTo("ABBAA");
    }

    private static String letters(Hand hand) {
        return hand.document().plan().sequence().letters();
    }

    private static void limits(Hand hand) {
        hand.go("page.limits");
        hand.type("gate.intake-air", "± 2 K");
        hand.type("gate.coolant", "80 … 95 °C");
        hand.type("gate.humidity", "20 … 80 %");
        hand.type("gate.oil", "");
        hand.write("checklist", "bonnet open\nfan in its mark");
    }

    /** What was typed stands in the plan, in SI; the conversions are those of the units' definitions. */
    private static void isComplete(Plan plan) {
        assertThat(plan.title()).isEqualTo("Larger intercooler");
        assertThat(plan.question().partB()).isEqualTo("large cooler");
        assertThat(plan.question().further()).hasSize(2);
        assertThat(plan.question().expectedLevelSi().orElseThrow()).isEqualTo(190 * HORSEPOWER, within(1e-6));
        assertThat(plan.question().worthwhileGainSi().orElseThrow()).isEqualTo(190 * 0.015 * HORSEPOWER, within(1e-6));
        assertThat(plan.question().errorRate()).isEqualTo(0.04);
        assertThat(plan.question().powerWanted()).isEqualTo(0.85);
        assertThat(plan.question().claims()).hasSize(1);
        assertThat(plan.rig().kind()).isEqualTo(Rig.Kind.HUB);
        assertThat(plan.rig().pullScatter().orElseThrow().standardDeviationSi()).isEqualTo(190 * 0.006 * HORSEPOWER, within(1e-6));
        assertThat(plan.rig().refitScatter().orElseThrow().degreesOfFreedom()).isEqualTo(12);
        assertThat(plan.rig().sensors()).hasSize(2);
        assertThat(plan.analysis().drift()).isEqualTo(Drift.LINEAR);
        assertThat(plan.sequence().sessions().get(0).hours().orElseThrow().start()).isEqualTo(LocalTime.of(8, 30));
        assertThat(plan.sequence().pullIntervalS()).isEqualTo(360);
        assertThat(plan.sequence().installs().anyMatch(install -> install.countedPulls() == 6)).isTrue();
        assertThat(plan.checklist()).containsExactly("bonnet open", "fan in its mark");
        assertThat(Outlook.of(plan).key()).isNotEqualTo("–");
    }

    private static org.assertj.core.data.Offset<Double> within(double difference) {
        return org.assertj.core.data.Offset.offset(difference);
    }
}
