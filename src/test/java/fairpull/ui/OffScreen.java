package fairpull.ui;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Toolkit;
import java.awt.event.ComponentListener;
import java.awt.event.ContainerEvent;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.event.CaretListener;
import javax.swing.text.JTextComponent;

/** Lays out and draws components without a display. */
public final class OffScreen {
    static {
        // pages are made when they are first shown, after all else was laid out
        Toolkit.getDefaultToolkit().addAWTEventListener(event -> {
            if (event.getID() == ContainerEvent.COMPONENT_ADDED) {
                silence(((ContainerEvent) event).getChild());
            }
        }, AWTEvent.CONTAINER_EVENT_MASK);
    }

    private OffScreen() {
    }

    /** {@return a component laid out at a size, as a window would have it} */
    public static <C extends JComponent> C laidOut(C component, int width, int height) {
        if (!component.isDisplayable()) {
            component.addNotify();
        }
        silence(component);
        component.setSize(width, height);
        // text that wraps takes its height from the width that the first pass gives it
        for (int pass = 0; pass < 3; pass++) {
            invalidate(component);
            layOut(component);
        }
        return component;
    }

    /** The accessible side of a text asks for its place on the screen whenever it moves; here there is no screen. */
    static void silence(Component component) {
        if (component instanceof JTextComponent text) {
            for (ComponentListener listener : text.getComponentListeners()) {
                if (isAccessibleSide(listener)) {
                    text.removeComponentListener(listener);
                }
            }
            for (CaretListener listener : text.getCaretListeners()) {
                if (isAccessibleSide(listener)) {
                    text.removeCaretListener(listener);
                }
            }
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                silence(child);
            }
        }
    }

    private static boolean isAccessibleSide(Object listener) {
        return listener.getClass().getName().contains("$AccessibleJText");
    }

    private static void invalidate(Component component) {
        component.invalidate();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                invalidate(child);
            }
        }
    }

    private static void layOut(Component component) {
        if (component instanceof Container container) {
            container.doLayout();
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }

    /** {@return a component as a screen of some scale has it: letters have their widths on that screen} */
    public static <C extends JComponent> C onScreenOf(int scale, C component) {
        JPanel screen = new JPanel(null) {
            private final GraphicsConfiguration ours = new ScaledScreen(scale);

            @Override
            public GraphicsConfiguration getGraphicsConfiguration() {
                return ours;
            }
        };
        screen.add(component);
        return component;
    }

    /** {@return a picture of a component at a size and scale} */
    public static BufferedImage picture(JComponent component, int width, int height, int scale) {
        laidOut(component, width, height);
        BufferedImage image = new BufferedImage(width * scale, height * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        component.printAll(g);
        g.dispose();
        return image;
    }
}
