package fairpull.app.usecase.auditing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Printed;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values as they are typed, and as spreadsheets put them on the clipboard. */
class ValuesTypingTest {
    private static final FigureDraft POWER = FigureDraft.named("power").withBefore(Printed.parse("184.2 hp"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"184.3|184.3 hp", "184,3|184.3 hp", "137,40 kW|137.40 kW", " 190 |190 hp", "1.5e2|150 hp"})
    void aValueTakesTheUnitOfItsFigureAndACommaWhereItCanOnlyBeADecimalMark(String typed, String meant) {
        assertThat(ValuesTyping.value(typed, POWER).map(Printed::words)).contains(meant);
    }

    @Test
    void whatIsNoValueOfTheFigureIsRefusedInWords() {
        assertThat(ValuesTyping.value(" ", POWER)).isEmpty();
        assertThatThrownBy(() -> ValuesTyping.value("some", POWER)).hasMessageContaining("214.3 hp");
        assertThatThrownBy(() -> ValuesTyping.value("200 N·m", POWER)).hasMessageContaining("a value in hp");
        assertThatThrownBy(() -> ValuesTyping.value("1,234", POWER)).as("thousands or thousandths").hasMessageContaining("comma");
        assertThatThrownBy(() -> ValuesTyping.value("200", FigureDraft.named("power"))).hasMessageContaining("unit");
        assertThat(ValuesTyping.value("200 hp", FigureDraft.named("power")).map(Printed::words)).isEqualTo(Optional.of("200 hp"));
    }

    @Test
    void twoColumnsOfASpreadsheetComeWithHeadsACounterAndDecimalCommas() {
        assertThat(ValuesTyping.pasted("Lauf\tvorher\tnachher\r\n1\t184,2\t190,125\r\n\r\n2\t183,9\t189\r\n"))
                .isEqualTo(List.of(List.of("184.2", "190.125"), List.of("183.9", "189")));
        assertThat(ValuesTyping.pasted("184.2 190.1\n183.9\t\n")).isEqualTo(List.of(List.of("184.2 190.1"), List.of("183.9", "")));
        assertThat(ValuesTyping.pasted("184.2 190.1\n183.9   189.4\n")).isEqualTo(List.of(List.of("184.2", "190.1"),
                List.of("183.9", "189.4")));
        assertThat(ValuesTyping.pasted("before;after\n184,2;190\n")).isEqualTo(List.of(List.of("184.2", "190")));
        assertThat(ValuesTyping.pasted("\t190.1\n\t189.4")).as("a column with nothing before it")
                .isEqualTo(List.of(List.of("", "190.1"), List.of("", "189.4")));
    }

    @Test
    void oneListIsOneColumnAndWhatIsWiderIsRefused() {
        assertThat(ValuesTyping.pasted("184.2 hp\n183.9 hp")).isEqualTo(List.of(List.of("184.2 hp"), List.of("183.9 hp")));
        assertThatThrownBy(() -> ValuesTyping.pasted("1.5\t2.5\t3.5\t4.5")).hasMessageContaining("4 columns wide");
        assertThatThrownBy(() -> ValuesTyping.pasted(" \n ")).hasMessageContaining("no values on the clipboard");
        assertThat(ValuesTyping.pasted("1,234\n5,678")).as("no doubt is taken away that is there")
                .isEqualTo(List.of(List.of("1,234"), List.of("5,678")));
    }
}
