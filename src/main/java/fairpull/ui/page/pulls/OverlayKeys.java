package fairpull.ui.page.pulls;

import fairpull.ui.form.Keys;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.swing.SwingUtilities;

/** Mouse and keys of the overlay: the crosshair follows the pointer or the arrows; dragging, the wheel, + and − zoom, Home shows all. */
final class OverlayKeys extends MouseAdapter {
    private static final double STEP = 0.01;
    private static final double CLOSER = 0.8;
    private static final int MOVED = 6;

    private final OverlayView view;
    private int pressedX = -1;

    OverlayKeys(OverlayView view) {
        this.view = view;
    }

    void attach() {
        view.addMouseListener(this);
        view.addMouseMotionListener(this);
        view.addMouseWheelListener(this);
        Keys.bind(view, "LEFT", () -> step(-STEP));
        Keys.bind(view, "RIGHT", () -> step(STEP));
        Keys.bind(view, "ctrl LEFT", () -> pan(-0.1));
        Keys.bind(view, "ctrl RIGHT", () -> pan(0.1));
        for (String plus : new String[] {"PLUS", "ADD", "shift EQUALS"}) {
            Keys.bind(view, plus, () -> view.zoomAround(centre(), CLOSER));
        }
        for (String minus : new String[] {"MINUS", "SUBTRACT"}) {
            Keys.bind(view, minus, () -> view.zoomAround(centre(), 1 / CLOSER));
        }
        Keys.bind(view, "HOME", view::reset);
        Keys.bind(view, "ESCAPE", () -> view.crosshair(OptionalDouble.empty(), OptionalInt.empty()));
    }

    private double centre() {
        double[] range = view.range();
        return view.crosshair().orElse((range[0] + range[1]) / 2);
    }

    private void step(double share) {
        double[] range = view.range();
        double rpm = centre() + share * (range[1] - range[0]);
        view.crosshair(OptionalDouble.of(Math.max(range[0], Math.min(range[1], rpm))), OptionalInt.empty());
    }

    private void pan(double share) {
        double[] range = view.range();
        double by = share * (range[1] - range[0]);
        view.zoom(range[0] + by, range[1] + by);
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        view.crosshair(OptionalDouble.of(view.rpmAt(event.getX())), OptionalInt.of(event.getY()));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        view.crosshair(OptionalDouble.empty(), OptionalInt.empty());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        view.requestFocusInWindow();
        pressedX = SwingUtilities.isLeftMouseButton(event) ? event.getX() : -1;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (pressedX >= 0) {
            view.drag(Optional.of(new double[] {pressedX, event.getX()}));
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        view.drag(Optional.empty());
        if (pressedX >= 0 && Math.abs(event.getX() - pressedX) >= MOVED) {
            double one = view.rpmAt(pressedX);
            double other = view.rpmAt(event.getX());
            view.zoom(Math.min(one, other), Math.max(one, other));
        } else if (pressedX >= 0) {
            mouseMoved(event);
            view.click();
        }
        pressedX = -1;
    }

    /** With Ctrl alone the wheel zooms; without it the page scrolls, as everywhere. */
    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if (event.isControlDown() || view.isFocusOwner()) {
            view.zoomAround(view.rpmAt(event.getX()), event.getPreciseWheelRotation() < 0 ? CLOSER : 1 / CLOSER);
        } else {
            view.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(view, event, view.getParent()));
        }
    }
}
