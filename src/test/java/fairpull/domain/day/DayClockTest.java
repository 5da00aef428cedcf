package fairpull.domain.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.domain.day.DayEvent.Kind;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Session;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Days reckoned by hand: two installs of one warm-up and two counted pulls, five minutes each, a swap of twenty, a set-up of thirty. */
class DayClockTest {
    private static final Pace PACE = new Pace(300, 1200, 1800);
    private static final List<Install> INSTALLS =
            List.of(new Install("A1", Part.A, 2, 1, true), new Install("B1", Part.B, 2, 1, true));

    @Test
    void withoutHoursTimesCountFromTheStart() {
        DayClock day = DayClock.of(new Session("day 1", INSTALLS), PACE);

        assertThat(words(day)).containsExactly("SET_UP A1 0 0-30", "WARM_UP A1 1 30-35", "PULL A1 1 35-40", "PULL A1 2 40-45",
                "SWAP B1 0 45-65", "WARM_UP B1 1 65-70", "PULL B1 1 70-75", "PULL B1 2 75-80");
        assertThat(day.minutes()).isEqualTo(80);
        assertThat(day.lateS()).isZero();
        assertThat(day.installs()).containsExactly(new DayClock.Span("A1", 1800, 2700), new DayClock.Span("B1", 3900, 4800));
    }

    @Test
    void aSwapStopsForABreakAndIsTakenUpAgain() {
        DayClock day = day(hours("9:00", "10:30", "09:50+30"));

        // the swap has run five of its twenty minutes at 9:50, the other fifteen follow at 10:20
        assertThat(words(day)).containsExactly("SET_UP A1 0 540-570", "WARM_UP A1 1 570-575", "PULL A1 1 575-580", "PULL A1 2 580-585",
                "SWAP B1 0 585-590", "BREAK B1 0 590-620", "SWAP B1 0 620-635", "WARM_UP B1 1 635-640", "PULL B1 1 640-645",
                "PULL B1 2 645-650");
        assertThat(day.lateS()).isEqualTo(20 * 60);
        assertThat(day.minutes()).isEqualTo(110);
        assertThat(day.breaksWithinInstalls()).isEmpty();
    }

    @Test
    void noPullStartsInABreakButACoolDownRunsOnThroughIt() {
        DayClock day = day(hours("9:00", "12:00", "09:37+10"));

        // the pull of 9:35 is over long before its interval is: the next starts when the break ends, at 9:47
        assertThat(words(day)).startsWith("SET_UP A1 0 540-570", "WARM_UP A1 1 570-575", "PULL A1 1 575-580", "BREAK A1 0 577-587",
                "PULL A1 2 587-592", "SWAP B1 0 592-612");
        assertThat(day.breaksWithinInstalls()).extracting(DayEvent::install).containsExactly("A1");
    }

    @Test
    void aBreakShorterThanTheCoolDownCostsNothing() {
        assertThat(day(hours("9:00", "12:00", "09:36+2")).minutes()).isEqualTo(80);
    }

    @Test
    void aBreakAtTheEndOfAnInstallComesBeforeTheSwapAndCoolsNoPull() {
        DayClock day = day(hours("9:00", "12:00", "09:45+30"));

        assertThat(words(day)).contains("BREAK B1 0 585-615", "SWAP B1 0 615-635");
        assertThat(day.breaksWithinInstalls()).isEmpty();
    }

    @Test
    void aBreakAfterTheLastPullIsNotWaitedFor() {
        assertThat(day(hours("9:00", "12:00", "10:20+30")).finishS()).isEqualTo(620 * 60);
    }

    @Test
    void hoursThatContradictThemselvesCannotBeBuilt() {
        assertThatThrownBy(() -> hours("9:00", "9:00")).hasMessageContaining("not after its start");
        assertThatThrownBy(() -> hours("9:00", "17:00", "08:00+30")).hasMessageContaining("08:00");
        assertThatThrownBy(() -> hours("9:00", "17:00", "12:00+30", "12:20+30")).hasMessageContaining("12:20");
        assertThatThrownBy(() -> hours("9:00", "17:00", "16:50+30")).hasMessageContaining("beyond the end of day");
    }

    private static DayClock day(Hours hours) {
        return DayClock.of(new Session("day 1", INSTALLS, Optional.of(hours)), PACE);
    }

    private static Hours hours(String start, String end, String... breaks) {
        return new Hours(time(start), Optional.of(time(end)), List.of(breaks).stream()
                .map(text -> new Break(time(text.split("\\+")[0]), 60 * Double.parseDouble(text.split("\\+")[1]))).toList());
    }

    private static LocalTime time(String text) {
        return LocalTime.parse(text.length() < 5 ? "0" + text : text);
    }

    private static List<String> words(DayClock day) {
        return day.events().stream().map(event -> event.kind() + " " + event.install() + " " + event.number() + " "
                + Math.round(event.startS() / 60) + "-" + Math.round(event.endS() / 60)).toList();
    }

    @Test
    void onlyPullsAreDriven() {
        assertThat(List.of(Kind.values()).stream().filter(Kind::isPull)).containsExactly(Kind.WARM_UP, Kind.PULL);
    }
}
