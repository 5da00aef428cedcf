package fairpull.ui.page.finding;

import fairpull.app.document.Settings;
import fairpull.app.usecase.KeepReport;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Line;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The ways in which a finding leaves the program, and what is to stand in it. */
final class ReportBar extends JPanel {
    ReportBar(Settings settings, Consumer<KeepReport.Kind> writing, Runnable again) {
        super(new MigLayout("insets 0, gap 0 6, fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
        setName("report");
        JPanel ways = row("[][][][][]push");
        ways.add(new Line(Words.of("report"), Role.SOFT, Look.Type.BODY));
        for (KeepReport.Kind kind : KeepReport.Kind.values()) {
            ways.add(Buttons.of("report." + kind.name().toLowerCase(Locale.ROOT), () -> writing.accept(kind)));
        }
        add(ways);
        JPanel options = row("[][]push[]");
        Choice<String> paper = new Choice<>("report.paper", ReportOptions.PAPERS, size -> Words.of("report.paper." + size),
                size -> settings.set(ReportOptions.PAPER, size));
        paper.show(ReportOptions.paper(settings));
        paper.addTo(options);
        options.add(Buttons.of("finding.again", again));
        add(options);
        JCheckBox identity = new JCheckBox(Words.of("report.identity"), ReportOptions.withoutIdentity(settings));
        identity.setName("report.identity");
        identity.setMnemonic(Words.mnemonic("report.identity"));
        identity.setToolTipText(Words.tip(Words.of("report.identity.tip")));
        identity.setOpaque(false);
        identity.addActionListener(event -> settings.set(ReportOptions.IDENTITY, Boolean.toString(identity.isSelected())));
        add(identity, "wmin 0");
        settings.listen(() -> {
            paper.show(ReportOptions.paper(settings));
            identity.setSelected(ReportOptions.withoutIdentity(settings));
        });
    }

    private static JPanel row(String columns) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8 0, fillx", columns));
        row.setOpaque(false);
        return row;
    }
}
