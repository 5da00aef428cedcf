package fairpull.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.app.usecase.typing.GateTyping;
import fairpull.app.usecase.typing.RigTyping;
import fairpull.domain.plan.Condition;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.form.Prose;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LocalNumbersTest {
    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @AfterEach
    void putLocaleBack() {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }

    private static void in(String locale) {
        Locale.setDefault(Locale.Category.FORMAT, Locale.forLanguageTag(locale));
    }

    @Test
    void aDecimalCommaIsShownAndReadWhereTheLocaleHasIt() {
        in("de-DE");
        assertThat(LocalNumbers.shown("3.5 hp")).isEqualTo("3,5 hp");
        assertThat(LocalNumbers.shown("2.8 hp (1.46 %).")).isEqualTo("2,8 hp (1,46 %).");
        assertThat(LocalNumbers.shown("10,000 campaigns")).isEqualTo("10\u202f000 campaigns");
        assertThat(LocalNumbers.shown("plan.json, version 1.2.3, at 9:00.")).isEqualTo("plan.json, version 1.2.3, at 9:00.");
        assertThat(LocalNumbers.typed("3,5 hp; 2 %, 4.5 hp")).isEqualTo("3.5 hp; 2 %, 4.5 hp");
        assertThat(LocalNumbers.typed(",5")).isEqualTo(".5");
    }

    @Test
    void elsewhereNothingChanges() {
        in("en-US");
        assertThat(LocalNumbers.shown("1,234.5 hp")).isEqualTo("1,234.5 hp");
        assertThat(LocalNumbers.typed("3,5 hp")).isEqualTo("3,5 hp");
    }

    @Test
    void whatIsShownReadsBack() {
        in("de-DE");
        PlanTyping typing = PlanTyping.in(StartingPlan.in(UnitSystem.METRIC));
        for (double watt : new double[] {1, 2237.1, 3500.25, 141_683}) {
            String shown = LocalNumbers.shown(typing.difference(OptionalDouble.of(watt)));
            assertThat(typing.difference(LocalNumbers.typed(shown)).getAsDouble()).isCloseTo(watt, within(1e-9));
        }
        String sensors = "intake air 0,5 K; barometer 0,25 hPa";
        assertThat(LocalNumbers.shown(RigTyping.text(RigTyping.sensors(LocalNumbers.typed(sensors)))).replace('\u202f', ' '))
                .isEqualTo(sensors);
    }

    @Test
    void everyHintOfAGateIsUnderstoodInItsUnits() {
        in("de-DE");
        for (UnitSystem system : UnitSystem.values()) {
            for (Condition condition : Condition.values()) {
                String hint = hint("gate." + condition.id() + ".hint", system);
                assertThat(GateTyping.with(List.of(), condition, LocalNumbers.typed(LocalNumbers.shown(hint)), system)).as(hint).hasSize(1);
            }
            assertThat(RigTyping.pressure(hint("rig.tyres.hint", system))).isPresent();
        }
    }

    @Test
    void namesOfFilesAreNoFigures() {
        in("de-DE");
        Prose prose = Prose.small("").asWritten();
        prose.setText("run 2.5.csv");
        assertThat(prose.getText()).isEqualTo("run 2.5.csv");
    }

    private static String hint(String key, UnitSystem system) {
        return Words.find(key + "." + system.name()).or(() -> Words.find(key)).orElseThrow();
    }
}
