package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.task.Latest;
import fairpull.app.usecase.Outlook;
import fairpull.domain.plan.Plan;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What the plan can see, always in view: reckoned beside the window's thread after every change. */
final class SidePanel extends Card {
    private final Document document;
    private final Latest<Outlook> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private final JLabel key = new JLabel("–");
    private final Prose meaning = Prose.small("");
    private final JPanel rows = new JPanel(new MigLayout("insets 0, gap 4 6, fillx, wrap 2", "[pref!]8[grow, right]"));
    private final JPanel help = new JPanel(new MigLayout("insets 0, gap 2 4, fillx, wrap 1", "[grow, fill]"));
    private Plan shown;

    SidePanel(Document document) {
        super(Words.of("outlook"), new MigLayout("insets 20, gap 8 8, fillx, wrap 2", "[pref!]10[grow, fill]"));
        this.document = document;
        setName("outlook");
        key.setName("outlook.key");
        key.setFont(Look.font(Look.Type.KEY));
        rows.setOpaque(false);
        help.setOpaque(false);
        add(key, "");
        add(meaning, "growx, wmin 0, aligny center");
        add(rows, "spanx, growx");
        add(help, "spanx, growx");
        document.listen(this::refresh);
        refresh();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (key != null) {
            key.setFont(Look.font(Look.Type.KEY));
        }
    }

    private void refresh() {
        Plan plan = document.plan();
        if (!plan.equals(shown)) {
            shown = plan;
            reckoning.ask(progress -> Outlook.of(plan), ended -> ended.result().ifPresent(this::show));
        }
    }

    /** Shows what was reckoned. */
    void show(Outlook outlook) {
        key.setText(outlook.key());
        meaning.setText(outlook.keyMeaning());
        rows.removeAll();
        for (Outlook.Row row : outlook.rows()) {
            JLabel name = new JLabel(row.name());
            name.setForeground(Look.colour(Role.SOFT));
            JLabel figure = new JLabel(row.figure());
            figure.setFont(Look.font(Look.Type.STRONG));
            rows.add(name);
            rows.add(figure, "wmin 0");
        }
        help.removeAll();
        section("outlook.help", outlook.help());
        if (!outlook.cautions().isEmpty()) {
            section("outlook.cautions", outlook.cautions());
        }
        revalidate();
        repaint();
    }

    private void section(String heading, Iterable<String> sentences) {
        JLabel head = new JLabel(Words.of(heading));
        head.setFont(Look.font(Look.Type.STRONG));
        help.add(head, "gaptop 8");
        sentences.forEach(sentence -> help.add(Prose.body(sentence), "growx, wmin 0"));
    }
}
