package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class SizeWordsTest {
    private static final SizeQuestion QUESTION = new SizeQuestion("ABABA", 5, 2, 1.2, 0, 0.6, 0, 3, 0.8, 0.05, Sides.TWO, Drift.NONE,
            new SizeQuestion.Clock(5, 20, 30));

    @Test
    void whatASequenceSeesAndWhatWouldReachTheGoal() {
        SizeAnswer answer = new SizeAnswer(OptionalDouble.of(0.61), OptionalDouble.of(3.84), OptionalDouble.of(0.9), OptionalDouble.of(3),
                275, OptionalDouble.of(2.43), 0.1, OptionalInt.of(9), OptionalInt.of(7));

        assertThat(words(answer)).isEqualTo("ABABA with 5 counted pulls per install takes 4 h 35 min. A true gain of 3 hp is found with a "
                + "chance of 61 % (error rate 5 %, two-sided); with the chance wanted, 80 %, the smallest gain found is 3.8 hp. "
                + "More pulls per install cannot bring that below 2.4 hp: refit scatter stays, however many pulls are averaged. "
                + "To reach a chance of 80 % for 3 hp: 9 counted pulls per install in this order; 7 installs alternating A B A … with these pulls. "
                + "If the order is drawn, a randomisation test could reach p = 0.10 at best, which is not below the error rate: with so few "
                + "orders it cannot decide alone.");
    }

    @Test
    void aGoalThatIsReached() {
        SizeAnswer answer = new SizeAnswer(OptionalDouble.of(0.93), OptionalDouble.of(2.5), OptionalDouble.of(0.7), OptionalDouble.of(5),
                275, OptionalDouble.of(2.1), 0.01, OptionalInt.of(3), OptionalInt.of(5));

        assertThat(words(answer)).contains("That reaches what was asked for, a chance of 80 % for 3 hp; 3 counted pulls per install would do.")
                .contains("p = 0.010 at best.");
    }

    @Test
    void aGoalOutOfReach() {
        SizeAnswer answer = new SizeAnswer(OptionalDouble.of(0.2), OptionalDouble.empty(), OptionalDouble.of(2), OptionalDouble.of(1), 95,
                OptionalDouble.empty(), 0.33, OptionalInt.empty(), OptionalInt.empty());

        assertThat(words(answer)).contains("no number of pulls up to 100").contains("no number of installs up to 30");
    }

    @Test
    void aSequenceThatCannotBeJudged() {
        SizeAnswer answer = new SizeAnswer(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                70, OptionalDouble.empty(), 1, OptionalInt.empty(), OptionalInt.of(5));

        assertThat(words(answer)).contains("It cannot be judged from its own data").contains("5 installs alternating");
    }

    private static String words(SizeAnswer answer) {
        return SizeWords.paragraph(QUESTION, answer, "hp").replace('\u202f', ' ').replace('\u00a0', ' ');
    }
}
