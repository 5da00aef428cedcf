package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.audit.Grade;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.ScatterShares;
import fairpull.engine.audit.Grading.Pair;
import fairpull.engine.stats.Deviates;
import fairpull.io.json.PublicationJson;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Simulated publications of an unchanged car: how often a gain is graded “shown”. Scatter of pulls, strap-downs and days is drawn anywhere
 * within the plausible range, or is at its high end; the part is always fitted anew, so that refit scatter counts in full. What a
 * publication keeps to itself was done in the worst way that the method takes for plausible.
 */
class GradingSharesTest {
    private static final double LEVEL = 200;
    private static final long SEED = 20261;
    private static final double MOST = 0.05;
    private static final int SPEEDS = 81;

    /** What a publication says of itself, and what was done. */
    private enum Manner {
        SINGLE_PULLS("single", "single", "same", 1, 1, ""),
        MEANS("mean of 3", "mean of 5", "same", 3, 5, ""),
        BEST_AGAINST_SINGLE("single", "best of 5", "same", 1, 5, ""),
        BEST_AGAINST_BEST("best of 2", "best of 5", "same", 2, 5, ""),
        OTHER_DAY("single", "single", "different", 1, 1, ""),
        SILENT_ON_PULLS("", "", "same", 1, 5, ""),
        SILENT_ON_DAY_AND_STRAPS("single", "single", "", 1, 1, "day"),
        SILENT_ON_STANDARDS("single", "single", "same", 1, 1, "standards"),
        SILENT_ON_BAROMETERS("single", "single", "different", 1, 1, "barometers"),
        SILENT_ON_RIG("single", "single", "same", 1, 1, "rig"),
        UNCORRECTED_DAYS("single", "single", "different", 1, 1, "corrected");

        private final String quotedBefore;
        private final String quotedAfter;
        private final String day;
        private final int before;
        private final int after;
        private final String silent;

        Manner(String quotedBefore, String quotedAfter, String day, int before, int after, String silent) {
            this.quotedBefore = quotedBefore;
            this.quotedAfter = quotedAfter;
            this.day = day;
            this.before = before;
            this.after = after;
            this.silent = silent;
        }

        private boolean isMean() {
            return quotedBefore.startsWith("mean");
        }

        private Procedure procedure() {
            return GradingSharesTest.procedure(quotedBefore, quotedAfter, day, silent, "yes");
        }
    }

    /** What a publication of a picked speed says of its pulls, and what was done: pull and speed are those of the largest difference. */
    private enum Picked {
        SPEED_OF_SINGLE_PULLS("single", "single", 1, 1, "no"),
        SPEED_OF_BEST_AGAINST_SINGLE("single", "best of 5", 1, 5, "no"),
        SPEED_OF_BEST_AGAINST_BEST("best of 2", "best of 5", 2, 5, "no"),
        SILENT_ON_BOTH("", "", 1, 5, "");

        private final String quotedBefore;
        private final String quotedAfter;
        private final int before;
        private final int after;
        private final String named;

        Picked(String quotedBefore, String quotedAfter, int before, int after, String named) {
            this.quotedBefore = quotedBefore;
            this.quotedAfter = quotedAfter;
            this.before = before;
            this.after = after;
            this.named = named;
        }

        private Procedure procedure() {
            return GradingSharesTest.procedure(quotedBefore, quotedAfter, "same", "", named);
        }
    }

    /** How the differences along a sweep of 81 speeds, 50 rpm apart, hang together; none of them as the method has it. */
    private enum Curves {
        WHITE(1, 0), BOX_200_RPM(4, 0), BOX_400_RPM(8, 0), BOX_800_RPM(16, 0), DECAY_100_RPM(0, 100), DECAY_200_RPM(0, 200),
        DECAY_400_RPM(0, 400), DECAY_800_RPM(0, 800);

        private final int box;
        private final double decay;

        Curves(int box, double decay) {
            this.box = box;
            this.decay = decay;
        }

