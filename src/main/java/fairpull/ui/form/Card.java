package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** White ground with a thin line around it: one thought. It starts with a sentence or a figure. */
public class Card extends JPanel {
    private static final double RADIUS = 12;

    private final Prose heading = new Prose("", Role.INK, Look.Type.HEAD);

    /** A card with a heading that is a sentence. */
    public Card(String sentence) {
        this(sentence, new MigLayout("insets 20, gap 8 8, fillx, wrap 2", "[pref!][grow, fill]"));
    }

    /** A card whose content is laid out in its own way; the heading spans the first row. */
    @SuppressWarnings("this-escape") // a Swing component is put together in its constructor
    public Card(String sentence, LayoutManager layout) {
        super(layout);
        setOpaque(false);
        heading.setText(sentence);
        if (!sentence.isEmpty()) {
            add(heading, "spanx, growx, wmin 0, gapbottom 4, wrap");
        }
    }

    /** Says something else above. */
    public void head(String sentence) {
        heading.setText(sentence);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        RoundRectangle2D shape = new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, RADIUS, RADIUS);
        g.setColor(Look.colour(Role.CARD));
        g.fill(shape);
        g.setColor(Look.colour(Role.LINE));
        g.draw(shape);
        g.dispose();
    }
}
