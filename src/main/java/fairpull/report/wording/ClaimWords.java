package fairpull.report.wording;

import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Measure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How each claim stands, with the figures it was held against. */
public final class ClaimWords {
    private ClaimWords() {
    }

    /** {@return each claim and its standing} */
    public static List<Said> all(Judgement judgement) {
        return judgement.claims().stream().map(standing -> new Said("“" + standing.claim().words() + "”", standing(judgement, standing)))
                .toList();
    }

    /** {@return the measure that a claim is about} */
    public static Optional<Measure> measureOf(Judgement judgement, Claim claim) {
        return judgement.plan().question().measures().stream().filter(measure -> measure.name().equals(claim.measure())).findFirst();
    }

    private static String standing(Judgement judgement, ClaimStanding standing) {
        return standing.claim().speedRadPerS().isPresent() ? atSpeed(judgement, standing) : ofMeasure(judgement, standing);
    }

    private static String atSpeed(Judgement judgement, ClaimStanding standing) {
        Measure measure = judgement.plan().question().deciding();
        double atLeast = measure.unit().differenceFromSi(standing.claim().atLeastSi());
        String claimed = word(standing) + ": at least " + Numbers.given(atLeast, measure.unit().symbol()) + " of gain in "
                + measure.unit().quantity().words() + " at "
                + CurveNumbers.rpm(standing.claim().speedRadPerS().orElseThrow());
        return claimed + standing.against().map(against -> {
            Interval gain = asGain(measure.better(), against.interval());
            Numbers numbers = Numbers.resolving((gain.high() - gain.low()) / 2, measure.unit().symbol());
            return ", held at " + CurveNumbers.rpm(against.speedRadPerS()) + " against a gain of " + CheckWords.ends(numbers, gain) + " ("
                    + (against.namedBefore() ? CheckWords.level(gain) + " of that speed, which was named before the first data"
                    : Numbers.level(gain.level()) + " band for all speeds, as this one was not named before the first data")
                    + ")";
        }).orElse("") + ".";
    }

    private static String word(ClaimStanding standing) {
        return switch (standing.standing()) {
            case SHOWN -> "shown";
            case OPEN -> "open";
            case CONTRADICTED -> "contradicted";
            case NOT_JUDGED -> "not judged, as there is no interval to hold it against";
        };
    }

    private static String ofMeasure(Judgement judgement, ClaimStanding standing) {
        String claimed = measureOf(judgement, standing.claim()).map(measure -> "at least "
                + Numbers.given(measure.unit().differenceFromSi(standing.claim().atLeastSi()), measure.unit().symbol()) + " of gain in "
                + measure.name()).orElse("");
        return word(standing) + ": " + claimed + against(judgement, standing.claim()) + ".";
    }

    private static String against(Judgement judgement, Claim claim) {
        return findings(judgement, claim).findFirst().flatMap(finding -> finding.interval()
                .map(interval -> ", held against a gain of "
                        + CheckWords.ends(Numbers.of(finding), asGain(finding.settings().better(), interval))
                        + " (" + CheckWords.level(interval) + ")")).orElse("");
    }

    private static Stream<Finding> findings(Judgement judgement, Claim claim) {
        Stream<Finding> deciding = judgement.plan().question().deciding().name().equals(claim.measure())
                ? Stream.of(judgement.deciding()) : Stream.empty();
        return Stream.concat(deciding, judgement.secondary().stream()
                .filter(secondary -> secondary.measure().name().equals(claim.measure()))
                .map(Judgement.Secondary::finding));
    }

    private static Interval asGain(Better better, Interval interval) {
        double one = better.gainOf(interval.low());
        double other = better.gainOf(interval.high());
        return new Interval(interval.level(), Math.min(one, other), Math.max(one, other));
    }
}
