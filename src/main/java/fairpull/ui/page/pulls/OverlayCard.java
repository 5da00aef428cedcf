package fairpull.ui.page.pulls;

import fairpull.app.task.Job;
import fairpull.app.usecase.pulls.PullCurves;
import fairpull.domain.curve.SweptCurve;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.report.chart.OverlayChart;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.FaultWords;
import fairpull.ui.theme.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The curves of all pulls over each other, with what can be shown and left out. */
final class OverlayCard extends Card {
    private final Chosen chosen;
    private final OverlayView view = new OverlayView();
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton cancel = Buttons.of("overlay.cancel", this::stop);
    private final Choice<Quantity> quantity;
    private final Choice<String> residuals;
    private final JCheckBox corrected = box("overlay.corrected");
    private final JPanel installs = new JPanel(new MigLayout("insets 0, gap 10 2"));
    private final Map<Part, JCheckBox> parts = new TreeMap<>();
    private final Set<String> hidden = new HashSet<>();
    private Quantity shown = Quantity.POWER;
    private String against = "curves";
    private Optional<Job<PullCurves>> job = Optional.empty();
    private Optional<PullCurves> curves = Optional.empty();
    private Optional<Path> folder = Optional.empty();

    OverlayCard(Chosen chosen) {
        super(Words.of("overlay.head"), new MigLayout("insets 20, gap 8 6, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.chosen = chosen;
        quantity = new Choice<>("overlay.quantity", List.of(Quantity.POWER, Quantity.TORQUE), Quantity::words, other -> {
            shown = other;
            folder.ifPresent(this::load);
        });
        residuals = new Choice<>("overlay.view", List.of("curves", "install", "all"), key -> Words.of("overlay.view." + key), key -> {
            against = key;
            draw();
        });
        quantity.show(shown);
        residuals.show(against);
        corrected.setSelected(true);
        corrected.addActionListener(event -> folder.ifPresent(this::load));
        JPanel controls = new JPanel(new MigLayout("insets 0, gap 8 4", "[][][]16[][]16[]push[]"));
        controls.setOpaque(false);
        quantity.addTo(controls);
        residuals.addTo(controls);
        controls.add(corrected);
        controls.add(Buttons.of("overlay.reset", view::reset));
        installs.setOpaque(false);
        progress.setName("overlay.progress");
        progress.getAccessibleContext().setAccessibleName(Words.of("overlay.progress"));
        add(controls, "growx");
        add(installs, "growx, wmin 0");
        add(view, "growx, wmin 0");
        add(progress, "split 2, growx");
        add(cancel, "growx 0");
        working(false);
        view.onClick(pull -> chosen.choose(Set.of(pull)));
        chosen.listen(this::draw);
    }

    private static JCheckBox box(String key) {
        JCheckBox box = new JCheckBox(Words.of(key));
        box.setName(key);
        box.setOpaque(false);
        box.setToolTipText(Words.tip(Words.of(key + ".tip")));
        return box;
    }

    /** Reads the curves of a test anew. */
    void load(Path test) {
        stop();
        folder = Optional.of(test);
        working(true);
        Quantity asked = shown;
        boolean asJudged = corrected.isSelected();
        job = Optional.of(Job.start(watch -> {
            try {
                return PullCurves.of(test, asked, asJudged, watch);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }, SwingUtilities::invokeLater, share -> progress.setValue((int) Math.round(100 * share)), ended -> {
            working(false);
            curves = Optional.empty();
            ended.tell(read -> curves = Optional.of(read), fault -> head(FaultWords.of(fault)));
            offerInstalls();
            corrected.setEnabled(curves.map(PullCurves::canBeUncorrected).orElse(false));
            draw();
        }));
    }

    private void stop() {
        job.ifPresent(Job::cancel);
        job = Optional.empty();
        working(false);
    }

    private void working(boolean busy) {
        progress.setVisible(busy);
        cancel.setVisible(busy);
        progress.setValue(0);
    }

    private List<String> labels() {
        return curves.map(all -> all.curves().stream().map(curve -> curve.pull().install()).distinct().toList()).orElse(List.of());
    }

    /** One box a part, one an install; a part's box sets all of its installs. */
    private void offerInstalls() {
        installs.removeAll();
        parts.clear();
        for (Part part : Part.values()) {
            List<String> of = labels().stream().filter(label -> label.startsWith(part.name())).toList();
            if (of.isEmpty()) {
                continue;
            }
            JCheckBox all = toggle("overlay.part." + part, Words.of("overlay.part", part), of.stream().noneMatch(hidden::contains));
            all.addActionListener(event -> {
                if (all.isSelected()) {
                    hidden.removeAll(of);
                } else {
                    hidden.addAll(of);
                }
                offerInstalls();
                draw();
            });
            parts.put(part, all);
            installs.add(all, part == Part.A ? "" : "gapbefore 24");
            for (String label : of) {
                JCheckBox one = toggle("overlay.install." + label, label, !hidden.contains(label));
                one.addActionListener(event -> {
                    if (!hidden.remove(label)) {
                        hidden.add(label);
                    }
                    all.setSelected(of.stream().noneMatch(hidden::contains));
                    draw();
                });
                installs.add(one);
            }
        }
        installs.revalidate();
        installs.repaint();
    }

    private static JCheckBox toggle(String name, String text, boolean on) {
        JCheckBox box = new JCheckBox(text, on);
        box.setName(name);
        box.setOpaque(false);
        box.setToolTipText(Words.tip(Words.of("overlay.toggle.tip", text)));
        return box;
    }

    private void draw() {
        view.show(curves.flatMap(this::content));
    }

    private Optional<OverlayChart.Content> content(PullCurves all) {
        List<OverlayChart.Line> lines = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int place = 0; place < all.curves().size(); place++) {
            SweptCurve curve = all.curves().get(place);
            low = Math.min(low, curve.speedsRadPerS().at(0));
            high = Math.max(high, curve.speedsRadPerS().at(curve.speedsRadPerS().size() - 1));
            if (!hidden.contains(curve.pull().install())) {
                lines.add(new OverlayChart.Line(curve, all.grid().isPresent() ? all.onGrid().get(place) : curve.values()));
            }
        }
        if (!(high > low)) {
            return Optional.empty();
        }
        Optional<OverlayChart.Against> mean = switch (against) {
            case "install" -> Optional.of(OverlayChart.Against.INSTALL);
            case "all" -> Optional.of(OverlayChart.Against.ALL);
            default -> Optional.empty();
        };
        String unit = all.unit().symbol();
        String label = Words.of("overlay.label." + against, shown.words().substring(0, 1).toUpperCase(Locale.ROOT)
                + shown.words().substring(1), unit);
        String foot = Words.of(foot(all, mean.isPresent()), Math.round(Units.RPM.fromSi(all.bandwidthRadPerS())));
        Set<PullId> marked = new HashSet<>(chosen.pulls());
        return Optional.of(new OverlayChart.Content(lines, all.grid(), mean, marked, Math.floor(Units.RPM.fromSi(low)),
                Math.ceil(Units.RPM.fromSi(high)), label, unit, foot));
    }

    private String foot(PullCurves all, boolean less) {
        return less ? "overlay.foot.residuals" : !all.canBeUncorrected() ? "overlay.foot"
                : corrected.isSelected() ? "overlay.foot.corrected" : "overlay.foot.uncorrected";
    }
}
