package fairpull.ui.frame;

import fairpull.report.chart.Role;
import fairpull.ui.form.Line;
import fairpull.ui.page.Leaf;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * The path of pages in the order of the work. Those that cannot be reached yet are grey and say why.
 *
 * @param <L> the pages
 */
final class PagePath<L extends Leaf> extends JPanel {
    private final transient Map<L, JToggleButton> buttons = new LinkedHashMap<>();

    PagePath(List<L> pages, Consumer<L> go) {
        super(new MigLayout("insets 4 0 4 0, gap 6"));
        setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (L page : pages) {
            if (!buttons.isEmpty()) {
                add(new Line("›", Role.SOFT, Look.Type.BODY));
            }
            JToggleButton button = new Step(page.key());
            button.addActionListener(event -> go.accept(page));
            group.add(button);
            buttons.put(page, button);
            add(button);
        }
    }

    /** Marks the page in view, and says of every page whether it can be reached. */
    void show(L current, Function<L, Optional<String>> whyNotYet) {
        buttons.forEach((page, button) -> {
            Optional<String> notYet = whyNotYet.apply(page);
            button.setEnabled(notYet.isEmpty());
            button.setToolTipText(Words.tip(notYet.orElseGet(() -> Words.find(page.key() + ".tip").orElse(""))));
            button.setSelected(page == current);
        });
    }

    /** A step of the path: solid ink where one is, plain words elsewhere. */
    private static final class Step extends JToggleButton {
        Step(String key) {
            super(Words.of(key));
            setName(key);
            setMnemonic(Words.mnemonic(key));
            dress();
            getAccessibleContext().setAccessibleName(Words.of(key));
        }

        @Override
        public void updateUI() {
            super.updateUI();
            dress();
        }

        private void dress() {
            setContentAreaFilled(false);
            setFocusPainted(false);
            setBorder(BorderFactory.createEmptyBorder(5, 10, 5, 10));
            setFont(Look.font(Look.Type.STRONG));
        }

        @Override
        public Color getForeground() {
            return Look.colour(isSelected() ? Role.CARD : isEnabled() ? Role.INK : Role.SOFT);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            if (isSelected()) {
                g.setColor(Look.colour(Role.INK));
                g.fillRoundRect(0, 0, getWidth(), getHeight(), 8, 8);
            } else if (isFocusOwner() || getModel().isRollover() && isEnabled()) {
                g.setColor(Look.colour(Role.LINE));
                g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, 8, 8);
            }
            g.dispose();
            super.paintComponent(graphics);
        }
    }
}
