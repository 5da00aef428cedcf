package fairpull.ui.strip;

import fairpull.app.document.Document;
import fairpull.app.document.Edit;
import fairpull.app.document.SequenceEdits;
import fairpull.app.usecase.running.DayFound;
import fairpull.domain.day.DayClock;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.Bounds;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.report.chart.Marked;
import fairpull.report.chart.MeasuredStrip;
import fairpull.report.chart.PlanStrip;
import fairpull.report.chart.Role;
import fairpull.ui.form.ChartMenu;
import fairpull.ui.form.Keys;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.JPanel;

/**
 * The day from left to right, always in view. A click or the arrow keys choose an install; it is dragged or moved with Alt and the
 * arrows, given more or fewer pulls with + and −, added behind with Insert, left out with Delete, and swapped to the other part with X.
 * Once the plan is sealed, a click on a pull chooses it, as do Down and the arrows; Up goes back to its install.
 */
public final class DayStripView extends JPanel {
    private static final int HEIGHT = 150;
    private static final double RADIUS = 12;
    private static final int MARGIN = 6;

    private final Document document;
    private final Choice choice = new Choice();
    private final Consumer<String> refusals;
    private Optional<PlanStrip.Heat> heat = Optional.empty();
    private Optional<DayFound> found = Optional.empty();
    private boolean compact;
    private Optional<Run> run = Optional.empty();
    private PlanStrip strip;
    private Optional<Drag> drag = Optional.empty();

    /**
     * A day under way.
     *
     * @param clocks of every session, re-timed
     * @param state where it stands
     */
    public record Run(List<DayClock> clocks, PlanStrip.Running state) {
    }

    /** Where an install would land: the session, the place among the others there, the place among all, and where that is drawn. */
    private record Landing(int session, int place, int placeOfAll, double x) {
    }

    /** A strip of a document; {@code refusals} hears, in words, of edits that cannot be. */
    public DayStripView(Document document, Consumer<String> refusals) {
        this.document = document;
        this.refusals = refusals;
        setName("strip");
        setOpaque(false);
        getAccessibleContext().setAccessibleName(Words.of("strip"));
        setToolTipText(Words.tip(Words.of("strip.tip")));
        ChartMenu.attach(this, () -> Optional.of(drawing()));
        mouse();
        keys();
        Keys.focusable(this);
        document.listen(this::refresh);
        refresh();
    }

    /** Hears which install is chosen, also by one of its pulls; empty where none is. */
    public void onChosen(Consumer<Optional<String>> chooser) {
        choice.listen(chooser);
    }

    /** Shows start temperatures beneath the day. */
    public void show(Optional<PlanStrip.Heat> predicted) {
        heat = predicted;
        refresh();
    }

    /** Shows the day as it is run; empty shows it as planned. */
    public void run(Optional<Run> underWay) {
        run = underWay;
        refresh();
    }

    /** Shows the day as it was measured; empty for the day as it is planned. */
    public void measured(Optional<DayFound> day) {
        found = day;
        refresh();
    }

    /** {@return the install that is chosen, also by one of its pulls} */
    public Optional<String> chosen() {
        return choice.install();
    }

    /** {@return the pull that is chosen} */
    public Optional<PullId> chosenPull() {
        return choice.pull();
    }

    /** Chooses an install, as a click does. */
    public void choose(Optional<String> install) {
        mark(install.map(Marked::of));
    }

    /** Chooses one pull, as a click on it does. */
    public void choose(PullId pull) {
        mark(Optional.of(Marked.of(pull)));
    }

    private void mark(Optional<Marked> marked) {
        if (choice.mark(marked)) {
            refresh();
        }
    }

    /** {@return where a pull stands on the component, for tests and menus} */
    public Optional<Bounds> boundsOf(PullId pull) {
        return strip.pulls().stream().filter(spot -> spot.pull().equals(pull)).map(spot -> scaled(spot.bounds(), MARGIN)).findFirst();
    }

    /** {@return where an install stands within the margin of the strip, for tests and menus} */
    public Optional<Bounds> boundsOf(String install) {
        return strip.regions().stream().filter(region -> region.install().equals(install)).map(at -> scaled(at.bounds(), 0)).findFirst();
    }

    private Bounds scaled(Bounds at, double from) {
        double scale = scale();
        return new Bounds(at.x() * scale + from, at.y() * scale + from, at.width() * scale, at.height() * scale);
    }

