package fairpull.ui.page.run;

import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.running.RunFace;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Font;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is next, to be read from three metres, with the count-down to it; once the day is over, what was found. */
final class NextCard extends Card {
    private static final int INSETS = 24;
    /** Left and right of the card, and between the clock and what stands beside it. */
    private static final int SIDES = 44 + 24;
    /** So much smaller than in full size the action and the clock become at the most. */
    private static final double LEAST = 0.3;

    private final Headline head = new Headline();
    private final Line beside = new Line(" ", Role.SOFT, Look.Type.TITLE);
    private final Line counting = new Line(" ", Role.SOFT, Look.Type.TITLE);
    private final Line clock = new Line(" ", Role.INK, Look.Type.CLOCK);
    private final Line sign = new Line(" ", Role.INK, Look.Type.KEY);
    private final Prose window = new Prose("", Role.SOFT, Look.Type.TITLE);
    private final Prose trouble = new Prose("", Role.B, Look.Type.STRONG);
    private final JPanel timing = panel("[pref!]24[grow, fill]");
    private final JPanel outcome = panel("[grow, fill]");
    private final Prose verdict = new Prose("", Role.INK, Look.Type.VERDICT);
    private final Prose why = Prose.body("");
    private final JButton finding;

    /** A card; {@code finding} goes to the page that tells all of what was found. */
    NextCard(Runnable finding) {
        super("", new MigLayout("insets 12 24 12 20, gap 12 0, fillx, wrap 2, hidemode 3", "[pref!][grow, fill]"));
        setName("run.next");
        this.finding = Buttons.primary("run.finding", finding);
        head.setName("run.head");
        clock.setName("run.clock");
        sign.setName("run.sign");
        window.setName("run.window");
        trouble.setName("run.trouble");
        verdict.setName("run.verdict");
        add(new Line(Words.of("run.next"), Role.SOFT, Look.Type.STRONG));
        add(beside, "growx, wmin 0");
        add(head, "spanx, growx, wmin 0");
        timing.add(counting, "spanx, growx, wmin 0");
        timing.add(clock, "spany 3, aligny top");
        timing.add(sign, "growx, wmin 0, aligny bottom");
        timing.add(window, "growx, wmin 0");
        timing.add(trouble, "growx, wmin 0, aligny top");
        add(timing, "spanx, growx, wmin 0");
        outcome.add(verdict, "growx, wmin 0");
        outcome.add(why, "growx, wmin 0, gaptop 6");
        outcome.add(this.finding, "growx 0, hmin 34, gaptop 10");
        add(outcome, "spanx, growx, wmin 0");
        outcome.setVisible(false);
        trouble.setVisible(false);
    }

    /**
     * Keeps the action and its count-down within a height and width, in smaller type where need be; what no longer fits the day may lie
     * below.
     */
    void fit(int height, int width) {
        Font full = Look.font(Look.Type.CLOCK);
        int beside = Math.max(lineOf(Look.Type.TITLE), 1);
        double free = height - INSETS - beside - (timing.isVisible() ? beside : 0);
        double wanted = lineOf(Look.Type.STEP) + (timing.isVisible() ? lineOf(Look.Type.CLOCK) : 0);
        double across = (width - SIDES - sign.getPreferredSize().width) / (double) getFontMetrics(full).stringWidth("00:00");
        double share = Math.max(LEAST, Math.min(1, Math.min(free / wanted, across)));
        head.share(share);
        float size = (float) (full.getSize2D() * share);
        if (clock.getFont().getSize2D() != size) {
            clock.setFont(full.deriveFont(size));
        }
    }

    private int lineOf(Look.Type type) {
        return getFontMetrics(Look.font(type)).getHeight();
    }

    private static JPanel panel(String columns) {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 0 0, fillx, hidemode 3, wrap " + (columns.startsWith("[pref") ? 2 : 1),
                columns));
        panel.setOpaque(false);
        return panel;
    }

    /** Shows the action; what is shown already is left alone. */
    void show(RunFace face) {
        say(head, face.head());
        say(beside, face.beside());
        say(counting, face.counting());
        say(clock, face.clock());
        say(sign, face.sign());
        if (!window.getText().equals(face.window())) {
            window.setText(face.window());
        }
    }

    private static void say(javax.swing.JLabel line, String words) {
        String text = words.isEmpty() ? " " : words;
        if (!line.getText().equals(text)) {
            line.setText(text);
        }
    }

    /** Shows what was found in place of the count-down; nothing takes it away again. */
    void found(List<FindingView.Section> sections) {
        List<String> heads = sections.stream().map(FindingView.Section::heading).toList();
        verdict.setText(String.join("\n", heads));
        why.setText(sections.stream().filter(section -> section.kind().equals("verdict")).flatMap(section -> section.paragraphs().stream())
                .findFirst().orElse(""));
        outcome.setVisible(!sections.isEmpty());
        timing.setVisible(sections.isEmpty());
        revalidate();
    }

    /** Says beside the clock what no longer fits; empty takes it away. */
    void warn(String words) {
        if (!trouble.getText().equals(words)) {
            trouble.setText(words);
            trouble.setVisible(!words.isEmpty());
            revalidate();
        }
    }
}
