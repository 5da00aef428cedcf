package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.report.chart.Role;
import fairpull.ui.form.Input;
import fairpull.ui.form.Teller;
import fairpull.ui.page.Leaf;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * What every window with a path of pages has around them: a title, what is said and asked, the path, and room for a side panel. It can
 * be shown and driven without a display.
 *
 * @param <L> the pages
 */
public abstract class PathPane<L extends Leaf> extends JPanel implements Teller {
    /** The width of the side panel at the usual size of type. */
    private static final int SIDE = 340;

    private final transient Settings settings;
    private final transient Function<L, Optional<String>> whyNotYet;
    private final JLabel title = new JLabel();
    private final JLabel subtitle = new JLabel();
    private final JLabel message = new JLabel(" ");
    private final Banner banner = new Banner();
    private Stage<L> stage;
    private PagePath<L> path;

    /** A pane that remembers what {@code remembered} does; {@code whyNotYet} says why a page cannot be reached yet. */
    PathPane(Settings remembered, Function<L, Optional<String>> whyNotYet) {
        super(new MigLayout("insets 12 24 16 24, gap 16 0, fill, hidemode 3"));
        settings = remembered.ofOne();
        this.whyNotYet = whyNotYet;
        message.setName("message");
    }

    /** Takes the pages, in the order of the work; before anything else is asked of the pane. */
    final void staged(List<L> pages) {
        stage = new Stage<>(pages, page -> whyNotYet.apply(page).isEmpty());
        path = new PagePath<>(pages, this::go);
        stage.keys(this, this::go);
        dress();
    }

    /** {@return what is remembered while the pane lives} */
    final Settings settings() {
        return settings;
    }

    final JLabel title() {
        return title;
    }

    final JLabel subtitle() {
        return subtitle;
    }

    /** Adds the path, and beside it what the pages say of what is typed. */
    final void addPath() {
        add(path, "split 2, spanx, gaptop 6");
        add(message, "growx, wmin 0, wrap");
    }

    /** Adds where the pane speaks: at its foot, so that nothing moves away beneath a hand that is about to click. */
    final void addBanner() {
        add(banner, "newline, spanx, growx, gaptop 6");
    }

    /** Adds the pages. */
    final void addStage() {
        add(stage, "grow, pushy, wmin 0, hmin 0, gaptop 6");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (stage != null) {
            dress();
        }
    }

    private void dress() {
        columns();
        title.setFont(Look.font(Look.Type.TITLE));
        subtitle.setFont(Look.font(Look.Type.SMALL));
        subtitle.setForeground(Look.colour(Role.SOFT));
        message.setFont(Look.font(Look.Type.SMALL));
        message.setForeground(Look.colour(Role.INK));
    }

    /** The side panel grows with the type, but leaves the pages the larger part, or all of it. */
    private void columns() {
        String side = SIDE + ":" + Math.round(SIDE * Look.scale()) + ":40%";
        ((MigLayout) getLayout()).setColumnConstraints(current().isWide() ? "[grow, fill]0[0!]"
                : "[grow, fill][" + side + ", fill, shrink 0]");
        revalidate();
    }

    /** Says what is wrong with what is typed; empty words take it away. */
    final void complain(String words) {
        message.setText(words.isEmpty() ? " " : LocalNumbers.shown(words));
        message.setToolTipText(words.isEmpty() ? null : Words.tip(words));
    }

    @Override
    public void say(String words) {
        banner.say(words);
    }

    @Override
    public void ask(String question, Map<String, Runnable> answers) {
        banner.ask(question, answers);
    }

    /** Does something once what is still being typed has been sent: it counts as edited before. */
    public void flushed(Runnable work) {
        Input.flush(this);
        work.run();
    }

    /** {@return whether a field shows something else than the document holds, because it is not understood} */
    boolean complains() {
        return stage.complaint().isPresent();
    }

    /** {@return whether a field is not understood; the first such field is then brought into view, and what is wrong with it said} */
    boolean showsComplaint() {
        Optional<Stage.Complaint<L>> found = stage.complaint();
        found.ifPresent(complaint -> {
            go(complaint.page());
            complaint.reach();
            say(LocalNumbers.shown(complaint(complaint.entry().name(), complaint.entry().wrong())));
        });
        return found.isPresent();
    }

    /** {@return what is said of a field that is not understood} */
    abstract String complaint(String field, String wrong);

    /** Brings a page into view. */
    public void go(L page) {
        complain("");
        stage.bring(page);
        refresh();
    }

    final void go(String key) {
        stage.page(key).ifPresent(this::go);
    }

    /** {@return the page in view} */
    final L current() {
        return stage.current();
    }

    /** {@return the pages in the order of the work} */
    public List<L> pages() {
        return stage.pages();
    }

    /** {@return what gets the focus first} */
    JComponent first() {
        return path;
    }

    /** Lets go of what outlives it. */
    public void end() {
        settings.end();
    }

    /** Says of every page whether it can be reached. */
    final void showPath() {
        path.show(current(), whyNotYet);
    }

    /** Shows the document as it stands; the kinds add what they show of it around the pages. */
    void refresh() {
        showPath();
        columns();
        current().show();
    }
}
