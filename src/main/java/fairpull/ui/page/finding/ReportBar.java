package fairpull.ui.page.finding;

import fairpull.app.document.Settings;
import fairpull.app.usecase.judging.KeepReport;
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
    private final JCheckBox everything = box("finding.everything");
    private transient Consumer<Boolean> opening = open -> { };

    ReportBar(Settings settings, Consumer<KeepReport.Kind> writing, Runnable again) {
        super(new MigLayout("insets 0, gap 0 6, fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
        setName("report");
        JPanel ways = row("[][][][][]push[]");
        ways.add(new Line(Words.of("report"), Role.SOFT, Look.Type.BODY));
        for (KeepReport.Kind kind : KeepReport.Kind.values()) {
            ways.add(Buttons.of("report." + kind.name().toLowerCase(Locale.ROOT), () -> writing.accept(kind)));
        }
        ways.add(Buttons.of("finding.again", again));
        add(ways);
        JPanel options = row("[][]24[]push[]");
        Choice<String> paper = new Choice<>("report.paper", ReportOptions.PAPERS, size -> Words.of("report.paper." + size),
                size -> settings.set(ReportOptions.PAPER, size));
        paper.show(ReportOptions.paper(settings));
        paper.addTo(options);
        JCheckBox identity = box("report.identity");
        identity.setSelected(ReportOptions.withoutIdentity(settings));
        identity.addActionListener(event -> settings.set(ReportOptions.IDENTITY, Boolean.toString(identity.isSelected())));
        options.add(identity, "wmin 0");
        everything.addActionListener(event -> opening.accept(everything.isSelected()));
        options.add(everything, "wmin 0");
        add(options);
        settings.listen(() -> {
            paper.show(ReportOptions.paper(settings));
            identity.setSelected(ReportOptions.withoutIdentity(settings));
        });
    }

    /** Hears that every card is to be opened or closed; all are closed now. */
    void onEverything(Consumer<Boolean> open) {
        opening = open;
        everything.setSelected(false);
    }

    private static JCheckBox box(String key) {
        JCheckBox box = new JCheckBox(Words.of(key));
        box.setName(key);
        box.setMnemonic(Words.mnemonic(key));
        box.setToolTipText(Words.tip(Words.of(key + ".tip")));
        box.setOpaque(false);
        return box;
    }

    private static JPanel row(String columns) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8 0, fillx", columns));
        row.setOpaque(false);
        return row;
    }
}
