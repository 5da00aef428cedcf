package fairpull.ui.page.tracing;

import fairpull.app.usecase.tracing.TraceChart;
import fairpull.app.usecase.tracing.TraceTyping;
import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.tracing.AxisScale;
import fairpull.domain.tracing.Tracing;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Two points an axis: where each is, by a click, and what the chart says there, typed with its unit. */
final class AxesCard extends Card {
    private final transient Bench bench;
    private final transient Map<Tool, JToggleButton> buttons = new EnumMap<>(Tool.class);
    private final transient Map<Tool, Entry<TraceTyping.AxisValue>> values = new EnumMap<>(Tool.class);
    private final transient List<Choice<AxisScale>> scales = new ArrayList<>();
    private final Prose complaint = new Prose("", Role.B, Look.Type.SMALL);

    AxesCard(Bench bench) {
        super(Words.of("tracing.axes.head"), new MigLayout("insets 16, gap 8 6, fillx, wrap 2", "[pref!][grow, fill]"));
        this.bench = bench;
        for (boolean across : new boolean[] {true, false}) {
            addPoint(Tool.axis(across, 0));
            addPoint(Tool.axis(across, 1));
            addScale(across);
        }
        complaint.setName("tracing.axes.complaint");
        add(complaint, "spanx, growx, wmin 0, hidemode 3");
        bench.listen(this::refresh);
        bench.onMarked(this::askForValue);
    }

    /** What the chart says at a mark is typed next: nothing has to be clicked for it. */
    private void askForValue(Tool mark) {
        JTextField field = values.get(mark).field();
        field.requestFocusInWindow();
        field.selectAll();
    }

    private void addPoint(Tool tool) {
        JToggleButton button = ToolButtons.of(tool.key(), tool, bench);
        buttons.put(tool, button);
        Entry<TraceTyping.AxisValue> value = new Entry<>(tool.key() + ".value", TraceTyping::axisValue,
                typed -> bench.axis(tool.isAcross(), Words.of("tracing.edit.value"), tool.name(), axis -> typed.at(tool.point(), axis)),
                () -> { });
        values.put(tool, value);
        add(button, "growx");
        add(value.field(), "growx, wmin 80");
        add(value.complaint(), "skip 1, growx, wmin 0, hidemode 3");
    }

    private void addScale(boolean across) {
        Choice<AxisScale> scale = new Choice<>(across ? "tracing.x.scale" : "tracing.y.scale", List.of(AxisScale.values()),
                kind -> Words.of("tracing.scale." + kind.name()),
                chosen -> bench.axis(across, Words.of("tracing.edit.scale"), "", axis -> axis.withScale(chosen)));
        scales.add(scale);
        scale.addTo(this);
    }

    private void refresh() {
        boolean open = bench.document().tracing().isPresent();
        AxisDraft x = bench.document().tracing().map(Tracing::x).orElse(AxisDraft.NONE);
        AxisDraft y = bench.document().tracing().map(Tracing::y).orElse(AxisDraft.NONE);
        values.forEach((tool, value) -> {
            AxisDraft axis = tool.isAcross() ? x : y;
            value.show(TraceTyping.text(axis, tool.point()));
            value.enable(open);
            buttons.get(tool).setEnabled(open);
            buttons.get(tool).setSelected(bench.tool() == tool);
            buttons.get(tool).setText(Words.of(tool.key()) + (axis.place(tool.point()).isPresent() ? " ✓" : ""));
        });
        scales.get(0).show(x.scale());
        scales.get(1).show(y.scale());
        scales.forEach(scale -> scale.enable(open));
        String missing = bench.document().tracing().flatMap(TraceChart::axesMissing).orElse("");
        complaint.setText(missing);
        complaint.setVisible(!missing.isEmpty());
        revalidate();
    }
}
