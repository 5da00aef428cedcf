package fairpull.ui.page.run;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.awt.Font;
import javax.swing.JLabel;

/** What is next in type as large as its place allows, up to that of the design: it is never cut off. */
final class Headline extends JLabel {
    private static final float STEP = 1;

    private double share = 1;

    Headline() {
        super(" ");
        dress();
    }

    private void dress() {
        setForeground(Look.colour(Role.INK));
        fit();
    }

    /** Takes a share of its full size, where the height is scarce. */
    void share(double of) {
        if (share != of) {
            share = of;
            fit();
            revalidate();
        }
    }

    private Font largest() {
        Font full = Look.font(Look.Type.STEP);
        return full.deriveFont((float) (full.getSize2D() * share));
    }

    private void fit() {
        Font font = largest();
        float least = Look.font(Look.Type.TITLE).getSize2D();
        while (getWidth() > 0 && font.getSize2D() > least && getFontMetrics(font).stringWidth(getText()) > getWidth()) {
            font = font.deriveFont(font.getSize2D() - STEP);
        }
        setFont(font);
    }

    @Override
    public void setText(String words) {
        super.setText(words);
        fit();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean resized = width != getWidth();
        super.setBounds(x, y, width, height);
        if (resized) {
            fit();
        }
    }

    /** As high as at its largest, so that nothing beneath it moves with the words. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, getFontMetrics(largest()).getHeight());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (share > 0) { // not while it is being made
            dress();
        }
    }
}
