package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Undisclosed;
import fairpull.domain.audit.Undisclosed.Item;
import fairpull.io.json.PublicationJson;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is not disclosed, by how much it could matter, against figures reckoned by hand for 200 hp. */
class DisclosureTest {
    private static final double HP = 745.69987;

    @Test
    void whatCouldMoveTheFigureFurthestStandsFirst() {
        List<Undisclosed> missing = missing("");

        assertThat(missing).extracting(Undisclosed::item).containsExactly(Item.RETURN, Item.OTHER_CHANGES, Item.CORRECTIONS, Item.RIG,
                Item.BAROMETERS, Item.SCATTER, Item.DAY, Item.STRAP_DOWN, Item.NAMED_BEFORE, Item.PULLS, Item.SMOOTHING,
                Item.ENGINE_SPEED);
        assertThat(missing.subList(0, 2)).as("they bar a claim from being shown").allMatch(gap -> gap.moves().isEmpty());
        assertThat(missing.subList(10, 12)).allMatch(gap -> gap.moves().isEmpty());
    }

    /**
     * One standard deviation of single pulls is 0.7 % · √2 · 200 hp = 1.980 hp; with a strap-down √(1.980² + 2·2²) = 3.453 hp, on another
     * day too √(1.980² + 4·2²) = 4.463 hp; at the most plausible scatter of pulls 1.6 % · √2 · 200 hp = 4.525 hp; each times 1.960. Corrections:
     * 15.97 %, the air of two days that is not corrected for (RangeOfAirTest); another rig: 10 %.
     */
    @Test
    void sizesAreThoseOfTheInterval() {
        assertThat(moves(missing(""), Item.RIG)).isCloseTo(20, within(1e-6));
        assertThat(moves(missing(""), Item.CORRECTIONS)).isCloseTo(31.94, within(0.1));
        assertThat(moves(missing(""), Item.STRAP_DOWN)).isCloseTo(1.96 * (3.453 - 1.980), within(0.01));
        assertThat(moves(missing(""), Item.DAY)).isCloseTo(1.96 * (4.463 - 1.980), within(0.01));
        assertThat(moves(missing(""), Item.SCATTER)).isCloseTo(1.96 * (4.525 - 1.980), within(0.01));
    }

    @Test
    void anotherDayAloneCountsWhereTheStrapsAreSaidToHaveStayed() {
        List<Undisclosed> missing = missing("\"strapDown\": \"same\"");

        assertThat(moves(missing, Item.DAY)).isCloseTo(1.96 * (3.453 - 1.980), within(0.01));
    }

    @Test
    void whatIsDisclosedIsNotListedWhateverItIs() {
        assertThat(missing("\"rig\": \"different\", \"day\": \"same\", \"returned\": \"no\"")).extracting(Undisclosed::item)
                .containsExactly(Item.OTHER_CHANGES, Item.CORRECTIONS, Item.BAROMETERS, Item.SCATTER, Item.STRAP_DOWN, Item.NAMED_BEFORE,
                        Item.PULLS, Item.SMOOTHING, Item.ENGINE_SPEED);
        assertThat(missing("\"correctionBefore\": \"sae-j1349\"")).extracting(Undisclosed::item).contains(Item.CORRECTIONS);
        assertThat(missing("\"correctionBefore\": \"none\", \"correctionAfter\": \"none\"")).extracting(Undisclosed::item)
                .doesNotContain(Item.CORRECTIONS);
    }

    /**
     * Only no correction reads above SAE J607, and that in dense air alone: at 5 °C, with 5 hPa of 1002.2 hPa in vapour, its factor is
     * (1013.2 ÷ 997.2)·√(278.15 ÷ 288.71) = 0.9973. Half a disclosure may be nearly a whole one.
     */
    @Test
    void aStandardThatHardlyAnythingReadsAboveLeavesLittleOpen() {
        assertThat(moves(missing("\"correctionBefore\": \"sae-j607\""), Item.CORRECTIONS)).isCloseTo(200 * 0.0027, within(0.03));
    }

    /** An order of several installs, and nothing said of the pulls: the worst of them are fewer than the installs. */
    @Test
    void anOrderWithoutPullsIsReckonedToo() {
        assertThat(moves(missing("\"order\": \"ABABA\""), Item.PULLS)).isPositive();
    }

    @Test
    void withoutScatterOfSuchAFigureNothingHasASize() {
        Publication capacity = publication("1.0 W·h", "1.1 W·h", "");

        assertThat(Disclosure.missing(capacity, 3)).extracting(Undisclosed::item)
                .containsExactly(Item.RETURN, Item.OTHER_CHANGES, Item.NAMED_BEFORE);
        assertThat(Disclosure.missing(capacity, 3)).allMatch(gap -> gap.moves().isEmpty());
    }

    /** What is about power and torque alone is not missed of anything else: no air, strap-down, smoothing, engine speed. */
    @Test
    void ofATimeOnlyWhatMattersToATimeIsMissed() {
        assertThat(Disclosure.missing(publication("14.9 s", "14.6 s", ""), 3)).extracting(Undisclosed::item)
                .containsExactly(Item.RETURN, Item.OTHER_CHANGES, Item.NAMED_BEFORE);
    }

    private static double moves(List<Undisclosed> missing, Item item) {
        return missing.stream().filter(gap -> gap.item() == item).findFirst().orElseThrow().moves().orElseThrow() / HP;
    }

    private static List<Undisclosed> missing(String procedure) {
        return Disclosure.missing(publication("200.000 hp", "203.000 hp", procedure), 3.3);
    }

    private static Publication publication(String before, String after, String procedure) {
        return PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "%s", "after": "%s"}],
                 "procedure": {%s}, "claims": []}
                """.formatted(before, after, procedure), "simulated");
    }
}
