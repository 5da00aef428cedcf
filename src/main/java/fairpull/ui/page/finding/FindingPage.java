package fairpull.ui.page.finding;

import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.FindingView;
import fairpull.app.usecase.KeepReport;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.HowFar;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What was found: judged beside the window's thread, the same cards and figures as the report and the command line. */
public final class FindingPage implements Page {
    private final Desk desk;
    private final ReportBar bar;
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final Latest<FindingView> judging = new Latest<>(SwingUtilities::invokeLater);
    private final HowFar howFar = new HowFar("finding.reading");
    /** The folder that was judged, and its stamp at that time. */
    private String judged = "";
    /** The stamp of what is in view; empty while nothing is. */
    private String seen = "";
    private Optional<KeepReport.Kind> wanted = Optional.empty();

    /** The page on a desk. */
    public FindingPage(Desk desk) {
        this.desk = desk;
        view.setOpaque(false);
        view.setName("finding");
        bar = new ReportBar(desk.settings(), this::write, () -> desk.document().folder().ifPresent(this::judge));
    }

    @Override
    public String key() {
        return "page.finding";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public Optional<String> notYet(Document document) {
        return document.isSealed() ? desk.blinded() : Optional.of(Words.of("finding.notYet"));
    }

    @Override
    public void show() {
        Optional<Path> folder = desk.document().folder();
        if (folder.isPresent() && !stamp(folder.get()).equals(judged)) {
            judge(folder.get());
        }
    }

    private static String stamp(Path folder) {
        return folder + " " + FindingView.stamp(folder);
    }

    /** Has the finding written that is in view; where it is still being judged, as soon as it is. */
    public void write(KeepReport.Kind kind) {
        if (seen.isEmpty()) {
            wanted = Optional.of(kind);
        } else {
            ReportWriter.around(view).write(kind, seen);
        }
    }

    private void judge(Path folder) {
        judged = stamp(folder);
        String now = FindingView.stamp(folder);
        seen = "";
        say(Words.of("finding.judging"));
        view.add(howFar, "growx, wmin 0");
        howFar.begins(Words.of("pulls.reading"));
        judging.ask(progress -> Job.onDisk(() -> FindingView.of(folder, progress)).apply(progress), howFar::reached,
                ended -> ended.tell(finding -> {
            seen = now;
            tell(finding.sections());
            wanted.ifPresent(this::write);
            wanted = Optional.empty();
        }, fault -> {
            wanted = Optional.empty();
            say(FaultWords.of(fault));
            view.add(Buttons.of("finding.again", () -> judge(folder)), "growx 0");
        }));
    }

    private void say(String words) {
        view.removeAll();
        view.add(new Prose(words, Role.INK, Look.Type.HEAD), "growx, wmin 0");
        refreshed();
    }

    private void tell(List<FindingView.Section> sections) {
        view.removeAll();
        view.add(bar, "growx, wmin 0");
        List<SectionCard> cards = sections.stream().map(SectionCard::new).toList();
        JCheckBox everything = new JCheckBox(Words.of("finding.everything"));
        everything.setName("finding.everything");
        everything.setMnemonic(Words.mnemonic("finding.everything"));
        everything.setOpaque(false);
        everything.setToolTipText(Words.tip(Words.of("finding.everything.tip")));
        everything.addActionListener(event -> cards.forEach(card -> card.open(everything.isSelected())));
        view.add(everything, "growx 0");
        cards.forEach(card -> view.add(card, "growx, wmin 0"));
        refreshed();
    }

    private void refreshed() {
        view.revalidate();
        view.repaint();
    }
}
