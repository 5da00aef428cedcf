package fairpull.ui.page.tracing;

import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.Tracing;
import fairpull.ui.form.Keys;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.SwingUtilities;

/** Mouse and keys on the picture: tools, points, zoom and pan. */
final class PictureHand extends MouseAdapter {
    private static final double PAN = 40;
    private static final double NUDGE = 1;
    private static final double NUDGE_FINE = 0.1;

    private final PictureView view;
    private final Bench bench;
    private boolean panning;
    private boolean moving;
    private int fromX;
    private int fromY;
    private int drag;

    PictureHand(PictureView view, Bench bench) {
        this.view = view;
        this.bench = bench;
    }

    void attach() {
        view.addMouseListener(this);
        view.addMouseMotionListener(this);
        view.addMouseWheelListener(this);
        view.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                view.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                view.repaint();
            }
        });
        Keys.bind(view, "PLUS", () -> view.zoom(1));
        Keys.bind(view, "ADD", () -> view.zoom(1));
        Keys.bind(view, "EQUALS", () -> view.zoom(1));
        Keys.bind(view, "MINUS", () -> view.zoom(-1));
        Keys.bind(view, "SUBTRACT", () -> view.zoom(-1));
        Keys.bind(view, "0", view::fit);
        Keys.bind(view, "DELETE", () -> bench.chosen().ifPresent(place -> bench.delete(List.of(place))));
        Keys.bind(view, "BACK_SPACE", () -> bench.chosen().ifPresent(place -> bench.delete(List.of(place))));
        Keys.bind(view, "S", bench::snapChosen);
        Keys.bind(view, "PAGE_DOWN", () -> step(1));
        Keys.bind(view, "PAGE_UP", () -> step(-1));
        Keys.bind(view, "ESCAPE", () -> bench.choose(OptionalInt.empty()));
        arrows("LEFT", -1, 0);
        arrows("RIGHT", 1, 0);
        arrows("UP", 0, -1);
        arrows("DOWN", 0, 1);
    }

    private void arrows(String key, int rightwards, int downwards) {
        Keys.bind(view, key, () -> arrow(rightwards, downwards, NUDGE));
        Keys.bind(view, "shift " + key, () -> arrow(rightwards, downwards, NUDGE_FINE));
        Keys.bind(view, "alt " + key, () -> view.pan(-PAN * rightwards, -PAN * downwards));
    }

    /** With an axis tool the arrows move its point, otherwise the chosen point; without one they move the picture. */
    private void arrow(int rightwards, int downwards, double size) {
        Tool tool = bench.tool();
        if (tool.isAxis() && axis(tool).place(tool.point()).isPresent()) {
            bench.setAxisPoint(tool, axis(tool).place(tool.point()).get().moved(size * rightwards, size * downwards),
                    "nudge " + tool);
        } else if (!tool.isAxis() && bench.chosen().isPresent()) {
            bench.nudge(size * rightwards, size * downwards);
        } else {
            view.pan(-PAN * rightwards, -PAN * downwards);
        }
    }

    private AxisDraft axis(Tool tool) {
        return bench.document().tracing().map(tool.isAcross() ? Tracing::x : Tracing::y).orElse(AxisDraft.NONE);
    }

    private void step(int places) {
        int count = bench.line().points().size();
        if (count > 0) {
            bench.choose(OptionalInt.of(Math.floorMod(bench.chosen().orElse(places > 0 ? -1 : 0) + places, count)));
        }
    }

    @Override
    public void mousePressed(MouseEvent event) {
        view.requestFocusInWindow();
        fromX = event.getX();
        fromY = event.getY();
        panning = !SwingUtilities.isLeftMouseButton(event) || event.isAltDown();
        moving = false;
        PixelPoint place = view.at(event.getX(), event.getY());
        if (panning || !view.holds(place)) {
            return;
        }
        OptionalInt near = bench.tool().isPoints() ? view.near(event.getX(), event.getY()) : OptionalInt.empty();
        if (near.isPresent()) {
            bench.choose(near);
            moving = true;
            drag++;
        } else {
            bench.click(place);
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (panning) {
            view.pan(event.getX() - fromX, event.getY() - fromY);
            fromX = event.getX();
            fromY = event.getY();
        } else if (moving && view.holds(view.at(event.getX(), event.getY()))) {
            bench.moveChosen(view.at(event.getX(), event.getY()), "drag " + drag);
        }
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        view.pointer(Optional.of(event.getPoint()));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        view.pointer(Optional.empty());
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        view.zoom(-event.getWheelRotation(), event.getX(), event.getY());
    }
}
