package fairpull.ui.page.tracing;

import fairpull.app.document.TracingDocument;
import fairpull.app.task.Latest;
import fairpull.app.usecase.tracing.TraceChart;
import fairpull.app.usecase.tracing.TraceTyping;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import fairpull.domain.tracing.TracedLine;
import fairpull.domain.tracing.Tracing;
import fairpull.ui.form.FaultWords;
import fairpull.ui.theme.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** What the parts of the page work on together: the document, the tool in hand, the curve and point that are chosen. */
final class Bench {
    private final TracingDocument document = new TracingDocument();
    private final Latest<TraceChart.Followed> following = new Latest<>(SwingUtilities::invokeLater);
    private final List<Runnable> listeners = new ArrayList<>();
    private Tool tool = Tool.X_FIRST;
    private Part part = Part.A;
    private OptionalInt chosen = OptionalInt.empty();
    private int longestGapPx = TraceTyping.usualGap();
    private int stepPx = TraceTyping.usualStep();
    private List<String> said = List.of();
    private Consumer<Tool> marked = mark -> { };

    Bench() {
        document.listen(this::tell);
    }

    TracingDocument document() {
        return document;
    }

    Tool tool() {
        return tool;
    }

    /** Takes another tool in hand. */
    void take(Tool other) {
        tool = other;
        if (!other.isAxis() && other.part() != part) {
            part = other.part();
            chosen = OptionalInt.empty();
        }
        tell();
    }

    Part part() {
        return part;
    }

    /** Turns to the curve of another part, with the same kind of tool. */
    void turnTo(Part other) {
        take(tool.isPoints() ? Tool.points(other) : Tool.follow(other));
    }

    /** {@return the curve that is worked on} */
    TracedLine line() {
        return document.tracing().map(tracing -> tracing.line(part)).orElse(TracedLine.NONE);
    }

    /** {@return the place of the chosen point in its curve, counted from 0} */
    OptionalInt chosen() {
        return chosen.isPresent() && chosen.getAsInt() < line().points().size() ? chosen : OptionalInt.empty();
    }

    void choose(OptionalInt place) {
        if (!chosen.equals(place)) {
            chosen = place;
            tell();
        }
    }

    void gap(int px) {
        longestGapPx = px;
    }

    void step(int px) {
        stepPx = px;
    }

    /** {@return what there is to say about the last thing that was done} */
    List<String> said() {
        return said;
    }

    void say(List<String> sentences) {
        said = sentences;
        tell();
    }

    void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Does what the tool in hand does at a place in the picture. */
    void click(PixelPoint place) {
        if (document.tracing().isEmpty()) {
            return;
        }
        if (tool.isAxis()) {
            Tool done = tool;
            setAxisPoint(done, place, "");
            take(next(done));
            marked.accept(done);
        } else if (tool.isFollow()) {
            follow(place);
        } else {
            addPoint(place);
        }
    }

    /** The next mark of an axis that has no place yet; then the first curve that has no point yet. */
    private Tool next(Tool done) {
        Tracing tracing = document.tracing().orElseThrow();
        for (Tool other : List.of(Tool.X_FIRST, Tool.X_SECOND, Tool.Y_FIRST, Tool.Y_SECOND)) {
            AxisDraft axis = other.isAcross() ? tracing.x() : tracing.y();
            if (axis.place(other.point()).isEmpty()) {
                return other;
            }
        }
        return Stream.of(Part.values()).filter(curve -> tracing.line(curve).equals(TracedLine.NONE)).findFirst().map(Tool::follow)
                .orElse(done);
    }

    /** Hears which mark of an axis was clicked, so that its value can be typed. */
    void onMarked(Consumer<Tool> listener) {
        marked = listener;
    }

    void setAxisPoint(Tool of, PixelPoint place, String field) {
        axis(of.isAcross(), Words.of("tracing.edit.axis"), field, axis -> axis.withPlace(of.point(), place));
    }

    /** Changes an axis. */
    void axis(boolean across, String label, String field, UnaryOperator<AxisDraft> change) {
        document.edit(label, field, tracing -> across ? tracing.withX(change.apply(tracing.x()))
                : tracing.withY(change.apply(tracing.y())));
    }

