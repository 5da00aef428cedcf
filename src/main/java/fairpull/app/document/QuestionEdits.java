package fairpull.app.document;

import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Sides;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Unit;
import fairpull.report.wording.Numbers;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Edits of what the test is to answer. */
public final class QuestionEdits {
    private static final String AT_LEAST = "at least ";

    private QuestionEdits() {
    }

    /** {@return an edit of the title} */
    public static Edit title(String title) {
        return Edit.typing("title", "title", plan -> plan.titled(title));
    }

    /** {@return an edit of the remark} */
    public static Edit remark(String remark) {
        return Edit.typing("remark", "remark", plan -> plan.remarked(remark));
    }

    /** {@return an edit of part A} */
    public static Edit partA(String words) {
        return of("part A", question -> question.between(words, question.partB()));
    }

    /** {@return an edit of part B} */
    public static Edit partB(String words) {
        return of("part B", question -> question.between(question.partA(), words));
    }

    /**
     * An edit of the deciding measure. Levels, gains and scatter of another quantity mean nothing and are dropped, and so are claims
     * about the old one.
     *
     * @param measure the measure that decides
     * @return the edit
     */
    public static Edit deciding(Measure measure) {
        return Edit.typing("deciding measure", "deciding measure", plan -> {
            Question old = plan.question();
            boolean sameQuantity = old.deciding().unit().quantity() == measure.unit().quantity();
            List<Claim> claims = old.claims().stream().filter(claim -> !claim.measure().equals(old.deciding().name()) || sameQuantity)
                    .map(claim -> claim.measure().equals(old.deciding().name())
                            ? about(measure, claim, old.deciding().unit()) : claim).toList();
            Question bare = old.claiming(List.of()).measuredBy(measure, old.further());
            Question kept = sameQuantity ? bare : bare.expecting(OptionalDouble.empty()).worth(OptionalDouble.empty());
            Plan next = plan.with(kept.claiming(claims));
            return sameQuantity ? next : next.with(RigEdits.withoutScatter(next.rig()));
        });
    }

    /** A claim keeps its bound; where its words name it in the unit of the old measure, they name it in the new one. */
    private static Claim about(Measure measure, Claim claim, Unit before) {
        Unit now = measure.unit();
        boolean named = claim.words().startsWith(AT_LEAST)
                && Amount.parse(claim.words().substring(AT_LEAST.length())).filter(amount -> amount.unit().equals(before)).isPresent();
        String words = named && !now.equals(before)
                ? AT_LEAST + new Amount(Double.parseDouble(Numbers.given(now.differenceFromSi(claim.atLeastSi()))), now).words()
                : claim.words();
        return new Claim(words, measure.name(), claim.atLeastSi(), claim.speedRadPerS());
    }

    /** {@return an edit of the measures beside the deciding one} */
    public static Edit further(List<Measure> measures) {
        return of("further measures", question -> question.measuredBy(question.deciding(), measures));
    }

    /** {@return an edit of the level that is expected under A} */
    public static Edit expected(OptionalDouble levelSi) {
        return of("expected level", question -> question.expecting(levelSi));
    }

    /** {@return an edit of the smallest gain that matters} */
    public static Edit worthwhile(OptionalDouble gainSi) {
        return of("worthwhile gain", question -> question.worth(gainSi));
    }

    /** {@return an edit of the sides that are looked at} */
    public static Edit sides(Sides sides) {
        return of("sides", question -> question.looking(sides));
    }

    /** {@return an edit of the error rate} */
    public static Edit errorRate(double errorRate) {
        return of("error rate", question -> question.risking(errorRate, question.powerWanted()));
    }

    /** {@return an edit of the power wanted} */
    public static Edit powerWanted(double powerWanted) {
        return of("power wanted", question -> question.risking(question.errorRate(), powerWanted));
    }

    /** {@return an edit of the claims} */
    public static Edit claims(List<Claim> claims) {
        return of("claims", question -> question.claiming(claims));
    }

    private static Edit of(String field, UnaryOperator<Question> change) {
        return Edit.typing(field, field, plan -> plan.with(change.apply(plan.question())));
    }
}
