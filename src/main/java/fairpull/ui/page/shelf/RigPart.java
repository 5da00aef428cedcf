package fairpull.ui.page.shelf;

import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.shelf.ListedTest;
import fairpull.app.usecase.shelf.RigOverTime;
import fairpull.app.usecase.shelf.RigOverTime.OfKey;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScaledChart;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The rig over time: whether it has changed, its scatter layer by layer, and how tests lie beside its record. */
final class RigPart extends JPanel {
    private final transient Latest<List<RigOverTime>> reckoning = new Latest<>(SwingUtilities::invokeLater);

    RigPart() {
        super(new MigLayout("insets 0 0 12 12, gap 16 16, fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
        setName("shelf.rig");
    }

    /** Shows the records in some places and the tests beside them; one that cannot be read says so and takes the others not away. */
    void reckon(List<Path> places, List<ListedTest> tests) {
        if (places.isEmpty()) {
            say(Words.of("shelf.rig.nothing"));
            return;
        }
        say(Words.of("shelf.rig.reckoning"));
        List<String> trouble = new ArrayList<>();
        reckoning.ask(progress -> {
            List<RigOverTime> all = new ArrayList<>();
            for (Path place : places) {
                try {
                    all.add(Job.onDisk(() -> RigOverTime.of(place, tests)).apply(progress));
                } catch (RuntimeException unusable) {
                    trouble.add(FaultWords.of(unusable));
                }
            }
            return all;
        }, ended -> ended.tell(all -> show(all, trouble), fault -> say(FaultWords.of(fault))));
    }

    /** Lets go of what still runs. */
    void end() {
        reckoning.stop();
    }

    /** Says something in place of records. */
    private void say(String words) {
        removeAll();
        add(new Prose(words, Role.INK, Look.Type.HEAD), "growx, wmin 0");
        revalidate();
        repaint();
    }

    /** Shows records, each with what could not be read of them. */
    private void show(List<RigOverTime> records, List<String> trouble) {
        removeAll();
        trouble.forEach(line -> add(new Prose(line, Role.B, Look.Type.BODY), "growx, wmin 0"));
        records.stream().flatMap(record -> record.keys().stream()).forEach(key -> {
            add(record(key), "growx, wmin 0");
            if (!key.tests().isEmpty()) {
                add(tests(key), "growx, wmin 0");
            }
        });
        revalidate();
        repaint();
    }

    private static Card card() {
        return new Card("", new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
    }

    private static Card record(OfKey key) {
        Card card = card();
        card.setName("shelf.rig.record");
        card.add(new Prose(key.changed(), Role.INK, Look.Type.HEAD), "growx, wmin 0");
        card.add(Prose.small(key.key()), "growx, wmin 0");
        key.chart().ifPresent(chart -> card.add(new ScaledChart(chart), "growx, wmin 0"));
        key.chart().ifPresent(chart -> card.add(Prose.small(Words.of("shelf.rig.caption")), "growx, wmin 0"));
        card.add(layers(key.layers()), "growx, wmin 0, gapy 8 8");
        key.rest().forEach(sentence -> card.add(Prose.body(sentence), "growx, wmin 0"));
        return card;
    }

    private static JPanel layers(List<List<String>> rows) {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 28 4, wrap " + RigOverTime.HEADS.size()));
        panel.setOpaque(false);
        RigOverTime.HEADS.forEach(head -> panel.add(new Line(head, Role.SOFT, Look.Type.SMALL)));
        rows.forEach(row -> row.forEach(cell -> panel.add(new Line(cell, Role.INK,
                row.indexOf(cell) == 0 ? Look.Type.STRONG : Look.Type.BODY))));
        return panel;
    }

    private static Card tests(OfKey key) {
        Card card = card();
        card.setName("shelf.rig.tests");
        card.add(new Prose(key.tests().get(0), Role.INK, Look.Type.HEAD), "growx, wmin 0");
        key.tests().stream().skip(1).forEach(sentence -> card.add(Prose.body(sentence), "growx, wmin 0"));
        key.testCharts().forEach(chart -> card.add(new ScaledChart(chart), "growx, wmin 0"));
        card.add(Prose.small(Words.of("shelf.rig.tests.caption")), "growx, wmin 0");
        return card;
    }
}