    /** Takes no more room in large type than in that of the design, where the page in view needs the height. */
    public void compact(boolean now) {
        compact = now;
        revalidate();
    }

    private double scale() {
        return compact ? Math.min(1, Look.scale()) : Look.scale();
    }

    /** The strip is as high as the size of type asks for. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(900, (int) Math.ceil(HEIGHT * scale()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(400, getPreferredSize().height);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (document != null) {
            draw();
        }
    }

    private void refresh() {
        draw();
        Optional<Marked> before = choice.marked();
        choice.among(labels(), pulls());
        if (!before.equals(choice.marked())) {
            draw();
        }
        getAccessibleContext().setAccessibleDescription(strip.drawing().description());
        repaint();
    }

    private void draw() {
        double width = Math.max(400, (getWidth() - 2.0 * MARGIN) / scale());
        strip = found.filter(day -> document.isFixed()).map(day -> MeasuredStrip.draw(day.days(), day.axis(), choice.marked(), width))
                .or(() -> run.map(day -> PlanStrip.draw(day.clocks(), heat, choice.marked(), width, day.state())))
                .orElseGet(() -> PlanStrip.draw(DayClock.of(document.plan().sequence()), heat, choice.marked(), width));
    }

    /** {@return what is shown} */
    public Drawing drawing() {
        return strip.drawing().reworded(LocalNumbers::shown);
    }

    private List<String> labels() {
        return document.plan().sequence().installs().map(Install::label).toList();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (document != null) {
            draw();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        RoundRectangle2D shape = new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, RADIUS, RADIUS);
        g.setColor(Look.colour(Role.CARD));
        g.fill(shape);
        g.setColor(Look.colour(isFocusOwner() ? Role.A : Role.LINE));
        g.draw(shape);
        g.translate(MARGIN, MARGIN);
        g.scale(scale(), scale());
        DrawingPainter.paint(drawing(), g, Look.mode().palette(), Look.font(Look.Type.SMALL), Look.font(Look.Type.STRONG));
        drag.filter(Drag::isUnderWay).flatMap(this::landing).ifPresent(landing -> {
            g.setColor(Look.colour(Role.INK));
            g.fill(new Rectangle2D.Double(landing.x() - 1.5, MARGIN, 3, HEIGHT / 2.0));
        });
        g.dispose();
    }

    private void mouse() {
        MouseAdapter adapter = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                Optional<String> at = installAt(event);
                pullAt(event).ifPresentOrElse(DayStripView.this::choose, () -> choose(at));
                drag = at.map(install -> new Drag(install, event.getX(), event.getX()));
            }

            @Override
            public void mouseReleased(MouseEvent event) {
                Optional<Drag> moved = drag.map(from -> new Drag(from.install(), from.fromX(), event.getX()));
                drag = Optional.empty();
                moved.ifPresent(DayStripView.this::drop);
                repaint();
                setCursor(Cursor.getDefaultCursor());
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                drag = drag.map(from -> new Drag(from.install(), from.fromX(), event.getX()));
                setCursor(Cursor.getPredefinedCursor(drag.isPresent() ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
                repaint();
            }
        };
        addMouseListener(adapter);
        addMouseMotionListener(adapter);
    }

    /** {@return a place of the component as the drawing counts} */
    private double drawn(int pixel) {
        return (pixel - MARGIN) / scale();
    }

    private Optional<String> installAt(MouseEvent event) {
        double y = drawn(event.getY());
        double x = drawn(event.getX());
        return strip.regions().stream().filter(region -> region.bounds().x() <= x && x <= region.bounds().right()
                && region.bounds().y() <= y && y <= region.bounds().bottom()).map(PlanStrip.Region::install).findFirst();
    }

    /** Pulls are chosen where the plan is fixed: before, whole installs are edited. */
    private Optional<PullId> pullAt(MouseEvent event) {
        double x = drawn(event.getX());
        double y = drawn(event.getY());
        return strip.pulls().stream().filter(spot -> document.isFixed())
                .filter(spot -> spot.bounds().y() <= y && y <= spot.bounds().bottom()
                && spot.bounds().x() <= x && x <= spot.bounds().right())
                .min(Comparator.comparingDouble(spot -> Math.abs(spot.bounds().middle() - x))).map(PlanStrip.Spot::pull);
    }

    private List<PullId> pulls() {
        return document.isFixed() ? strip.pulls().stream().map(PlanStrip.Spot::pull).toList() : List.of();
    }

