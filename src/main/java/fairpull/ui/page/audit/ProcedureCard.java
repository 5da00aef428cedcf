package fairpull.ui.page.audit;

import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Procedure;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Line;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JLabel;
import net.miginfocom.swing.MigLayout;

/** A card of items of the procedure, each of which may not be disclosed. An item of both figures has two fields side by side. */
final class ProcedureCard extends Card {
    private static final String UNSAID = "audit.undisclosed";
    private static final String BEFORE = ".before";
    private static final String AFTER = ".after";
    private static final String BENEATH = "skip 1, spanx, growx, wmin 0";

    private final AuditDesk desk;
    private final List<Consumer<Procedure>> showing = new ArrayList<>();
    private List<Entry<?>> last = List.of();

    /** A card without items; one {@code ofBoth} has heads over the columns of both figures. */
    ProcedureCard(AuditDesk desk, String head, boolean ofBoth) {
        super(Words.of(head), new MigLayout("insets 20, gap 8 8, fillx, hidemode 3, wrap " + (ofBoth ? 3 : 2),
                ofBoth ? "[pref:210:, shrinkprio 200][150:230:, grow, fill][150:230:, grow, fill]" : "[210:pref:][grow, fill]"));
        this.desk = desk;
        if (ofBoth) {
            add(new Line(Words.of("audit.of.before"), Role.SOFT, Look.Type.SMALL), "skip 1");
            add(new Line(Words.of("audit.of.after"), Role.SOFT, Look.Type.SMALL));
        }
    }

    /** Adds an item that is one of a few. */
    <T> ProcedureCard choice(String key, List<T> all, Function<T, String> words, Function<Procedure, Optional<T>> get,
            BiFunction<Procedure, Optional<T>, Procedure> with) {
        Choice<Optional<T>> choice = choice(key, all, words, value -> desk.edit(key,
                draft -> draft.with(with.apply(draft.procedure(), value))));
        choice.addTo(this, "spanx, growx, wmin 80");
        showing.add(procedure -> choice.show(get.apply(procedure)));
        return this;
    }

    /** Adds an item of both figures that is one of a few. */
    <T> ProcedureCard choices(String key, List<T> all, Function<T, String> words, Function<Procedure, BeforeAfter<T>> get,
            BiFunction<Procedure, BeforeAfter<T>, Procedure> with) {
        Choice<Optional<T>> before = choice(key + BEFORE, all, words, value -> desk.edit(key + BEFORE,
                draft -> draft.with(with.apply(draft.procedure(), get.apply(draft.procedure()).withBefore(value)))));
        Choice<Optional<T>> after = choice(key + AFTER, all, words, value -> desk.edit(key + AFTER,
                draft -> draft.with(with.apply(draft.procedure(), get.apply(draft.procedure()).withAfter(value)))));
        add(new JLabel(Words.of(key)), "aligny baseline");
        add(before.box(), "growx, wmin 0");
        add(after.box(), "growx, wmin 0");
        showing.add(procedure -> {
            before.show(get.apply(procedure).before());
            after.show(get.apply(procedure).after());
        });
        return this;
    }

    private static <T> Choice<Optional<T>> choice(String key, List<T> all, Function<T, String> words, Consumer<Optional<T>> sent) {
        List<Optional<T>> values = Stream.concat(Stream.of(Optional.<T>empty()), all.stream().map(Optional::of)).toList();
        return new Choice<>(key, values, value -> value.map(words).orElse(Words.of(UNSAID)), sent);
    }

    /** Adds an item that is typed. */
    <T> ProcedureCard entry(String key, Entry.Reader<Optional<T>> reader, Function<T, String> text, Function<Procedure, Optional<T>> get,
            BiFunction<Procedure, Optional<T>, Procedure> with) {
        Entry<Optional<T>> entry = new Entry<>(key, reader,
                value -> desk.typed(key, procedure -> with.apply(procedure, value)), () -> { });
        add(entry.label(), "aligny baseline");
        add(entry.field(), "spanx, growx, wmin 80");
        add(entry.complaint(), BENEATH);
        last = List.of(entry);
        showing.add(procedure -> entry.show(get.apply(procedure).map(text).orElse("")));
        return this;
    }

    /** Adds an item of both figures that is typed. */
    <T> ProcedureCard entries(String key, Entry.Reader<Optional<T>> reader, Function<T, String> text,
            Function<Procedure, BeforeAfter<T>> get, BiFunction<Procedure, BeforeAfter<T>, Procedure> with) {
        Entry<Optional<T>> before = new Entry<>(key + BEFORE, reader, value -> desk.typed(key + BEFORE,
                procedure -> with.apply(procedure, get.apply(procedure).withBefore(value))), () -> { });
        Entry<Optional<T>> after = new Entry<>(key + AFTER, reader, value -> desk.typed(key + AFTER,
                procedure -> with.apply(procedure, get.apply(procedure).withAfter(value))), () -> { });
        add(new JLabel(Words.of(key)), "aligny baseline");
        add(before.field(), "growx, wmin 0");
        add(after.field(), "growx, wmin 0");
        add(before.complaint(), BENEATH);
        add(after.complaint(), BENEATH);
        last = List.of(before, after);
        showing.add(procedure -> {
            before.show(get.apply(procedure).before().map(text).orElse(""));
            after.show(get.apply(procedure).after().map(text).orElse(""));
        });
        return this;
    }

    /** The item that was added last is typed in words, in which a comma is a comma. */
    ProcedureCard asWritten() {
        last.forEach(Entry::asWritten);
        return this;
    }

    void refresh() {
        showing.forEach(show -> show.accept(desk.draft().procedure()));
    }
}
