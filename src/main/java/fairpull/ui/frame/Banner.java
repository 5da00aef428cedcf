package fairpull.ui.frame;

import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/**
 * Says something in place, or asks it with a button an answer: no dialogue stands in the way. Its close sign or Escape silences it, which
 * answers nothing. While it is silent it takes no room.
 */
final class Banner extends JPanel {
    private final Prose words = Prose.verbatim();
    private final JPanel answers = new JPanel(new MigLayout("insets 0, gap 8"));

    Banner() {
        super(new MigLayout("insets 8 14 8 8, fillx", "[grow, fill][pref!][pref!]"));
        setOpaque(false);
        setName("banner");
        words.setName("banner.words");
        answers.setOpaque(false);
        add(words, "wmin 0, aligny center");
        add(answers);
        JButton close = Buttons.of("banner.close", () -> say(""));
        close.getAccessibleContext().setAccessibleName(Words.of("banner.close.name"));
        close.putClientProperty("JButton.buttonType", "toolBarButton");
        add(close);
        getInputMap(WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "banner.close");
        getActionMap().put("banner.close", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                say("");
            }
        });
        setVisible(false);
    }

    /** Says something; empty words take the banner away. */
    void say(String sentence) {
        ask(sentence, Map.of());
    }

    /** Asks something; each answer is a key of the words and what follows from it, the first one the usual one. */
    void ask(String question, Map<String, Runnable> following) {
        words.setText(question);
        answers.removeAll();
        boolean usual = true;
        for (Map.Entry<String, Runnable> answer : following.entrySet()) {
            JButton button = new JButton(Words.of(answer.getKey()));
            button.setName(answer.getKey());
            button.setMnemonic(Words.mnemonic(answer.getKey()));
            button.putClientProperty("FlatLaf.styleClass", usual ? "default" : "");
            button.addActionListener(event -> {
                say("");
                answer.getValue().run();
            });
            answers.add(button);
            usual = false;
        }
        setVisible(!question.isEmpty());
        getAccessibleContext().setAccessibleName(question);
        revalidate();
        repaint();
        if (answers.getComponentCount() > 0) {
            answers.getComponent(0).requestFocusInWindow();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Look.colour(Role.B_FILL));
        g.fillRoundRect(0, 0, getWidth(), getHeight(), 12, 12);
        g.dispose();
    }
}
