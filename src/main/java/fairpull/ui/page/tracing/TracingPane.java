package fairpull.ui.page.tracing;

import fairpull.app.document.Settings;
import fairpull.app.document.TracingDocument;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.GraphicsEnvironment;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** All that is needed to trace a chart, for a window of its own or a part of a page. */
public final class TracingPane extends JPanel {
    /** The width of the cards at the usual size of type. */
    private static final int SIDE = 370;

    private final transient Bench bench = new Bench();
    private final transient TracingFiles files;
    private final PictureView view = new PictureView(bench);
    private final Prose message = new Prose("", Role.B, Look.Type.SMALL);
    private final Prose task = Prose.body("");
    private final JButton undo = Buttons.of("tracing.undo", bench.document()::undo);
    private final JButton redo = Buttons.of("tracing.redo", bench.document()::redo);
    private final JButton save;

    /** A pane without a picture, whose traces are saved. */
    public TracingPane(Settings settings) {
        this(settings, Optional.empty());
    }

    /** A pane without a picture, as a part of a page: its traces are taken by {@code taking}, and saved by whoever takes them. */
    public TracingPane(Settings settings, Runnable taking) {
        this(settings, Optional.of(taking));
    }

    private TracingPane(Settings settings, Optional<Runnable> taking) {
        super(new MigLayout("gap 12 8, fill, insets " + (taking.isPresent() ? "0" : "12 16 12 16"),
                "", "[][][grow, fill]"));
        columns();
        setName("tracing");
        files = new TracingFiles(this, bench, settings, this::say);
        save = taking.map(take -> Buttons.primary("tracing.take", take))
                .orElseGet(() -> Buttons.primary("tracing.save", () -> files.save(() -> { })));
        PictureDrops drops = new PictureDrops(files::open, files::open);
        setTransferHandler(drops);
        message.setName("tracing.message");
        task.setName("tracing.task");
        add(bar(drops), "spanx, growx, wmin 0, wrap");
        JPanel words = new JPanel(new MigLayout("insets 0, gap 0 2, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        words.setOpaque(false);
        words.add(task, "growx, wmin 0");
        words.add(message, "growx, wmin 0");
        add(words, "spanx, growx, wmin 0, wrap");
        add(view, "grow, wmin 200, hmin 150");
        JPanel side = new JPanel(new MigLayout("insets 0, gap 0 8, fill, wrap 1", "[grow, fill]", "[][][grow, fill]"));
        side.setOpaque(false);
        side.add(new AxesCard(bench), "growx, wmin 0");
        side.add(new CurvesCard(bench), "growx, wmin 0");
        side.add(new PointsCard(bench), "grow, wmin 0, hmin 0");
        add(side, "grow, hmin 0");
        keys(drops);
        if (taking.isEmpty()) {
            key("save", KeyEvent.VK_S, () -> files.save(() -> { }));
        }
        bench.listen(this::refresh);
        say("");
        bench.take(Tool.X_FIRST);
    }

    /** The cards beside the picture grow with the type, but leave it the larger part. */
    private void columns() {
        String side = SIDE + ":" + Math.round(SIDE * Look.scale()) + ":40%";
        ((MigLayout) getLayout()).setColumnConstraints("[grow, fill][" + side + ", fill, shrink 0]");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (getLayout() instanceof MigLayout) {
            columns();
        }
    }

    private JPanel bar(PictureDrops drops) {
        JPanel bar = new JPanel(new MigLayout("insets 0, gap 6 6, fillx"));
        bar.setOpaque(false);
        bar.add(Buttons.of("tracing.open", files::choose));
        bar.add(Buttons.of("tracing.paste", () -> paste(drops)));
        bar.add(undo, "gapleft 12");
        bar.add(redo);
        bar.add(Buttons.of("tracing.larger", () -> view.zoom(1)), "gapleft 12");
        bar.add(Buttons.of("tracing.smaller", () -> view.zoom(-1)));
        bar.add(Buttons.of("tracing.fit", view::fit));
        bar.add(save, "push, alignx right");
        return bar;
    }

    private void paste(PictureDrops drops) {
        var held = getToolkit().getSystemClipboard().getContents(this);
        if (held == null || !drops.take(held)) {
            say(Words.of("tracing.paste.nothing"));
        }
    }

    private void keys(PictureDrops drops) {
        key("open", KeyEvent.VK_O, files::choose);
        key("paste", KeyEvent.VK_V, () -> paste(drops));
        key("undo", KeyEvent.VK_Z, bench.document()::undo);
        key("redo", KeyEvent.VK_Y, bench.document()::redo);
    }

    private void key(String name, int letter, Runnable work) {
        int mask = GraphicsEnvironment.isHeadless() ? InputEvent.CTRL_DOWN_MASK : getToolkit().getMenuShortcutKeyMaskEx();
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(letter, mask), name);
        getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    /** {@return what is traced} */
    public TracingDocument document() {
        return bench.document();
    }

    Bench bench() {
        return bench;
    }

    PictureView view() {
        return view;
    }

    /** Opens a picture from a file. */
    public void open(Path file) {
        files.open(file);
    }

    /** Asks where to save, saves, then goes on; nothing follows where it was not saved. */
    public void save(Runnable then) {
        files.save(then);
    }

    /** Saves where told, without asking. */
    public void save(Path target) {
        files.save(target, () -> { });
    }

    /** Has questions asked in place; the answers are keys of the words with what follows from them, the first one the usual one. */
    public void onAsk(BiConsumer<String, Map<String, Runnable>> asker) {
        files.onAsk(asker);
    }

    /** Says something in the line over the picture; empty words take it away. */
    public void say(String words) {
        message.setText(words);
        message.setVisible(!words.isEmpty());
        revalidate();
    }

    private void refresh() {
        boolean open = bench.document().tracing().isPresent();
        task.setText(!open ? Words.of("tracing.nothing") : bench.isComplete() && bench.tool().isFollow() ? Words.of("tracing.complete")
                : Words.of(bench.tool().key() + ".task", bench.tool().isAxis() ? "" : bench.part()));
        undo.setEnabled(bench.document().undoLabel().isPresent());
        redo.setEnabled(bench.document().redoLabel().isPresent());
        undo.setToolTipText(bench.document().undoLabel().map(Words::tip).orElse(Words.tip(Words.of("tracing.undo.tip"))));
        redo.setToolTipText(bench.document().redoLabel().map(Words::tip).orElse(Words.tip(Words.of("tracing.redo.tip"))));
        save.setEnabled(open);
    }
}
