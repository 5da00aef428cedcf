package fairpull.ui.page.tracing;

import fairpull.app.usecase.tracing.TraceTyping;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.TracedLine;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Which curve is traced and how: followed from a click, or set point by point. */
final class CurvesCard extends Card {
    private final transient Bench bench;
    private final transient Map<Part, JToggleButton> parts = new EnumMap<>(Part.class);
    private final JToggleButton follow = ToolButtons.named("tracing.follow");
    private final JToggleButton points = ToolButtons.named("tracing.points");
    private final JButton clear;
    private final transient Entry<Integer> gap;
    private final transient Entry<Integer> step;
    private final Prose said = Prose.small("");

    CurvesCard(Bench bench) {
        super(Words.of("tracing.curves.head"), new MigLayout("insets 16, gap 8 6, fillx, wrap 2", "[pref!][grow, fill]"));
        this.bench = bench;
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6 6, fillx", "[grow, fill][grow, fill]"));
        row.setOpaque(false);
        for (Part part : Part.values()) {
            JToggleButton button = ToolButtons.named("tracing.part." + part);
            button.addActionListener(event -> bench.turnTo(part));
            parts.put(part, button);
            row.add(button, part == Part.A ? "" : "wrap");
        }
        follow.addActionListener(event -> bench.take(Tool.follow(bench.part())));
        points.addActionListener(event -> bench.take(Tool.points(bench.part())));
        clear = Buttons.of("tracing.clear", bench::clear);
        row.add(follow);
        row.add(points, "wrap");
        row.add(clear, "spanx");
        add(row, "spanx, growx, wmin 0");
        gap = new Entry<>("tracing.gap", TraceTyping::gap, bench::gap, () -> { });
        step = new Entry<>("tracing.step", TraceTyping::step, bench::step, () -> { });
        gap.show(TraceTyping.usualGap() + " px");
        step.show(TraceTyping.usualStep() + " px");
        gap.addTo(this);
        step.addTo(this);
        said.setName("tracing.said");
        add(said, "spanx, growx, wmin 0, hidemode 3");
        bench.listen(this::refresh);
    }

    private void refresh() {
        boolean open = bench.document().tracing().isPresent();
        parts.forEach((part, button) -> {
            OptionalInt colour = bench.document().tracing().map(tracing -> tracing.line(part)).orElse(TracedLine.NONE).colour();
            button.setIcon(colour.isPresent() ? new Swatch(colour.getAsInt()) : null);
            button.setSelected(bench.part() == part);
            button.setEnabled(open);
        });
        follow.setSelected(bench.tool().isFollow());
        points.setSelected(bench.tool().isPoints());
        follow.setEnabled(open);
        points.setEnabled(open);
        clear.setEnabled(!bench.line().equals(TracedLine.NONE));
        said.setText(String.join(" ", bench.said()));
        said.setVisible(!bench.said().isEmpty());
        revalidate();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (said != null) {
            said.setFont(Look.font(Look.Type.SMALL));
        }
    }

    /** The colour of a line, framed so that it shows on any ground. */
    private record Swatch(int rgb) implements Icon {
        @Override
        public void paintIcon(Component component, Graphics g, int x, int y) {
            g.setColor(new Color(rgb));
            g.fillRect(x, y, getIconWidth(), getIconHeight());
            g.setColor(Look.colour(Role.SOFT));
            g.drawRect(x, y, getIconWidth() - 1, getIconHeight() - 1);
        }

        @Override
        public int getIconWidth() {
            return 18;
        }

        @Override
        public int getIconHeight() {
            return 12;
        }
    }
}
