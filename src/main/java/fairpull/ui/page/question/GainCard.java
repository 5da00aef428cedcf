package fairpull.ui.page.question;

import fairpull.app.document.QuestionEdits;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Sides;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.OptionalDouble;

/** Which gain would matter, how sure the answer is to be, and what is claimed. */
final class GainCard extends Card {
    private final Desk desk;
    private final Entry<OptionalDouble> expected;
    private final Entry<OptionalDouble> worthwhile;
    private final Choice<Sides> sides;
    private final Entry<Double> powerWanted;
    private final Entry<Double> errorRate;
    private final Entry<List<Claim>> claims;

    GainCard(Desk desk) {
        super(Words.of("gain.head"));
        this.desk = desk;
        Runnable settle = desk.document()::settle;
        expected = new Entry<>("question.expected", text -> typing().level(text),
                level -> desk.typed(QuestionEdits.expected(level)), settle).asTyped();
        worthwhile = new Entry<>("question.worthwhile", text -> typing().difference(text),
                gain -> desk.typed(QuestionEdits.worthwhile(gain)), settle).asTyped();
        sides = new Choice<>("gain.sides", List.of(Sides.values()), side -> Words.of("gain.sides." + side.name()),
                side -> desk.edit(QuestionEdits.sides(side)));
        powerWanted = new Entry<>("gain.powerWanted", PlanTyping::share, share -> desk.typed(QuestionEdits.powerWanted(share)), settle);
        errorRate = new Entry<>("gain.errorRate", PlanTyping::share, share -> desk.typed(QuestionEdits.errorRate(share)), settle);
        claims = new Entry<>("gain.claims", text -> typing().claims(text), said -> desk.typed(QuestionEdits.claims(said)), settle);
        expected.addTo(this);
        worthwhile.addTo(this);
        sides.addTo(this);
        powerWanted.addTo(this);
        errorRate.addTo(this);
        claims.addTo(this);
    }

    private PlanTyping typing() {
        return PlanTyping.in(desk.document().plan());
    }

    void refresh() {
        Question question = desk.document().plan().question();
        expected.show(typing().level(question.expectedLevelSi()));
        worthwhile.show(typing().difference(question.worthwhileGainSi()));
        String unit = question.deciding().unit().symbol();
        expected.hintAs(Words.of("question.expected.hint", unit));
        worthwhile.hintAs(Words.of("question.worthwhile.hint", unit));
        claims.hintAs(Words.of("gain.claims.hint", unit));
        sides.show(question.sides());
        powerWanted.show(PlanTyping.share(question.powerWanted()));
        errorRate.show(PlanTyping.share(question.errorRate()));
        claims.show(typing().claims());
        boolean open = !desk.document().isFixed();
        List.of(expected, worthwhile, powerWanted, errorRate, claims).forEach(entry -> entry.enable(open));
        sides.enable(open);
    }
}