        /** A curve of unit variance: a moving average of white noise, or an autoregression of first order, e^(−δ/ℓ). */
        private double[] draw(Deviates deviates) {
            double[] curve = new double[SPEEDS];
            if (box > 0) {
                double[] noise = new double[SPEEDS + box - 1];
                for (int k = 0; k < noise.length; k++) {
                    noise[k] = deviates.normal();
                }
                for (int k = 0; k < SPEEDS; k++) {
                    for (int j = 0; j < box; j++) {
                        curve[k] += noise[k + j] / Math.sqrt(box);
                    }
                }
                return curve;
            }
            double share = Math.exp(-50 / decay);
            curve[0] = deviates.normal();
            for (int k = 1; k < SPEEDS; k++) {
                curve[k] = share * curve[k - 1] + Math.sqrt(1 - share * share) * deviates.normal();
            }
            return curve;
        }
    }

    @ParameterizedTest
    @EnumSource(Manner.class)
    void anUnchangedCarIsHardlyEverShownToHaveGained(Manner manner) {
        assertThat(shown(manner, false, 300)).isLessThan(MOST);
    }

    @ParameterizedTest
    @EnumSource(Curves.class)
    void norWhereTheBestSpeedWasPicked(Curves curves) {
        assertThat(shown(Picked.SPEED_OF_SINGLE_PULLS, curves, false, 300)).isLessThan(MOST);
    }

    @ParameterizedTest
    @EnumSource(Picked.class)
    void norWhereTheBestPullWasPickedAsWell(Picked picked) {
        assertThat(shown(picked, Curves.DECAY_100_RPM, false, 300)).isLessThan(MOST);
    }

    /** Seed 20261, 1500 publications a manner and an amount of scatter. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Manner.class)
    void norInManyMorePublications(Manner manner) {
        report(manner.name(), shown(manner, false, 1500), shown(manner, true, 1500));
    }

    /** Seed 20261, 1500 publications a manner, a kind of curve and an amount of scatter. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Picked.class)
    void norInManyMorePickedSpeeds(Picked picked) {
        for (Curves curves : Curves.values()) {
            report(picked + ", " + curves, shown(picked, curves, false, 1500), shown(picked, curves, true, 1500));
        }
    }

    private static void report(String manner, double anywhere, double highEnd) {
        System.out.printf("%-46s scatter anywhere %.2f %%, at the high end %.2f %%%n", manner, 100 * anywhere, 100 * highEnd);
        assertThat(anywhere).isLessThan(MOST);
        assertThat(highEnd).isLessThan(MOST);
    }

    private static double shown(Manner manner, boolean highEnd, int publications) {
        Deviates deviates = new Deviates(SEED);
        Procedure procedure = manner.procedure();
        int shown = 0;
        for (int k = 0; k < publications; k++) {
            ScatterShares scatter = scatter(highEnd, deviates);
            boolean otherDay = manner.silent.equals("day") || manner.day.equals("different");
            double difference = scatter.pull() * (quoted(manner.isMean(), manner.after, deviates) - quoted(manner.isMean(), manner.before,
                    deviates)) + Math.sqrt(2) * (scatter.refit() * deviates.normal() + (otherDay ? scatter.day() * deviates.normal() : 0))
                    + shift(manner, deviates);
            shown += isShown(LEVEL * difference, procedure, Assumptions.oneFigure());
        }
        return (double) shown / publications;
    }

    /** What was not disclosed makes of an unchanged car, in air drawn anew for each publication. */
    private static double shift(Manner manner, Deviates deviates) {
        return switch (manner) {
            case SILENT_ON_STANDARDS -> j607(air(deviates)) - 1;
            case SILENT_ON_BAROMETERS -> reducedToSeaLevel(air(deviates));
            case SILENT_ON_RIG -> between(-0.10, 0.10, deviates);
            case UNCORRECTED_DAYS -> j1349(air(deviates)) / j1349(air(deviates)) - 1;
            default -> 0;
        };
    }

    /** Temperature, pressure and vapour at about 300 m, from a cold day to a hot one. */
    private static double[] air(Deviates deviates) {
        double warm = deviates.uniform();
        return new double[] {278.15 + 30 * warm, between(95_300, 100_200, deviates), 500 + 2_300 * warm};
    }

    /** SAE J1349: 1.18·(990 hPa ÷ p_dry)·√(T ÷ 298.15 K) − 0.18. */
    private static double j1349(double... air) {
        return 1.18 * (99_000 / (air[1] - air[2])) * Math.sqrt(air[0] / 298.15) - 0.18;
    }

