package fairpull.ui.page.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.pull.PullId;
import fairpull.domain.running.NextAction;
import fairpull.domain.running.NextAction.CountDown;
import fairpull.domain.running.NextAction.Kind;
import fairpull.report.wording.RunWords;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.LineUnavailableException;
import org.junit.jupiter.api.Test;

/** A tone at the end of a count-down and one where it is too late; a sign that says the same without colour; silence without a device. */
class TonesTest {
    private static final OffsetDateTime DUE = OffsetDateTime.of(2026, 5, 9, 10, 0, 0, 0, ZoneOffset.UTC);

    private static NextAction pull(int number) {
        return new NextAction(Kind.PULL, "A1", Optional.of(new PullId("A1", false, number)), false, Optional.of(DUE),
                Optional.of(DUE.minusSeconds(60)), Optional.of(DUE.plusSeconds(60)));
    }

    private static List<Double> heard(NextAction next, int... seconds) {
        Tones tones = new Tones();
        List<Double> heard = new ArrayList<>();
        for (int second : seconds) {
            tones.at(next, DUE.plusSeconds(second)).ifPresent(heard::add);
        }
        return heard;
    }

    @Test
    void aPullSoundsWhenItsCountDownEndsAndAgainWhenItIsLate() {
        assertThat(heard(pull(1), -100, -61, -60, -1)).isEmpty();
        assertThat(heard(pull(1), -100, -1, 0, 1, 60)).containsExactly(Tones.DUE_HZ);
        assertThat(heard(pull(1), -1, 0, 60, 61, 90)).containsExactly(Tones.DUE_HZ, Tones.LATE_HZ);
        assertThat(heard(pull(1), 90, 100)).as("what was late before the window was opened").isEmpty();
    }

    @Test
    void aPullDoneSoundsNothingAndABreakOrASwapThatEndsDoes() {
        Tones tones = new Tones();
        assertThat(tones.at(pull(1), DUE)).isEmpty();
        assertThat(tones.at(pull(2), DUE.minusSeconds(90))).isEmpty();
        NextAction pause = new NextAction(Kind.BREAK, "A1", pull(2).pull(), false, Optional.of(DUE), Optional.of(DUE), Optional.empty());
        assertThat(tones.at(pause, DUE.minusSeconds(1))).isEmpty();
        assertThat(tones.at(pull(2), DUE)).hasValue(Tones.DUE_HZ);
        assertThat(heard(NextAction.atAnyTime(Kind.SWAP_UNDER_WAY, "B1").dueAt(DUE), -1, 1, 2)).containsExactly(Tones.DUE_HZ);
        assertThat(heard(NextAction.atAnyTime(Kind.SWAP, "B1"), -1, 1)).isEmpty();
    }

    @Test
    void theSignNeedsNoColour() {
        assertThat(List.of(-61, -60, 0, 60, 61)).extracting(second -> pull(1).countDown(DUE.plusSeconds(second)))
                .containsExactly(CountDown.WAIT, CountDown.OPEN, CountDown.DUE, CountDown.DUE, CountDown.LATE);
        assertThat(List.of(-61, -60, 0, 61)).extracting(second -> RunWords.sign(pull(1), DUE.plusSeconds(second)))
                .containsExactly("‖ wait", "▶ now", "▶ now", "■ late");
        NextAction swap = NextAction.atAnyTime(Kind.SWAP_UNDER_WAY, "B1").dueAt(DUE);
        assertThat(RunWords.sign(swap, DUE.minusSeconds(1))).isEqualTo("‖ under way");
        assertThat(RunWords.sign(swap, DUE.plusSeconds(1))).isEqualTo("■ over time");
        assertThat(RunWords.sign(NextAction.atAnyTime(Kind.SWAP, "B1"), DUE)).isEqualTo("▶ when ready");
        assertThat(RunWords.sign(NextAction.atAnyTime(Kind.DONE, ""), DUE)).isEmpty();
    }

    @Test
    void whereThereIsNoDeviceNothingSoundsAndNothingFails() {
        assertThat(Beep.sound(880, format -> {
            throw new LineUnavailableException("taken by another program");
        })).isFalse();
        assertThat(Beep.sound(880, format -> {
            throw new IllegalArgumentException("no line matching");
        })).isFalse();
    }

    @Test
    void theWaveIsOfItsPitchAndDoesNotClick() {
        byte[] wave = Beep.wave(880);
        long rising = java.util.stream.IntStream.range(1, wave.length).filter(k -> wave[k - 1] < 0 && wave[k] >= 0).count();
        double seconds = wave.length / 22_050.0;
        assertThat(rising / seconds).isBetween(860.0, 900.0);
        assertThat(Math.abs(wave[0])).isLessThan((byte) 3);
        assertThat(Math.abs(wave[wave.length - 1])).isLessThan((byte) 3);
    }
}
