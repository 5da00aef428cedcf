package fairpull.ui.page.audit;

import fairpull.app.document.OpenedPicture;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.tracing.KeepCurves;
import fairpull.domain.audit.Publication;
import fairpull.domain.tracing.Tracing;
import fairpull.ui.form.Teller;
import fairpull.ui.page.tracing.TracingPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The curves that were published: out of tables, or traced from a picture. */
public final class CurvesPage implements AuditPage {
    /** So high at the usual size of type that picture and cards of the tracing can be worked with. */
    private static final int TRACING_HEIGHT = 640;

    private final AuditDesk desk;
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final TakenCard taken;
    private final TablesCard tables;
    private final TracingPane tracing;

    /** The page on a desk. */
    public CurvesPage(AuditDesk desk) {
        this.desk = desk;
        view.setOpaque(false);
        taken = new TakenCard(desk);
        tables = new TablesCard(desk, this::add);
        tracing = new TracingPane(desk.settings(), this::takeTraced);
        tracing.setOpaque(false);
        tracing.onAsk((question, answers) -> Teller.around(view).ask(question, answers));
        view.add(taken, "growx, wmin 0");
        view.add(tables, "growx, wmin 0");
        view.add(new Room(tracing), "growx, wmin 0");
    }

    private void takeTraced() {
        try {
            Tracing now = tracing.document().tracing().orElseThrow(() -> new UsageException("", Words.of("tracing.nothing")));
            KeepCurves.trace(now);
            OpenedPicture opened = tracing.document().opened().orElseThrow();
            tracing.say("");
            desk.opening().beside(file -> Teller.around(view).onDisk(() -> KeepCurves.traced(opened, now, file), curves -> {
                tracing.document().savedAs(now);
                add(curves);
            }));
        } catch (UsageException lacking) {
            tracing.say(lacking.problem());
        }
    }

    private void add(Publication.Curves curves) {
        taken.bring();
        desk.edit("audit.curves.take", draft -> draft.withCurves(Stream.concat(draft.curves().stream(), Stream.of(curves)).toList()));
    }

    @Override
    public String key() {
        return "page.curves";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public boolean isWide() {
        return true;
    }

    @Override
    public Optional<String> begun() {
        return tracing.document().isChanged() ? Optional.of(Words.of("close.trace")) : Optional.empty();
    }

    @Override
    public void show() {
        taken.refresh();
        tables.refresh();
    }

    /** A picture is traced; a table goes to the field that waits for one. */
    @Override
    public boolean take(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (Stream.of(".png", ".jpg", ".jpeg").anyMatch(name::endsWith)) {
            tracing.open(file);
            return true;
        }
        return tables.take(file);
    }

    /** As high as the size of type asks for. */
    private static final class Room extends JPanel {
        Room(JComponent content) {
            super(new BorderLayout());
            setOpaque(false);
            add(content);
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(super.getPreferredSize().width, (int) Math.round(TRACING_HEIGHT * Look.scale()));
        }
    }

    /** {@return the part in which a picture is traced} */
    public TracingPane tracing() {
        return tracing;
    }
}
