package fairpull.ui.page.question;

import fairpull.app.document.QuestionEdits;
import fairpull.app.usecase.PlanTyping;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Words;
import java.util.OptionalDouble;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is compared, by which number, and which gain would matter. */
public final class QuestionPage implements Page {
    private final Desk desk;
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final Entry<String> title;
    private final Entry<String> partA;
    private final Entry<String> partB;
    private final Entry<Measure> measure;
    private final Entry<OptionalDouble> expected;
    private final Entry<OptionalDouble> worthwhile;

    /** The page on a desk. */
    public QuestionPage(Desk desk) {
        this.desk = desk;
        view.setOpaque(false);
        Runnable settle = desk.document()::settle;
        title = new Entry<>("question.title", PlanTyping::words, words -> desk.typed(QuestionEdits.title(words)), settle);
        partA = new Entry<>("question.partA", PlanTyping::words, words -> desk.typed(QuestionEdits.partA(words)), settle);
        partB = new Entry<>("question.partB", PlanTyping::words, words -> desk.typed(QuestionEdits.partB(words)), settle);
        measure = new Entry<>("question.measure", text -> typing().measure(text),
                decides -> desk.typed(QuestionEdits.deciding(decides)), settle);
        expected = new Entry<>("question.expected", text -> typing().level(text),
                level -> desk.typed(QuestionEdits.expected(level)), settle);
        worthwhile = new Entry<>("question.worthwhile", text -> typing().difference(text),
                gain -> desk.typed(QuestionEdits.worthwhile(gain)), settle);
        Card card = new Card(Words.of("question.head"));
        title.addTo(card);
        partA.addTo(card);
        partB.addTo(card);
        measure.addTo(card);
        expected.addTo(card);
        worthwhile.addTo(card);
        view.add(card);
    }

    private PlanTyping typing() {
        return PlanTyping.in(desk.document().plan());
    }

    @Override
    public String key() {
        return "page.question";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void show() {
        Plan plan = desk.document().plan();
        title.show(plan.title());
        partA.show(plan.question().partA());
        partB.show(plan.question().partB());
        measure.show(PlanTyping.text(plan.question().deciding()));
        expected.show(typing().level(plan.question().expectedLevelSi()));
        worthwhile.show(typing().difference(plan.question().worthwhileGainSi()));
    }
}
