package fairpull.report.wording;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Sides;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.domain.proof.ProofQuestion.LookLevel;
import fairpull.domain.proof.Share;
import fairpull.domain.proof.Tally;
import fairpull.domain.proof.Truth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a simulated plan showed. */
public final class ProofWords {
    /** So many standard errors beyond what was asked for are more than chance. */
    private static final double BEYOND_CHANCE = 3;

    private ProofWords() {
    }

    /** {@return the answer as a paragraph} */
    public static String paragraph(ProofQuestion question, ProofAnswer answer, String order, String unit) {
        List<String> sentences = new ArrayList<>();
        Truth truth = question.truth();
        sentences.add(String.format(Locale.ROOT, "%,d", question.campaigns()) + " simulated campaigns of " + order + ", judged "
                + mode(question.settings()) + " (seed " + question.seed() + ").");
        sentences.add("True scatter: pulls " + Numbers.given(truth.pullScatter(), unit) + ", refits "
                + Numbers.given(truth.refitScatter(), unit) + (truth.drawn() ? ", each drawn anew for every campaign from what its record "
                + "leaves open" : "") + "." + conditions(truth, unit));
        if (answer.noChange().notJudged() == answer.noChange().campaigns()) {
            sentences.add("None of them could be judged: there are too few installs for refit scatter to show, and no rig record.");
            return String.join(" ", sentences);
        }
        sentences.add("With no change a " + (question.settings().sides() == Sides.ONE ? "gain" : "change") + " was announced in "
                + share(answer.errorRate()) + " of them; at most " + Numbers.percent(asked(question)) + " was asked for.");
        sentences.add("A true gain of " + Numbers.given(truth.gain(), unit) + " was found in " + share(answer.power()) + ".");
        sentences.add("The last interval held it in " + share(answer.coverage()) + "; at least " + Numbers.percent(1 - asked(question))
                + " was asked for.");
        if (question.settings().worthwhileGain().isPresent()) {
            sentences.add("“No difference that matters” was said in " + share(answer.noChange().share(answer.noChange().noDifference()))
                    + " of the campaigns without a change, and in " + share(answer.withGain().share(answer.withGain().noDifference()))
                    + " of those with the gain.");
        }
        if (question.looks().size() > 1) {
            sentences.add(looks(question, answer));
        }
        sentences.add("The figure after ± is the standard error of the simulation.");
        return String.join(" ", sentences);
    }

    /** {@return the three figures by name, each with the standard error of the simulation; none where nothing could be judged} */
    public static Map<String, String> figures(ProofAnswer answer) {
        Map<String, String> figures = new LinkedHashMap<>();
        if (answer.noChange().notJudged() < answer.noChange().campaigns()) {
            figures.put("Error rate", share(answer.errorRate()));
            figures.put("Power", share(answer.power()));
            figures.put("Coverage", share(answer.coverage()));
        }
        return figures;
    }

    private static double asked(ProofQuestion question) {
        return question.settings().errorRate();
    }

    private static String mode(JudgeSettings settings) {
        return settings.refitRecord().isPresent() || settings.pullRecord().isPresent() ? "with a rig record" : "by their own data";
    }

    private static String conditions(Truth truth, String unit) {
        List<String> also = new ArrayList<>();
        if (truth.driftPerHour() != 0) {
            also.add("a drift of " + Numbers.given(truth.driftPerHour(), unit) + " an hour");
        }
        if (truth.outlierShare() > 0) {
            also.add(Numbers.percent(truth.outlierShare()) + " of the pulls off by " + Numbers.given(truth.outlierSize(), unit)
                    + ", up or down");
        }
        if (truth.autocorrelation() != 0) {
            also.add("neighbouring pulls correlated by " + Numbers.given(truth.autocorrelation()));
        }
        return also.isEmpty() ? "" : " Also: " + String.join("; ", also) + ".";
    }

    private static String looks(ProofQuestion question, ProofAnswer answer) {
        List<String> stops = new ArrayList<>();
        for (int k = 0; k < question.looks().size(); k++) {
            LookLevel look = question.looks().get(k);
            stops.add("after " + look.afterInstalls() + " installs (level " + LookWords.level(look.level()) + ") in "
                    + Numbers.chance(answer.noChange().share(answer.noChange().stoppedAt().get(k)).value()) + " and "
                    + Numbers.chance(answer.withGain().share(answer.withGain().stoppedAt().get(k)).value()));
        }
        return "Campaigns without a change and with the gain ended " + String.join(", ", stops) + ": on average "
                + Numbers.given(Math.round(10 * installs(question, answer.noChange())) / 10.0) + " and "
                + Numbers.given(Math.round(10 * installs(question, answer.withGain())) / 10.0) + " installs.";
    }

    private static double installs(ProofQuestion question, Tally tally) {
        double sum = 0;
        for (int k = 0; k < question.looks().size(); k++) {
            sum += (double) question.looks().get(k).afterInstalls() * tally.stoppedAt().get(k) / tally.campaigns();
        }
        return sum;
    }

    /** {@return what a reader of the figures must know} */
    public static List<String> warnings(ProofQuestion question, ProofAnswer answer) {
        List<String> warnings = new ArrayList<>();
        Share error = answer.errorRate();
        if (error.value() > asked(question) + BEYOND_CHANCE * error.standardError()) {
            warnings.add("More changes that are none are announced than asked for"
                    + (question.looks().size() > 1 && question.settings().refitRecord().isEmpty()
                    ? "; bounds for looks are worked out for known scatter and kept only nearly with few degrees of freedom." : "."));
        }
        Share coverage = answer.coverage();
        boolean someJudged = answer.noChange().notJudged() < answer.noChange().campaigns();
        if (someJudged && coverage.value() < 1 - asked(question) - BEYOND_CHANCE * coverage.standardError()) {
            warnings.add("The interval holds the true gain less often than asked for.");
        }
        if (someJudged && answer.noChange().notJudged() > 0) {
            warnings.add("Of the campaigns without a change, " + share(answer.noChange().share(answer.noChange().notJudged()))
                    + " could not be judged; coverage is counted among the others.");
        }
        return warnings;
    }

    /** A share in percent with its standard error: two digits of that. */
    private static String share(Share share) {
        if (share.count() == 0) {
            return "none";
        }
        if (share.count() == share.of()) {
            return "all";
        }
        Numbers numbers = Numbers.resolving(100 * share.standardError(), "");
        return numbers.bare(100 * share.value()) + Numbers.THIN + "% ± " + numbers.bare(100 * share.standardError()) + Numbers.THIN + "%";
    }
}
