package fairpull.ui.page.audit;

import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Publication.Curves;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Words;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The curves that the publication holds. */
final class TakenCard extends Card {
    private final AuditDesk desk;
    private final JPanel rows = new JPanel(new MigLayout("insets 0, gap 8 6, fillx, wrap 2", "[grow, fill]" + FieldRow.BUTTON));
    private List<Curves> shown = List.of();

    TakenCard(AuditDesk desk) {
        super(Words.of("audit.taken.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        this.desk = desk;
        rows.setOpaque(false);
        add(rows, "growx, wmin 0");
        rows.add(Prose.body(Words.of("audit.taken.none")), "growx, wmin 0");
    }

    void refresh() {
        List<Curves> curves = desk.draft().curves();
        if (curves.equals(shown)) {
            return;
        }
        shown = curves;
        rows.removeAll();
        for (int place = 0; place < curves.size(); place++) {
            rows.add(Prose.body(Words.of("audit.taken.one", curves.get(place).name(), words(curves.get(place).before()),
                    words(curves.get(place).after()))), "growx, wmin 0");
            rows.add(removing(place));
        }
        if (curves.isEmpty()) {
            rows.add(Prose.body(Words.of("audit.taken.none")), "growx, wmin 0");
        }
        revalidate();
        repaint();
    }

    private JButton removing(int place) {
        JButton button = Buttons.of("audit.taken.remove", () -> desk.edit("audit.taken.remove.name", draft -> {
            List<Curves> others = new ArrayList<>(draft.curves());
            others.remove(place);
            return draft.withCurves(others);
        }));
        button.setName("audit.taken.remove." + place);
        button.getAccessibleContext().setAccessibleName(Words.of("form.row", Words.of("audit.taken.remove.name"), place + 1));
        return button;
    }

    private static String words(CurveSource source) {
        return source.match(new CurveSource.Cases<String>() {
            @Override
            public String table(CurveSource.Table table) {
                return table.name() + table.column().map(column -> Words.of("audit.taken.column", column)).orElse("");
            }

            @Override
            public String traced(CurveSource.Traced traced) {
                return traced.name();
            }

            @Override
            public String points(CurveSource.Points points) {
                return Words.of("audit.taken.points", points.points().size());
            }
        });
    }
}
