package fairpull.ui.page.run;

import fairpull.ui.theme.Look;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.ComponentListener;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The cards of a day beside each other where there is room for it, so that all of it is in view at once; else in fewer columns. */
final class Board extends JPanel {
    /** From so many units of type on there is room for three columns. */
    private static final double THREE = 1080;
    private static final double TWO = 560;
    /** The layout lets it grow with the type. */
    private static final int SIDE = 296;
    private static final int GAP = 12;

    private final NextCard next;
    private final JComponent gates;
    private final JComponent soFar;
    private final JComponent acts;
    private final JComponent watch;
    private final JComponent cautions;
    private final transient ComponentListener resized = new ComponentAdapter() {
        @Override
        public void componentResized(ComponentEvent event) {
            revalidate();
        }
    };
    private transient Optional<JViewport> view = Optional.empty();
    private int columns;
    private double scale;

    Board(NextCard next, GatesCard gates, SoFarCard soFar, ActsCard acts, WatchCard watch, JComponent cautions) {
        this.next = next;
        this.gates = gates;
        this.soFar = soFar;
        this.acts = acts;
        this.watch = watch;
        this.cautions = cautions;
        setOpaque(false);
        arrange(3);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        double room = width / Look.scale();
        int wanted = room >= THREE ? 3 : room >= TWO ? 2 : 1;
        if (width > 0 && (wanted != columns || scale != Look.scale())) {
            arrange(wanted);
            revalidate();
        }
    }

    /** As narrow as one column can be: the columns follow the room, and not the room the columns. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension((int) Math.round(SIDE * scale), super.getMinimumSize().height);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        view = Optional.ofNullable((JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, this));
        view.ifPresent(around -> around.addComponentListener(resized));
    }

    @Override
    public void removeNotify() {
        view.ifPresent(around -> around.removeComponentListener(resized));
        view = Optional.empty();
        super.removeNotify();
    }

    /** What is next takes no more height than the keys leave it. */
    @Override
    public void doLayout() {
        view.filter(around -> around.getHeight() > 0).ifPresent(around -> {
            int below = columns == 1 ? acts.getPreferredSize().height + GAP : 0;
            int beside = columns == 1 ? 0 : (columns - 1) * (2 * GAP + acts.getWidth());
            next.fit(around.getHeight() - below, getWidth() - beside);
        });
        super.doLayout();
    }

    private void arrange(int wanted) {
        columns = wanted;
        scale = Look.scale();
        removeAll();
        String side = "[" + SIDE + "!, fill]";
        setLayout(new MigLayout("insets 0, gap " + GAP + " 8, fillx, wrap " + columns, "[grow, fill]" + side.repeat(columns - 1)));
        switch (columns) {
            case 3 -> List.of(stack(next, gates), stack(soFar), stack(acts, watch)).forEach(this::column);
            case 2 -> List.of(stack(next, gates), stack(acts, soFar, watch)).forEach(this::column);
            default -> column(stack(next, acts, gates, soFar, watch));
        }
        add(cautions, "spanx, growx, wmin 0");
    }

    private void column(Component stack) {
        add(stack, "grow, wmin 0");
    }

    /** Cards one below the other; the last one fills what is left. */
    private static JPanel stack(JComponent... cards) {
        JPanel stack = new JPanel(new MigLayout("insets 0, gap 0 10, fill, wrap 1", "[grow, fill]"));
        stack.setOpaque(false);
        for (int place = 0; place < cards.length; place++) {
            stack.add(cards[place], place + 1 == cards.length ? "grow, pushy, wmin 0" : "growx, wmin 0");
        }
        return stack;
    }
}
