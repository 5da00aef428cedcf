package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.running.DayFound;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScrolledPage;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What was found, in place of what the plan can see, once the day is over; the strip then carries the measured values. */
final class FoundPanel extends Card {
    private final Document document;
    private final DayStripView strip;
    private final JPanel other;
    private final Latest<Optional<DayFound>> judging = new Latest<>(SwingUtilities::invokeLater);
    private final ScrolledPage content = new ScrolledPage(10);
    /** The folder that was judged, and its stamp at that time. */
    private String judged = "";
    private Optional<DayFound> found = Optional.empty();
    private boolean yielding;

    /** A panel that takes the place of {@code other}; {@code finding} goes to the finding, {@code sheet} writes the run sheet. */
    FoundPanel(Document document, DayStripView strip, JPanel other, Runnable finding, Runnable sheet) {
        super(Words.of("found"), new MigLayout("insets 20 20 16 12, gap 8 8, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
        this.document = document;
        this.strip = strip;
        this.other = other;
        setName("found");
        add(ScrolledPage.scrolled(content), "grow, hmin 0, wmin 0");
        JPanel acts = new JPanel(new MigLayout("insets 2, gap 8 6, fillx", "[grow, fill][pref!, fill]"));
        acts.setOpaque(false);
        acts.add(Buttons.primary("found.finding", finding), "hmin 34, wmin 0");
        acts.add(Buttons.of("found.sheet", sheet), "hmin 34");
        add(acts, "growx, gapright 8, gaptop 4");
        setVisible(false);
    }

    /** Leaves the room of the side panel to the page in view, or takes it again. */
    void yieldTo(boolean wide) {
        yielding = wide;
        look();
    }

    /** Looks whether the test on disk has changed, and judges it then beside the window's thread. While it is amended the plan is shown. */
    void look() {
        boolean over = found.isPresent() && document.isFixed();
        setVisible(over && !yielding);
        other.setVisible(!over && !yielding);
        Optional<Path> folder = document.folder().filter(where -> document.isSealed());
        String stamp = folder.map(where -> where + " " + FindingView.stamp(where)).orElse("");
        if (!stamp.equals(judged)) {
            judged = stamp;
            // a test that cannot be judged yet says why on its page; here the plan then stays
            folder.ifPresentOrElse(where -> judging.ask(Job.onDisk(() -> DayFound.of(where)),
                    ended -> ended.tell(this::show, fault -> show(Optional.empty()))), () -> show(Optional.empty()));
        }
    }

    private void show(Optional<DayFound> now) {
        found = now;
        content.removeAll();
        found.ifPresent(day -> day.said().forEach(section -> {
            boolean verdict = section.kind().equals("verdict");
            content.add(new Prose(section.heading(), verdict ? Role.INK : Role.B, verdict ? Look.Type.VERDICT : Look.Type.HEAD),
                    "growx, wmin 0");
            section.paragraphs().forEach(paragraph -> content.add(Prose.body(paragraph), "growx, wmin 0"));
        }));
        strip.measured(found);
        look();
        revalidate();
        repaint();
    }
}
