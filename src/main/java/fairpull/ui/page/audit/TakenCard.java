package fairpull.ui.page.audit;

import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.auditing.CurvesView;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Publication.Curves;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Columns;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScaledChart;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The curves that the publication holds, drawn as they were read: beside the window's thread, anew when they or their files change. */
final class TakenCard extends Card {
    /** The least width of a chart whose words can be read, and of the words beside it. */
    private static final int CHART = 560;
    private static final int SIDE = 240;

    private final AuditDesk desk;
    private final transient Latest<List<CurvesView>> reading = new Latest<>(SwingUtilities::invokeLater);
    private final JPanel rows = new JPanel(new MigLayout("insets 0, gap 8 16, fillx, wrap 1", "[grow, fill]"));
    private transient List<Curves> shown = List.of();
    private Path from = Path.of("");
    private boolean wanted;

    TakenCard(AuditDesk desk) {
        super(Words.of("audit.taken.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        this.desk = desk;
        setName("audit.taken");
        rows.setOpaque(false);
        add(rows, "growx, wmin 0");
        tell(List.of());
    }

    void refresh() {
        List<Curves> curves = desk.draft().curves();
        Path folder = desk.document().folder();
        if (curves.equals(shown) && folder.equals(from)) {
            return;
        }
        shown = curves;
        from = folder;
        tell(List.of());
        if (curves.isEmpty()) {
            reading.stop();
        } else {
            reading.ask(Job.onDisk(() -> CurvesView.of(curves, folder)), ended -> ended.tell(this::tell,
                    fault -> desk.words().accept(FaultWords.of(fault))));
        }
    }

    /** Brings them into view once they are drawn. */
    void bring() {
        wanted = true;
    }

    private void tell(List<CurvesView> views) {
        rows.removeAll();
        for (int place = 0; place < shown.size(); place++) {
            Columns pair = new Columns(16, "[grow 70, fill]", "[grow 30, fill]");
            pair.add(drawn(views, place));
            pair.add(words(place));
            rows.add(pair, "growx, wmin 0");
        }
        if (shown.isEmpty()) {
            rows.add(Prose.body(Words.of("audit.taken.none")), "growx, wmin 0");
        }
        revalidate();
        repaint();
        if (wanted && !views.isEmpty()) {
            wanted = false;
            SwingUtilities.invokeLater(() -> scrollRectToVisible(new Rectangle(getSize())));
        }
    }

    private static JComponent drawn(List<CurvesView> views, int place) {
        if (place >= views.size()) {
            return Prose.body(Words.of("audit.taken.reading"));
        }
        CurvesView view = views.get(place);
        if (view.trouble().isPresent()) {
            return new Prose(FaultWords.of(view.trouble().get()), Role.B, Look.Type.BODY);
        }
        ScaledChart chart = new ScaledChart(view.chart().orElseThrow());
        chart.setName("audit.taken.chart." + place);
        chart.setMinimumSize(wide(CHART));
        return chart;
    }

    private static Dimension wide(int atUsualType) {
        return new Dimension((int) Math.round(atUsualType * Look.scale()), 0);
    }

    private JPanel words(int place) {
        Curves curves = shown.get(place);
        JPanel words = new JPanel(new MigLayout("insets 0, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        words.setOpaque(false);
        words.setMinimumSize(wide(SIDE));
        words.add(new Prose(Words.sentence(curves.name()) + ", " + curves.unit().symbol(), Role.INK, Look.Type.STRONG), "growx, wmin 0");
        words.add(Prose.body(Words.of("audit.taken.before", words(curves.before()))), "growx, wmin 0");
        words.add(Prose.body(Words.of("audit.taken.after", words(curves.after()))), "growx, wmin 0");
        words.add(removing(place), "growx 0");
        return words;
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