    /** An install that is let go beyond the middle of others changes places with them, in its session or in another one. */
    private void drop(Drag moved) {
        if (!moved.isUnderWay()) {
            return;
        }
        landing(moved).filter(landing -> landing.placeOfAll() != labels().indexOf(moved.install())
                || landing.session() != sessionOf(moved.install())).ifPresent(landing -> {
                    if (edit(SequenceEdits.moveTo(moved.install(), landing.session(), landing.place()))) {
                        choose(Optional.of(labels().get(Math.min(landing.placeOfAll(), labels().size() - 1))));
                    }
                });
    }

    private Optional<Landing> landing(Drag moved) {
        double x = drawn(moved.x());
        List<PlanStrip.Region> others = strip.regions().stream().filter(region -> !region.install().equals(moved.install())).toList();
        Optional<PlanStrip.Region> near = others.stream()
                .min(Comparator.comparingDouble(region -> Math.abs(region.bounds().middle() - x)));
        return near.map(neighbour -> {
            int session = sessionOf(neighbour.install());
            long place = others.stream().filter(other -> sessionOf(other.install()) == session && other.bounds().middle() < x).count();
            long before = others.stream().filter(other -> sessionOf(other.install()) < session).count();
            double at = x < neighbour.bounds().middle() ? neighbour.bounds().x() - Drag.LEAST : neighbour.bounds().right() + Drag.LEAST;
            return new Landing(session, (int) place, (int) (before + place), at);
        });
    }

    private int sessionOf(String install) {
        List<Session> sessions = document.plan().sequence().sessions();
        return IntStream.range(0, sessions.size())
                .filter(place -> sessions.get(place).installs().stream().anyMatch(one -> one.label().equals(install))).findFirst()
                .orElse(0);
    }

    private void keys() {
        Keys.bind(this, "LEFT", () -> mark(choice.stepped(-1, labels(), pulls())));
        Keys.bind(this, "RIGHT", () -> mark(choice.stepped(1, labels(), pulls())));
        Keys.bind(this, "DOWN", () -> mark(choice.withinInstall(pulls())));
        Keys.bind(this, "UP", () -> choose(chosen()));
        Keys.bind(this, "alt LEFT", () -> moveBy(-1));
        Keys.bind(this, "alt RIGHT", () -> moveBy(1));
        Keys.bind(this, "DELETE", () -> change(SequenceEdits::remove, 0));
        Keys.bind(this, "INSERT", () -> change(SequenceEdits::addAfter, 0));
        // on the day of a sealed plan X says that a pull was aborted
        Keys.bind(this, "X", () -> change(SequenceEdits::otherPart, 0), () -> !document.isFixed());
        for (String plus : List.of("PLUS", "ADD", "shift EQUALS")) {
            Keys.bind(this, plus, () -> pulls(1));
        }
        for (String minus : List.of("MINUS", "SUBTRACT")) {
            Keys.bind(this, minus, () -> pulls(-1));
        }
    }

    /**
     * Changes the install that is chosen, if one is. Labels count in the order of the day and so may pass to a neighbour: the choice stays
     * with the install itself, which the change moves by so many places within its session.
     */
    public void change(Function<String, Edit> change, int by) {
        chosen().ifPresent(install -> {
            int place = placeWithinSession(labels().indexOf(install), by);
            if (edit(change.apply(install))) {
                choose(Optional.of(labels().get(Math.min(labels().size() - 1, place))));
            }
        });
    }

    private int placeWithinSession(int place, int by) {
        int first = 0;
        for (Session session : document.plan().sequence().sessions()) {
            int behind = first + session.installs().size();
            if (place < behind) {
                return Math.max(first, Math.min(behind - 1, place + by));
            }
            first = behind;
        }
        return place;
    }

    private void moveBy(int by) {
        change(install -> SequenceEdits.move(install, by), by);
    }

    private void pulls(int by) {
        chosen().flatMap(label -> document.plan().sequence().installs().filter(install -> install.label().equals(label)).findFirst())
                .filter(install -> install.countedPulls() + by >= 1)
                .ifPresent(install -> edit(SequenceEdits.pulls(install.label(), install.countedPulls() + by, install.warmUpPulls())));
    }

    private boolean edit(Edit edit) {
        if (document.isFixed()) {
            refusals.accept(Words.of("amend.first"));
            return false;
        }
        try {
            document.edit(edit);
            refusals.accept("");
            return true;
        } catch (IllegalArgumentException impossible) {
            refusals.accept(impossible.getMessage());
            return false;
        }
    }
}
