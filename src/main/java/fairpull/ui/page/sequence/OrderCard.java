package fairpull.ui.page.sequence;

import fairpull.app.document.Edit;
import fairpull.app.document.HoursEdits;
import fairpull.app.document.SequenceEdits;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Columns;
import fairpull.ui.form.Entry;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.ToIntFunction;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The order as a whole and its clock: templates, letters, a draw, times, working hours. */
final class OrderCard extends Card {
    private static final String OWN = "";

    private final Desk desk;
    private final Choice<String> template;
    private final Entry<String> letters;
    private final Entry<Integer> pulls;
    private final Entry<Integer> warmUps;
    private final Entry<Double> interval;
    private final Entry<Double> swap;
    private final Entry<Double> setUp;
    private final Entry<List<Optional<LocalTime>>> start;
    private final Entry<List<Optional<LocalTime>>> end;
    private final Entry<List<List<Break>>> breaks;
    private final Columns columns = new Columns(28, "[grow 3, fill]", "[grow 2, fill]", "[grow 2, fill]");
    private final JButton addDay = Buttons.of("sequence.addDay", () -> edit(SequenceEdits.addSession()));
    private final JButton dropDay = Buttons.of("sequence.dropDay",
            () -> edit(SequenceEdits.removeSession(sequence().sessions().size() - 1)));
    private final JButton draw = new JButton(Words.of("sequence.draw"));

    OrderCard(Desk desk) {
        super(Words.of("sequence.head"), new MigLayout("insets 20, gap 8 8, fillx", "[grow, fill]"));
        this.desk = desk;
        List<String> templates = new ArrayList<>(StartingPlan.TEMPLATES);
        templates.add(OWN);
        template = new Choice<>("sequence.template", templates, this::called, this::take);
        Runnable settle = desk.document()::settle;
        letters = new Entry<>("sequence.letters", text -> text, text -> desk.typed(reordered(text, OptionalLong.empty())), settle);
        pulls = new Entry<>("sequence.pulls", text -> PlanTyping.count(text, 1, 1000),
                count -> desk.typed(SequenceEdits.countedOfAll(count)), settle);
        warmUps = new Entry<>("sequence.warmUps", text -> PlanTyping.count(text, 0, 100),
                count -> desk.typed(SequenceEdits.warmUpsOfAll(count)), settle);
        interval = minutes("sequence.interval", (old, seconds) -> SequenceEdits.times("interval", seconds, old.swapS(), old.setUpS()));
        swap = minutes("sequence.swap", (old, seconds) -> SequenceEdits.times("swap", old.pullIntervalS(), seconds, old.setUpS()));
        setUp = minutes("sequence.setUp", (old, seconds) -> SequenceEdits.times("set-up", old.pullIntervalS(), old.swapS(), seconds));
        start = new Entry<>("sequence.start", PlanTyping::clocks, times -> desk.typed(HoursEdits.starts(times)), settle);
        end = new Entry<>("sequence.end", PlanTyping::clocks, times -> desk.typed(HoursEdits.ends(times)), settle);
        breaks = new Entry<>("sequence.breaks", PlanTyping::breaks, pauses -> desk.typed(HoursEdits.breaks(pauses)), settle);
        draw.setName("sequence.draw");
        draw.setMnemonic(Words.mnemonic("sequence.draw"));
        draw.setToolTipText(Words.tip(Words.of("sequence.draw.tip")));
        draw.addActionListener(event -> draw());
        add(columns);
        JPanel order = column();
        template.addTo(order);
        letters.addTo(order);
        order.add(draw, "skip 1, growx 0");
        Columns days = new Columns(8, "[pref!]", "[grow]");
        days.add(addDay);
        days.add(dropDay);
        order.add(days, "skip 1");
        JPanel filling = column();
        pulls.addTo(filling);
        warmUps.addTo(filling);
        interval.addTo(filling);
        JPanel clock = column();
        setUp.addTo(clock);
        swap.addTo(clock);
        start.addTo(clock);
        end.addTo(clock);
        breaks.addTo(clock);
    }

    private JPanel column() {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 8 8, fillx, wrap 2, hidemode 3", "[pref!][grow, fill]"));
        column.setOpaque(false);
        columns.add(column);
        return column;
    }

    private interface TimesEdit {
        Edit of(Sequence old, double seconds);
    }

    private Entry<Double> minutes(String key, TimesEdit edit) {
        return new Entry<>(key, PlanTyping::minutes, seconds -> desk.typed(edit.of(sequence(), seconds)), desk.document()::settle);
    }

    private void edit(Edit edit) {
        desk.edit(edit);
    }

    private Sequence sequence() {
        return desk.document().plan().sequence();
    }

    private String called(String order) {
        return order.equals(OWN) ? Words.of("sequence.template.own") : order.replace("|", " | ");
    }

    private void take(String order) {
        if (!order.equals(OWN)) {
            desk.edit(reordered(order, OptionalLong.empty()));
        }
    }

    private Edit reordered(String order, OptionalLong seed) {
        return SequenceEdits.take(Words.of("sequence.order.edit", order), StartingPlan.reordered(sequence(), order, seed));
    }

    /** The seed is the time of the click: nobody chose it, and it is kept in the plan so that anyone can redo the draw. */
    private void draw() {
        desk.edit(reordered(sequence().letters(), OptionalLong.of(System.currentTimeMillis() % 1_000_000)));
    }

    void refresh() {
        Sequence sequence = sequence();
        template.show(StartingPlan.TEMPLATES.contains(sequence.letters()) ? sequence.letters() : OWN);
        letters.show(sequence.letters());
        show(pulls, sequence, Install::countedPulls);
        show(warmUps, sequence, Install::warmUpPulls);
        interval.show(PlanTyping.minutes(sequence.pullIntervalS()));
        swap.show(PlanTyping.minutes(sequence.swapS()));
        setUp.show(PlanTyping.minutes(sequence.setUpS()));
        List<Optional<Hours>> hours = sequence.sessions().stream().map(Session::hours).toList();
        start.show(PlanTyping.clockText(hours.stream().map(day -> day.map(Hours::start)).toList()));
        end.show(PlanTyping.clockText(hours.stream().map(day -> day.flatMap(Hours::end)).toList()));
        breaks.show(PlanTyping.breakText(hours.stream().map(day -> day.map(Hours::breaks).orElse(List.of())).toList()));
        draw.setText(sequence.seed().isPresent() ? Words.of("sequence.drawn", sequence.seed().getAsLong()) : Words.of("sequence.draw"));
        boolean open = !desk.document().isFixed();
        draw.setEnabled(open);
        addDay.setEnabled(open);
        dropDay.setEnabled(open && sequence.sessions().size() > 1);
        template.enable(open);
        List.of(letters, pulls, warmUps, interval, swap, setUp, start, end, breaks).forEach(entry -> entry.enable(open));
    }

    /** Shows the number that all installs share; where they differ, their numbers as a hint in the empty field. */
    private static void show(Entry<Integer> entry, Sequence sequence, ToIntFunction<Install> number) {
        List<String> numbers = sequence.installs().map(install -> Integer.toString(number.applyAsInt(install))).toList();
        boolean differ = numbers.stream().distinct().count() > 1;
        entry.show(differ ? "" : numbers.get(0));
        entry.hintAs(differ ? String.join(", ", numbers) : "");
    }
}
