package fairpull.domain.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the test is to answer.
 *
 * @param partA the reference state in words
 * @param partB the changed state in words
 * @param deciding the measure that decides, named before the day
 * @param further measures reported beside it
 * @param expectedLevelSi the expected level of the deciding measure under A, through which percent and unit convert
 * @param worthwhileGainSi the smallest gain that matters, as a positive difference of the deciding measure
 * @param sides look for a change either way, or only for a gain
 * @param errorRate how often a change may be announced where there is none
 * @param powerWanted the chance wanted of finding the worthwhile gain
 * @param claims sentences about the gain to be checked against the finding
 */
public record Question(String partA, String partB, Measure deciding, List<Measure> further, OptionalDouble expectedLevelSi,
        OptionalDouble worthwhileGainSi, Sides sides, double errorRate, double powerWanted, List<Claim> claims) {
    public Question {
        Checks.named("part A", partA);
        Checks.named("part B", partB);
        Objects.requireNonNull(deciding, "the deciding measure");
        Objects.requireNonNull(sides, "sides");
        further = List.copyOf(further);
        claims = List.copyOf(claims);
        worthwhileGainSi.ifPresent(gain -> Checks.positive("the worthwhile gain", gain));
        expectedLevelSi.ifPresent(level -> Checks.positive("the expected level", level));
        Checks.inOpenUnitRange("the error rate", errorRate);
        if (errorRate >= 0.5) {
            throw new IllegalArgumentException("the error rate must be below 0.5, was " + errorRate);
        }
        Checks.inOpenUnitRange("the power wanted", powerWanted);
        Set<String> names = new HashSet<>();
        Stream.concat(Stream.of(deciding), further.stream()).map(Measure::name).forEach(name -> {
            if (!names.add(name)) {
                throw new IllegalArgumentException("two measures are named " + name);
            }
        });
        for (Claim claim : claims) {
            if (!names.contains(claim.measure())) {
                throw new IllegalArgumentException("the claim “" + claim.words() + "” is about " + claim.measure()
                        + ", which is not a measure of this plan");
            }
            boolean ofCurve = claim.measure().equals(deciding.name()) && deciding.definition().isReadOffCurve();
            if (claim.speedRadPerS().isPresent() && !ofCurve) {
                throw new IllegalArgumentException("the claim “" + claim.words() + "” is about one engine speed, which needs a deciding "
                        + "measure that is read off a curve over engine speed; take the claim out first, or keep such a measure");
            }
        }
    }

    /** {@return whether a value of the deciding measure is further than half the expected level from it; a typing mistake, more likely} */
    public boolean isFarFromExpected(double si) {
        return expectedLevelSi.isPresent() && Math.abs(si - expectedLevelSi.getAsDouble()) > expectedLevelSi.getAsDouble() / 2;
    }

    /** {@return the deciding measure and the further ones, in this order} */
    public List<Measure> measures() {
        return Stream.concat(Stream.of(deciding), further.stream()).toList();
    }

    /** {@return the same question about other parts} */
    public Question between(String a, String b) {
        return new Question(a, b, deciding, further, expectedLevelSi, worthwhileGainSi, sides, errorRate, powerWanted, claims);
    }

    /** {@return the same question decided by other measures} */
    public Question measuredBy(Measure first, List<Measure> others) {
        return new Question(partA, partB, first, others, expectedLevelSi, worthwhileGainSi, sides, errorRate, powerWanted, claims);
    }

    /** {@return the same question with another expected level} */
    public Question expecting(OptionalDouble levelSi) {
        return new Question(partA, partB, deciding, further, levelSi, worthwhileGainSi, sides, errorRate, powerWanted, claims);
    }

    /** {@return the same question with another worthwhile gain} */
    public Question worth(OptionalDouble gainSi) {
        return new Question(partA, partB, deciding, further, expectedLevelSi, gainSi, sides, errorRate, powerWanted, claims);
    }

    /** {@return the same question looking elsewhere} */
    public Question looking(Sides others) {
        return new Question(partA, partB, deciding, further, expectedLevelSi, worthwhileGainSi, others, errorRate, powerWanted, claims);
    }

    /** {@return the same question with other chances of error and of success} */
    public Question risking(double otherErrorRate, double otherPowerWanted) {
        return new Question(partA, partB, deciding, further, expectedLevelSi, worthwhileGainSi, sides, otherErrorRate,
                otherPowerWanted, claims);
    }

    /** {@return the same question with other claims} */
    public Question claiming(List<Claim> others) {
        return new Question(partA, partB, deciding, further, expectedLevelSi, worthwhileGainSi, sides, errorRate, powerWanted, others);
    }
}
