package fairpull.ui.page.finding;

import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.task.Progress;
import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.judging.KeepReport;
import fairpull.app.usecase.judging.NotYetOver;
import fairpull.app.usecase.running.RunDay;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.HowFar;
import fairpull.ui.form.Prose;
import fairpull.ui.form.Teller;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * What was found: judged beside the window's thread, the same cards and figures as the report and the command line. Not before the end of
 * the day or a planned look, so that nobody can stop when luck is good.
 */
public final class FindingPage implements Page {
    private final Desk desk;
    private final ReportBar bar;
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final Latest<Told> judging = new Latest<>(SwingUtilities::invokeLater);
    private final HowFar howFar = new HowFar("finding.reading");
    /** The folder that was judged, and its stamp at that time. */
    private String judged = "";
    /** The stamp of what is in view; empty while nothing is. */
    private String seen = "";
    private Optional<KeepReport.Kind> wanted = Optional.empty();
    private Optional<NotYetOver> early = Optional.empty();

    /** What may be told: why nothing is yet, or what was found. */
    private record Told(Optional<NotYetOver> early, List<FindingView.Section> sections) {
        static Told of(Path folder, Progress progress) throws IOException {
            Optional<NotYetOver> early = NotYetOver.of(folder);
            return new Told(early, early.isPresent() ? List.of() : FindingView.of(folder, progress).sections());
        }
    }

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

    /** The side panel would say the verdict once more. */
    @Override
    public boolean isWide() {
        return true;
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
        if (early.isPresent()) {
            Teller.around(view).say(early.get().heading() + ". " + String.join(" ", early.get().sentences()));
        } else if (seen.isEmpty()) {
            wanted = Optional.of(kind);
        } else {
            ReportWriter.around(view).write(kind, seen);
        }
    }

    private void judge(Path folder) {
        judged = stamp(folder);
        String now = FindingView.stamp(folder);
        seen = "";
        early = Optional.empty();
        say(Words.of("finding.judging"));
        view.add(howFar, "growx, wmin 0");
        howFar.begins(Words.of("pulls.reading"));
        judging.ask(Job.onDisk(progress -> Told.of(folder, progress)), howFar::reached, ended -> ended.tell(told -> {
            Optional<KeepReport.Kind> writing = wanted;
            wanted = Optional.empty();
            early = told.early();
            early.ifPresentOrElse(why -> wait(folder, why), () -> {
                seen = now;
                tell(told.sections());
            });
            writing.ifPresent(this::write);
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

    private void wait(Path folder, NotYetOver early) {
        view.removeAll();
        view.add(new EarlyCard(early, new EarlyCard.Ways() {
            @Override
            public void run() {
                desk.pages().accept("page.run");
            }

            @Override
            public void look() {
                change(folder, () -> NotYetOver.look(folder, now()));
            }

            @Override
            public void end(String reason) {
                change(folder, () -> RunDay.of(folder).end(reason, now()));
            }
        }), "growx, wmin 0");
        refreshed();
    }

    private static OffsetDateTime now() {
        return OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS);
    }

    private <R> void change(Path folder, Job.OnDisk<R> work) {
        Teller.around(view).onDisk(work, done -> judge(folder));
    }

    private void tell(List<FindingView.Section> sections) {
        FoundCards cards = FoundCards.of(sections);
        bar.onEverything(cards::open);
        view.removeAll();
        cards.addTo(view, bar);
        refreshed();
    }

    private void refreshed() {
        view.revalidate();
        view.repaint();
    }
}
