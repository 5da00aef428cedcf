package fairpull.ui.page.run;

import fairpull.app.usecase.RunFace;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import net.miginfocom.swing.MigLayout;

/** What is next, to be read from three metres, with the count-down to it. */
final class NextCard extends Card {
    private final Line head = new Line(" ", Role.INK, Look.Type.STEP);
    private final Line beside = new Line(" ", Role.SOFT, Look.Type.TITLE);
    private final Line counting = new Line(" ", Role.SOFT, Look.Type.TITLE);
    private final Line clock = new Line(" ", Role.INK, Look.Type.CLOCK);
    private final Line sign = new Line(" ", Role.INK, Look.Type.KEY);
    private final Line window = new Line(" ", Role.SOFT, Look.Type.TITLE);
    private final Prose trouble = new Prose("", Role.B, Look.Type.STRONG);

    NextCard() {
        super("", new MigLayout("insets 16 24 16 20, gap 24 0, fillx, wrap 2, hidemode 3", "[pref!][grow, fill]"));
        setName("run.next");
        head.setName("run.head");
        clock.setName("run.clock");
        sign.setName("run.sign");
        trouble.setName("run.trouble");
        add(new Line(Words.of("run.next"), Role.SOFT, Look.Type.STRONG), "spanx");
        add(head, "spanx, growx, wmin 0");
        add(beside, "spanx, growx, wmin 0");
        add(counting, "spanx, growx, wmin 0, gaptop 8");
        add(clock, "spany 2, h 104!");
        add(sign, "growx, wmin 0, aligny bottom");
        add(window, "growx, wmin 0, aligny top");
        add(trouble, "spanx, growx, wmin 0, gaptop 8");
        trouble.setVisible(false);
    }

    /** Shows the action; what is shown already is left alone. */
    void show(RunFace face) {
        say(head, face.head());
        say(beside, face.beside());
        say(counting, face.counting());
        say(clock, face.clock());
        say(sign, face.sign());
        say(window, face.window());
    }

    private static void say(Line line, String words) {
        String text = words.isEmpty() ? " " : words;
        if (!line.getText().equals(text)) {
            line.setText(text);
        }
    }

    /** Says beneath it what cannot be, or what no longer fits; empty takes it away. */
    void warn(String words) {
        if (!trouble.getText().equals(words)) {
            trouble.setText(words);
            trouble.setVisible(!words.isEmpty());
            revalidate();
        }
    }
}