    /** SAE J607: (1013.25 hPa ÷ p_dry)·√(T ÷ 288.71 K), the reference of 29.92 inHg and 60 °F. */
    private static double j607(double... air) {
        return 101_325 / (air[1] - air[2]) * Math.sqrt(air[0] / 288.71);
    }

    /** A pressure 35.5 hPa higher before: 300 m of standard atmosphere. */
    private static double reducedToSeaLevel(double... air) {
        return j1349(air) / j1349(air[0], air[1] + 3_550, air[2]) - 1;
    }

    private static double shown(Picked picked, Curves curves, boolean highEnd, int publications) {
        Deviates deviates = new Deviates(SEED);
        Procedure procedure = picked.procedure();
        double critical = PickedSpeed.criticalValue(PickedSpeed.SWEEP_RPM, PickedSpeed.CORRELATION_LENGTH_RPM);
        int shown = 0;
        for (int k = 0; k < publications; k++) {
            ScatterShares scatter = scatter(highEnd, deviates);
            double[] before = envelope(curves, picked.before, deviates);
            double[] after = envelope(curves, picked.after, deviates);
            double[] refits = curves.draw(deviates);
            double largest = Double.NEGATIVE_INFINITY;
            for (int speed = 0; speed < SPEEDS; speed++) {
                largest = Math.max(largest, scatter.pull() * (after[speed] - before[speed])
                        + Math.sqrt(2) * scatter.refit() * refits[speed]);
            }
            shown += isShown(LEVEL * largest, procedure, critical);
        }
        return (double) shown / publications;
    }

    /** The best of several pulls at each speed, so that pull and speed are picked together. */
    private static double[] envelope(Curves curves, int pulls, Deviates deviates) {
        double[] best = curves.draw(deviates);
        for (int pull = 1; pull < pulls; pull++) {
            double[] next = curves.draw(deviates);
            for (int speed = 0; speed < SPEEDS; speed++) {
                best[speed] = Math.max(best[speed], next[speed]);
            }
        }
        return best;
    }

    private static int isShown(double difference, Procedure procedure, double critical) {
        return Grading.grade(new Pair(difference, LEVEL, 0.05), 0, procedure, critical).grade() == Grade.SHOWN ? 1 : 0;
    }

    private static ScatterShares scatter(boolean highEnd, Deviates deviates) {
        return highEnd ? ScatterShares.MOST : new ScatterShares(between(ScatterShares.LEAST.pull(), ScatterShares.MOST.pull(), deviates),
                between(ScatterShares.LEAST.refit(), ScatterShares.MOST.refit(), deviates),
                between(ScatterShares.LEAST.day(), ScatterShares.MOST.day(), deviates));
    }

    private static double between(double least, double most, Deviates deviates) {
        return least + (most - least) * deviates.uniform();
    }

    private static double quoted(boolean mean, int pulls, Deviates deviates) {
        double best = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int pull = 0; pull < pulls; pull++) {
            double value = deviates.normal();
            best = Math.max(best, value);
            sum += value;
        }
        return mean ? sum / pulls : best;
    }

    /** What is given as an empty text is not disclosed. */
    private static Procedure procedure(String before, String after, String day, String silent, String named) {
        String standard = silent.equals("standards") ? "" : silent.equals("corrected") ? "none" : "sae-j1349";
        String rig = silent.equals("rig") ? "" : "same";
        String barometer = silent.equals("barometers") ? "" : "station";
        return PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "1 hp", "after": "1 hp"}],
                 "procedure": {%s %s "rig": "%s", "strapDown": "%s", "day": "%s", "correctionBefore": "%s", "correctionAfter": "%s",
                 "barometerBefore": "%s", "barometerAfter": "%s", "allElse": "same", "namedBefore": "%s", "returned": "yes"}, "claims": []}
                """.formatted(quote("Before", before), quote("After", after), rig, day, day, standard, standard, barometer,
                barometer, named), "simulated").procedure();
    }

    private static String quote(String which, String words) {
        if (words.isEmpty()) {
            return "";
        }
        String[] parts = words.split(" of ");
        String pulls = parts.length == 1 ? "1" : parts[1];
        return "\"quoted%s\": \"%s\", \"pulls%s\": \"%s\",".formatted(which, parts[0], which, pulls);
    }
}