    private void line(String label, String field, UnaryOperator<TracedLine> change) {
        Part whose = part;
        document.edit(label, field, tracing -> tracing.with(whose, change.apply(tracing.line(whose))));
    }

    /** Follows the line at a place beside the window's thread. */
    void follow(PixelPoint place) {
        Tracing tracing = document.tracing().orElseThrow();
        Part whose = part;
        int gap = longestGapPx;
        int step = stepPx;
        var opened = document.opened().orElseThrow();
        say(List.of(Words.of("tracing.following")));
        following.ask(progress -> TraceChart.follow(opened, tracing, place, gap, step),
                ended -> ended.tell(followed -> take(whose, followed), fault -> say(List.of(FaultWords.of(fault)))));
    }

    private void take(Part whose, TraceChart.Followed followed) {
        said = followed.sentences();
        if (followed.line().isPresent()) {
            FollowedLine line = followed.line().get();
            document.edit(Words.of("tracing.edit.follow", whose), "", tracing -> tracing.with(whose, tracing.line(whose).with(line)));
            turnOnFrom(whose, line);
        }
        tell();
    }

    /** After a line that was followed to its ends comes the other curve, once the axes are known and where that has no point yet. */
    private void turnOnFrom(Part whose, FollowedLine line) {
        Part other = whose == Part.A ? Part.B : Part.A;
        Tracing tracing = document.tracing().orElseThrow();
        boolean isWhole = !line.left().isDoubtful() && !line.right().isDoubtful() && TraceChart.axesMissing(tracing).isEmpty();
        if (isWhole && tool == Tool.follow(whose) && tracing.line(other).equals(TracedLine.NONE)) {
            take(Tool.follow(other));
        }
    }

    /** {@return whether all is there that a trace of both curves needs} */
    boolean isComplete() {
        return document.tracing().filter(tracing -> TraceChart.axesMissing(tracing).isEmpty()
                && Stream.of(Part.values()).noneMatch(curve -> tracing.line(curve).equals(TracedLine.NONE))).isPresent();
    }

    /** Sets a point where the line is near the place, or at the place itself. */
    void addPoint(PixelPoint place) {
        LinePoint point = TraceChart.point(document.picture().orElseThrow(), line(), place);
        line(Words.of("tracing.edit.add"), "", line -> line.with(point));
        choose(OptionalInt.of(line().points().indexOf(point)));
    }

    /** Moves the chosen point; where it then stands within half a pixel of another one, that one gives way. */
    void moveChosen(PixelPoint place, String field) {
        if (chosen().isEmpty()) {
            return;
        }
        int old = chosen().getAsInt();
        LinePoint moved = new LinePoint(place, line().points().get(old).slope(), PointSource.PLACED);
        line(Words.of("tracing.edit.move"), field, line -> line.without(List.of(old)).with(moved));
        choose(OptionalInt.of(line().points().indexOf(moved)));
    }

    /** Moves the chosen point by so many pixels. */
    void nudge(double rightPx, double downPx) {
        chosen().ifPresent(place -> moveChosen(line().points().get(place).at().moved(rightPx, downPx), "nudge " + place));
    }

    /** Takes the middle of the line in the column of the chosen point. */
    void snapChosen() {
        chosen().ifPresent(place -> {
            LinePoint point = TraceChart.point(document.picture().orElseThrow(), line(), line().points().get(place).at());
            line(Words.of("tracing.edit.move"), "", line -> line.without(List.of(place)).with(point));
            choose(OptionalInt.of(line().points().indexOf(point)));
        });
    }

    void delete(List<Integer> places) {
        if (!places.isEmpty()) {
            line(Words.of("tracing.edit.delete"), "", line -> line.without(places));
            int next = Math.min(places.get(0), line().points().size() - 1);
            choose(next < 0 ? OptionalInt.empty() : OptionalInt.of(next));
        }
    }

    void clear() {
        line(Words.of("tracing.edit.clear", part), "", line -> TracedLine.NONE);
        choose(OptionalInt.empty());
    }
}
