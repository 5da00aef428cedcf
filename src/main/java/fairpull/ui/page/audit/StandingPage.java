package fairpull.ui.page.audit;

import fairpull.app.task.Latest;
import fairpull.app.usecase.auditing.AuditSections;
import fairpull.app.usecase.auditing.AuditView;
import fairpull.app.usecase.judging.FindingView.Section;
import fairpull.domain.audit.AuditAnswer;
import fairpull.report.chart.Role;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.finding.SectionCard;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** How the claims stand, in full: the same cards and figures as the report and the command line. */
public final class StandingPage implements AuditPage {
    private static final double LARGE = 1.25;

    private final AuditDesk desk;
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final Latest<List<Section>> laying = new Latest<>(SwingUtilities::invokeLater);
    private Optional<AuditAnswer> shown = Optional.empty();

    /** The page on a desk. */
    public StandingPage(AuditDesk desk) {
        this.desk = desk;
        view.setOpaque(false);
        view.setName("audit.standing");
    }

    @Override
    public String key() {
        return "page.standing";
    }

    @Override
    public JComponent view() {
        return view;
    }

    /** In large type its charts need all the width to be read; what stands in the panel stands here too. */
    @Override
    public boolean isWide() {
        return Look.scale() >= LARGE;
    }

    @Override
    public Optional<String> notYet() {
        return desk.draft().publication().isPresent() ? Optional.empty() : Optional.of(Words.of("audit.standing.notYet"));
    }

    @Override
    public void show() {
        Optional<AuditAnswer> answer = desk.auditing().view().map(AuditView::answer);
        if (answer.isEmpty()) {
            shown = Optional.empty();
            say(desk.auditing().trouble().isEmpty() ? Words.of("audit.working") : desk.auditing().trouble());
        } else if (!answer.equals(shown)) {
            shown = answer;
            laying.ask(progress -> AuditSections.of(answer.get()), ended -> ended.tell(this::tell, fault -> say(FaultWords.of(fault))));
        }
    }

    private void say(String words) {
        view.removeAll();
        view.add(new Prose(words, Role.INK, Look.Type.HEAD), "growx, wmin 0");
        view.revalidate();
        view.repaint();
    }

    private void tell(List<Section> sections) {
        view.removeAll();
        sections.forEach(section -> view.add(new SectionCard(section), "growx, wmin 0"));
        view.revalidate();
        view.repaint();
    }
}
