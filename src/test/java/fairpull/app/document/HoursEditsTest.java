package fairpull.app.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Session;
import fairpull.domain.unit.UnitSystem;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class HoursEditsTest {
    private final Document document = Document.unsaved(StartingPlan.in(UnitSystem.METRIC));

    @BeforeEach
    void twoDays() {
        document.edit(SequenceEdits.addSession());
        document.edit(HoursEdits.starts(PlanTyping.clocks("9:00 | 13:00")));
    }

    private List<Session> days() {
        return document.plan().sequence().sessions();
    }

    private Hours hours(int day) {
        return days().get(day).hours().orElseThrow();
    }

    private String shown() {
        return PlanTyping.clockText(days().stream().map(day -> day.hours().map(Hours::start)).toList());
    }

    @Test
    void everyDayHasItsOwnStartAndWhatIsShownReadsBack() {
        assertThat(shown()).isEqualTo("09:00 | 13:00");
        assertThat(PlanTyping.clocks(shown())).containsExactly(Optional.of(LocalTime.of(9, 0)), Optional.of(LocalTime.of(13, 0)));
    }

    @Test
    void anEndForAllLeavesStartsAndBreaksOfEachDayAlone() {
        Hours afternoon = new Hours(LocalTime.of(13, 0), Optional.empty(), List.of(new Break(LocalTime.of(15, 0), 900)));
        document.edit(Edit.step("a break", plan -> plan.with(plan.sequence().withLabelled(List.of(days().get(0),
                days().get(1).with(afternoon))))));
        document.edit(HoursEdits.ends(PlanTyping.clocks("18:00")));
        assertThat(hours(0)).isEqualTo(new Hours(LocalTime.of(9, 0), Optional.of(LocalTime.of(18, 0)), List.of()));
        assertThat(hours(1)).isEqualTo(new Hours(LocalTime.of(13, 0), Optional.of(LocalTime.of(18, 0)), afternoon.breaks()));
    }

    @Test
    void breaksAreThoseOfEachDayAndReadBack() {
        document.settle();
        document.edit(HoursEdits.breaks(PlanTyping.breaks("12:30+45, 10:15 + 10 | ")));
        assertThat(hours(0).breaks()).containsExactly(new Break(LocalTime.of(10, 15), 600), new Break(LocalTime.of(12, 30), 2700));
        assertThat(hours(1).breaks()).isEmpty();
        String shown = PlanTyping.breakText(List.of(hours(0).breaks(), hours(1).breaks()));
        assertThat(shown).isEqualTo("10:15+10\u202fmin, 12:30+45\u202fmin | ");
        assertThat(PlanTyping.breaks(shown)).isEqualTo(List.of(hours(0).breaks(), hours(1).breaks()));
        document.undo();
        assertThat(hours(0).breaks()).isEmpty();
    }

    @Test
    void aBreakOutsideItsDayIsRefusedInWords() {
        assertThatThrownBy(() -> document.edit(HoursEdits.breaks(PlanTyping.breaks("8:00+30 |")))).hasMessageContaining("starts before the day does");
        assertThatThrownBy(() -> PlanTyping.breaks("noon")).hasMessageContaining("12:30+45");
    }

    @Test
    void oneDayMayGoWithoutHours() {
        document.edit(HoursEdits.starts(PlanTyping.clocks("9:00 |")));
        assertThat(days().get(1).hours()).isEmpty();
        assertThat(shown()).isEqualTo("09:00 | ");
        assertThatThrownBy(() -> document.edit(HoursEdits.ends(PlanTyping.clocks("17:00 | 18:00")))).hasMessageContaining("start of day first");
    }

    @Test
    void aWrongNumberOfTimesIsRefusedInWords() {
        assertThatThrownBy(() -> document.edit(HoursEdits.starts(PlanTyping.clocks("8:00|9:00|10:00"))))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("2 parted by |");
    }
}
