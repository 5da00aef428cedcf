package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.task.Latest;
import fairpull.app.usecase.planning.Outlook;
import fairpull.domain.plan.Plan;
import fairpull.domain.search.Costs;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Columns;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Figures;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScrolledPage;
import fairpull.ui.form.Sentences;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Insets;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What the plan can see, always in view: reckoned beside the window's thread after every change. What can be done with it stands below. */
final class SidePanel extends Card {
    /** The width of a line of the panel. */
    static final int LINE = 284;

    private final Document document;
    private final Settings settings;
    private final Latest<Outlook> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private final JLabel key = new JLabel();
    private final Prose meaning = Prose.small("");
    private final Figures figures = new Figures(LINE);
    private final Sentences help = new Sentences(Words.of("outlook.help"));
    private final Sentences cautions = new Sentences(Words.of("outlook.cautions"));
    private final ProofPart proof;
    private final JButton seal;
    private Plan shown;
    private Costs reckoned;

    SidePanel(Document document, Settings settings, Runnable sealing, Runnable sheet) {
        super(Words.of("outlook"), new MigLayout("insets 20 20 16 12, gap 8 8, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
        this.document = document;
        this.settings = settings;
        setName("outlook");
        proof = new ProofPart(document);
        seal = Buttons.primary("outlook.seal", () -> (document.isSealed() ? sheet : sealing).run());
        key.setName("outlook.key");
        key.setFont(Look.font(Look.Type.KEY));
        ScrolledPage content = new ScrolledPage(10);
        content.add(key, "split 2, growx 0, gapright 10, hidemode 3");
        content.add(meaning, "growx, wmin 0, aligny center");
        content.add(figures, "growx, wmin 0");
        content.add(proof, "growx, wmin 0");
        content.add(help, "growx, wmin 0, hidemode 3");
        content.add(cautions, "growx, wmin 0, hidemode 3");
        add(ScrolledPage.scrolled(content), "grow, hmin 0, wmin 0");
        Columns acts = new Columns(8, "[grow, fill]", "[pref!, fill]");
        acts.add(seal, "h 34!");
        JButton prove = Buttons.of("outlook.prove", proof::prove);
        prove.setMargin(new Insets(2, 10, 2, 10));
        acts.add(prove, "h 34!");
        add(acts, "growx, gapright 8, gaptop 4");
        document.listen(() -> {
            refresh();
            reckon();
        });
        settings.listen(this::reckon);
        refresh();
        // what the plan can see is reckoned once the window is made
        SwingUtilities.invokeLater(this::reckon);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (key != null) {
            key.setFont(Look.font(Look.Type.KEY));
        }
    }

    private void refresh() {
        String key = document.isSealed() ? "outlook.sheet" : "outlook.seal";
        seal.setText(Words.of(key));
        seal.setMnemonic(Words.mnemonic(key));
        seal.setToolTipText(Words.tip(Words.of(key + ".tip")));
    }

    private void reckon() {
        Plan plan = document.plan();
        Costs costs = settings.costs();
        if (shown == null || !plan.equals(shown) || !costs.equals(reckoned)) {
            shown = plan;
            reckoned = costs;
            reckoning.ask(progress -> Outlook.of(plan, costs), ended -> ended.tell(this::show, this::fail));
        }
    }

    private void fail(Throwable fault) {
        key.setVisible(false);
        meaning.setText(FaultWords.of(fault));
        figures.keep(0);
        help.say(List.of());
        cautions.say(List.of());
        revalidate();
        repaint();
    }

    /** Shows what was reckoned. */
    void show(Outlook outlook) {
        key.setText(LocalNumbers.shown(outlook.key()));
        key.setVisible(!outlook.key().isEmpty());
        meaning.setText(outlook.keyMeaning());
        for (int place = 0; place < outlook.rows().size(); place++) {
            Outlook.Row row = outlook.rows().get(place);
            figures.figure(place, row.name(), row.figure());
        }
        figures.keep(outlook.rows().size());
        help.say(outlook.help());
        cautions.say(outlook.cautions());
        revalidate();
        repaint();
    }
}
