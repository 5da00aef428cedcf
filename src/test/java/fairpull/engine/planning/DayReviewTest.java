package fairpull.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayFit;
import fairpull.domain.day.Remedy;
import fairpull.domain.day.Remedy.Kind;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.plan.Sides;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** ABABA with five counted and two warm-up pulls: 30 + 5 × 7 × 5 + 4 × 20 = 285 minutes, from 9:00 to 13:45. */
class DayReviewTest {
    @Test
    void aDayThatFitsNeedsNoRemedy() {
        DayFit fit = DayReview.of(plan("ABABA", "13:45", true));

        assertThat(fit.fits()).isTrue();
        assertThat(fit.remedies()).isEmpty();
    }

    @Test
    void saysTheSmallestChangeOfEachKind() {
        DayFit fit = DayReview.of(plan("ABABA", "13:25", true));
        Map<Kind, Sequence> changed = changed(fit);

        // 20 minutes late: one pull in each of five installs is 25 minutes, one install 55
        assertThat(fit.days().get(0).lateS()).isEqualTo(20 * 60);
        assertThat(changed.get(Kind.FEWER_WARM_UPS).installs()).allMatch(install -> install.warmUpPulls() == 1 && install.countedPulls() == 5);
        assertThat(changed.get(Kind.FEWER_PULLS).installs()).allMatch(install -> install.warmUpPulls() == 2 && install.countedPulls() == 4);
        assertThat(changed.get(Kind.FEWER_INSTALLS).letters()).isEqualTo("ABBA");
        assertThat(changed.get(Kind.FEWER_INSTALLS).installs().map(Install::label)).containsExactly("A1", "B1", "B2", "A2");
        assertThat(hours(changed.get(Kind.START_EARLIER)).start()).isEqualTo(LocalTime.of(8, 40));
        assertThat(hours(changed.get(Kind.END_LATER)).end()).contains(LocalTime.of(13, 45));
        assertThat(changed.get(Kind.SECOND_DAY).letters()).isIn("AB|ABA", "ABA|BA");
    }

    @Test
    void everyRemedyFitsAndSaysWhatItCosts() {
        Plan plan = plan("ABABA", "13:00", true);
        DayFit fit = DayReview.of(plan);

        assertThat(fit.remedies()).hasSizeGreaterThanOrEqualTo(4).allSatisfy(remedy -> {
            assertThat(DayClock.of(remedy.sequence())).allMatch(day -> day.lateS() == 0);
            assertThat(remedy.detectableGain()).isEqualTo(PlanSizing.detectableGain(plan, remedy.sequence())).isPresent();
        });
        double planned = fit.detectableGain().orElseThrow();
        assertThat(gain(fit, Kind.FEWER_PULLS)).isGreaterThan(planned);
        assertThat(gain(fit, Kind.FEWER_INSTALLS)).isGreaterThan(gain(fit, Kind.FEWER_PULLS));
        assertThat(gain(fit, Kind.START_EARLIER)).isEqualTo(planned);
        assertThat(gain(fit, Kind.SECOND_DAY)).isGreaterThan(planned);
    }

    @Test
    void aChangeThatCouldNotBeJudgedIsNotOffered() {
        DayFit fit = DayReview.of(plan("ABA", "11:00", true));

        // 175 minutes planned, 120 there: two installs would fit and tell nothing
        assertThat(changed(fit)).doesNotContainKeys(Kind.FEWER_INSTALLS, Kind.SECOND_DAY).containsKey(Kind.END_LATER);
    }

    @Test
    void aChangeThatLosesThePlaceOfALookIsNotOffered() {
        Plan plain = plan("ABABA", "13:25", true);
        Plan looking = new Plan(plain.title(), plain.remark(), plain.question(), plain.analysis(), plain.rig(), plain.sequence(),
                plain.gates(), plain.checklist(), Optional.of(new Looks(Looks.Spending.POCOCK, List.of(3, 5))), plain.curve());

        assertThat(changed(DayReview.of(plain))).containsKey(Kind.FEWER_INSTALLS);
        assertThat(changed(DayReview.of(looking))).doesNotContainKey(Kind.FEWER_INSTALLS).containsKey(Kind.FEWER_PULLS);
    }

