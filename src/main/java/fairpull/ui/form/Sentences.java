package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Sentences under a heading, said anew in place; while there are none it takes no room. */
public final class Sentences extends JPanel {
    private final List<Prose> lines = new ArrayList<>();

    /** No sentences yet. */
    public Sentences(String heading) {
        super(new MigLayout("insets 0, gap 2 4, fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
        setVisible(false);
        add(new Line(heading, Role.INK, Look.Type.STRONG), "gaptop 8");
    }

    /** Says these sentences and no others. */
    public void say(List<String> sentences) {
        while (lines.size() < sentences.size()) {
            Prose line = Prose.body("");
            lines.add(line);
            add(line, "growx, wmin 0");
        }
        while (lines.size() > sentences.size()) {
            remove(lines.remove(lines.size() - 1));
        }
        for (int place = 0; place < sentences.size(); place++) {
            lines.get(place).setText(sentences.get(place));
        }
        setVisible(!sentences.isEmpty());
    }
}
