package fairpull.ui.page.question;

import fairpull.app.document.QuestionEdits;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.plan.Plan;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.List;

/** The two states that are compared. */
final class PartsCard extends Card {
    private final Desk desk;
    private final Entry<String> title;
    private final Entry<String> partA;
    private final Entry<String> partB;
    private final Entry<String> remark;

    PartsCard(Desk desk) {
        super(Words.of("question.head"));
        this.desk = desk;
        Runnable settle = desk.document()::settle;
        title = new Entry<>("question.title", PlanTyping::words, words -> desk.typed(QuestionEdits.title(words)), settle).asWritten();
        partA = new Entry<>("question.partA", PlanTyping::words, words -> desk.typed(QuestionEdits.partA(words)), settle).asWritten();
        partB = new Entry<>("question.partB", PlanTyping::words, words -> desk.typed(QuestionEdits.partB(words)), settle).asWritten();
        remark = new Entry<>("question.remark", String::strip, words -> desk.typed(QuestionEdits.remark(words)), settle).asWritten();
        List.of(title, partA, partB, remark).forEach(entry -> entry.addTo(this));
    }

    void refresh() {
        Plan plan = desk.document().plan();
        title.show(plan.title());
        partA.show(plan.question().partA());
        partB.show(plan.question().partB());
        remark.show(plan.remark());
        List.of(title, partA, partB, remark).forEach(entry -> entry.enable(!desk.document().isFixed()));
    }
}