    @Test
    void aChangeThatNeverComesBackToAIsNotOffered() {
        assertThat(changed(DayReview.of(plan("ABABA", "11:00", false))).values()).isNotEmpty()
                .allMatch(sequence -> sequence.letters().matches(".*(AB+A|BA+B).*"));
    }

    @Test
    void withoutScatterWhatWouldFitIsSaidWithoutItsCost() {
        DayFit fit = DayReview.of(plan("ABABA", "13:25", false));

        assertThat(fit.detectableGain()).isEmpty();
        assertThat(fit.remedies()).hasSize(6).allMatch(remedy -> remedy.detectableGain().isEmpty());
        assertThat(changed(fit).get(Kind.FEWER_INSTALLS).letters()).isEqualTo("ABBA");
    }

    @Test
    void sizingCountsTheBreaksOfThePlan() {
        Plan plan = plan("ABABA", "13:25", true);
        Hours hours = plan.sequence().sessions().get(0).hours().orElseThrow();
        Hours withBreak = new Hours(hours.start(), Optional.empty(), List.of(new Break(LocalTime.of(12, 0), 2700)));
        Plan paused = plan.with(plan.sequence().withLabelled(List.of(plan.sequence().sessions().get(0).with(withBreak))));

        assertThat(Sizing.size(PlanSizing.question(plan).orElseThrow()).minutes()).isEqualTo(285);
        assertThat(Sizing.size(PlanSizing.question(paused).orElseThrow()).minutes())
                .isEqualTo(DayClock.of(paused.sequence()).get(0).minutes()).isGreaterThan(285 + 40);
    }

    private static double gain(DayFit fit, Kind kind) {
        return fit.remedies().stream().filter(remedy -> remedy.kind() == kind).findFirst().orElseThrow().detectableGain().orElseThrow();
    }

    private static Map<Kind, Sequence> changed(DayFit fit) {
        return fit.remedies().stream().collect(Collectors.toMap(Remedy::kind, Remedy::sequence));
    }

    private static Hours hours(Sequence sequence) {
        return sequence.sessions().get(0).hours().orElseThrow();
    }

    private static Plan plan(String letters, String end, boolean scatter) {
        List<Install> installs = new ArrayList<>();
        int[] numbers = new int[2];
        for (char letter : letters.toCharArray()) {
            Part part = Part.valueOf(String.valueOf(letter));
            installs.add(new Install(letter + String.valueOf(++numbers[part.ordinal()]), part, 5, 2, true));
        }
        Hours hours = new Hours(LocalTime.of(9, 0), Optional.of(LocalTime.parse(end)), List.of());
        Sequence sequence = new Sequence(List.of(new Session("day 1", installs, Optional.of(hours))), Sequence.Origin.CHOSEN,
                OptionalLong.empty(), 300, 1200, 1800);
        Measure measure = new Measure("peak power", new Definition.Peak(Quantity.POWER), Units.KILOWATT, Correction.NONE, Better.MORE);
        Question question = new Question("a", "b", measure, List.of(), OptionalDouble.empty(), OptionalDouble.of(3000), Sides.TWO, 0.05, 0.8,
                List.of());
        Rig rig = new Rig("rig", Rig.Kind.ROLLER_BRAKE, OptionalDouble.empty(), "", OptionalDouble.empty(), List.of(),
                scatter(scatter, 1200), scatter(scatter, 600));
        return new Plan("test", "", question, new Analysis(Drift.NONE, List.of()), rig, sequence, List.of(), List.of());
    }

    private static Optional<Scatter> scatter(boolean known, double watts) {
        return known ? Optional.of(new Scatter(watts, 0, Scatter.Origin.TYPED_IN)) : Optional.empty();
    }
}
