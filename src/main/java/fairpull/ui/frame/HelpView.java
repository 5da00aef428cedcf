package fairpull.ui.frame;

import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScrolledPage;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;

/** Help inside the program: how a fair test goes, the keys, and the words that are used everywhere. */
public final class HelpView extends JPanel {
    private static final int SENTENCES = 6;
    private static final int KEYS = 5;
    private static final List<String> GLOSSARY = List.of("test", "parts", "install", "pull", "warmUp", "swap", "measure", "worthwhile",
            "scatter", "record", "gate", "drift", "looks", "seal", "finding", "tipping", "claim");

    /** The view of it. */
    public HelpView() {
        super(new MigLayout("insets 16 20 16 20, fill", "[grow, fill]", "[grow, fill]"));
        setName("help");
        ScrolledPage page = new ScrolledPage(10);
        Card how = card("help.how");
        for (int sentence = 1; sentence <= SENTENCES; sentence++) {
            how.add(Prose.body(Words.of("help.how." + sentence)), "spanx, growx, wmin 0");
        }
        page.add(how, "growx, gapbottom 12");
        Card glossary = card("help.words");
        for (String word : GLOSSARY) {
            glossary.add(new Line(Words.of("word." + word), Role.INK, Look.Type.STRONG), "aligny top");
            glossary.add(Prose.body(Words.of("word." + word + ".means")), "growx, wmin 0");
        }
        page.add(glossary, "growx, gapbottom 12");
        Card keys = card("help.keys");
        for (int key = 1; key <= KEYS; key++) {
            keys.add(Prose.body(Words.of("help.keys." + key)), "spanx, growx, wmin 0");
        }
        page.add(keys, "growx");
        add(ScrolledPage.scrolled(page), "grow, hmin 0");
    }

    private static Card card(String key) {
        return new Card(Words.of(key), new MigLayout("insets 20, gap 16 8, fillx, wrap 2", "[pref!][grow, fill]"));
    }

    /** Opens it in a window of its own, beside the test. */
    static void open() {
        JFrame frame = new JFrame(Words.of("help.title"));
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        frame.add(new HelpView(), BorderLayout.CENTER);
        frame.setSize(720, 720);
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
    }
}
