package fairpull.ui.page.audit;

import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Printed;
import fairpull.domain.plan.Better;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The figures before and after, as they were printed. */
final class FiguresCard extends RowsCard {
    private static final List<String> COLUMNS = List.of("[10:10:, grow 25, fill]", "[10:10:, grow 19, fill]", "[10:10:, grow 19, fill]",
            "[10:10:, grow 18, fill]", "[10:10:, grow 19, fill]");

    private final AuditDesk desk;

    FiguresCard(AuditDesk desk) {
        super("audit.figures", COLUMNS, List.of("audit.figure.name", "audit.figure.before", "audit.figure.after", "audit.figure.at",
                "audit.figure.better"));
        this.desk = desk;
    }

    void refresh() {
        refresh(desk.draft().figures().size());
    }

    @Override
    void another() {
        desk.edit("audit.figures.add", draft -> draft.withAnotherFigure());
    }

    @Override
    FieldRow made() {
        return new Row();
    }

    private void remove(FieldRow row) {
        forget(row);
        desk.edit("audit.figures.remove.name", draft -> draft.withoutFigure(row.place()));
    }

    private final class Row extends FieldRow {
        private final Entry<String> name = with(new Entry<>("audit.figure.name", PlanTyping::words,
                words -> typed("audit.figure.name", figure -> figure.renamed(words)), () -> { }).asWritten());
        private final Entry<Optional<Printed>> before = with(new Entry<>("audit.figure.before",
                text -> AuditTyping.printed(text, figure().after()),
                printed -> typed("audit.figure.before", figure -> figure.withBefore(printed)), () -> { }));
        private final Entry<Optional<Printed>> after = with(new Entry<>("audit.figure.after",
                text -> AuditTyping.printed(text, figure().before()),
                printed -> typed("audit.figure.after", figure -> figure.withAfter(printed)), () -> { }));
        private final Entry<Optional<Printed>> at = with(new Entry<>("audit.figure.at", AuditTyping::speed,
                speed -> typed("audit.figure.at", figure -> figure.at(speed)), () -> { }));
        private final Choice<Better> better = with(new Choice<>("audit.figure.better", List.of(Better.values()),
                direction -> Words.of("audit.figure.better." + direction.name()),
                direction -> typed("audit.figure.better", figure -> figure.with(direction))));

        Row() {
            super(COLUMNS, "audit.figures.remove", FiguresCard.this::remove);
            end();
        }

        private FigureDraft figure() {
            return desk.draft().figures().get(place());
        }

        private void typed(String key, UnaryOperator<FigureDraft> change) {
            desk.typed(key, field(key), draft -> draft.withFigure(place(), change.apply(draft.figures().get(place()))));
        }

        @Override
        void refresh() {
            FigureDraft figure = figure();
            before.hintIn(desk.settings().units());
            after.hintIn(desk.settings().units());
            name.show(figure.name());
            before.show(AuditTyping.text(figure.before()));
            after.show(AuditTyping.text(figure.after()));
            at.show(AuditTyping.text(figure.at()));
            better.show(figure.better());
        }
    }
}
