package fairpull.ui.page.audit;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.auditing.ValuesTyping;
import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication.Values.Each;
import fairpull.domain.audit.ValuesDraft;
import fairpull.domain.audit.ValuesDraft.Side;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** What is typed as values of a figure: what is understood goes to the document, what is not is kept with the reason. */
final class ValuesTyped {
    private static final String EDIT = "audit.values.edit";

    private final AuditDesk desk;
    /** What is not understood, from above. */
    private final TreeMap<Place, Wrong> wrong = new TreeMap<>();
    private int figure;
    private int figures;
    private String refused = "";
    private Runnable changed = () -> { };

    private record Place(int figure, int row, Side side) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            return figure != other.figure ? Integer.compare(figure, other.figure)
                    : row != other.row ? Integer.compare(row, other.row) : side.compareTo(other.side);
        }
    }

    /**
     * A cell that is not understood.
     *
     * @param words which one
     * @param text that stands in it
     * @param why it is not understood
     */
    record Wrong(String words, String text, String why) {
    }

    ValuesTyped(AuditDesk desk) {
        this.desk = desk;
    }

    /** Hears that something was typed, understood or not. */
    void listen(Runnable listener) {
        changed = listener;
    }

    /** {@return the figure at hand} */
    FigureDraft figure() {
        return desk.draft().figures().get(figure);
    }

    ValuesDraft values() {
        return figure().values();
    }

    /** Turns to another figure, by its place. */
    void turnTo(int place) {
        figure = place;
    }

    /** {@return whether there is a figure at hand; where one was taken away, what was wrong with its values went with it} */
    boolean has() {
        int now = desk.draft().figures().size();
        if (now < figures) {
            wrong.clear();
        }
        figures = now;
        figure = Math.min(figure, Math.max(0, now - 1));
        return now > 0;
    }

    /** {@return how many rows hold something} */
    int rows() {
        if (!has()) {
            return 0;
        }
        int last = wrong.keySet().stream().filter(place -> place.figure() == figure).mapToInt(place -> place.row() + 1).max().orElse(0);
        return Math.max(last, values().rows().size());
    }

    String text(int row, Side side) {
        if (!has()) {
            return "";
        }
        Wrong kept = wrong.get(new Place(figure, row, side));
        return kept == null ? values().at(row, side).map(Printed::words).map(LocalNumbers::shown).orElse("") : kept.text();
    }

    boolean isWrong(int row, Side side) {
        return wrong.containsKey(new Place(figure, row, side));
    }

    /** {@return the first cell that is not understood} */
    Optional<Wrong> wrong() {
        return wrong.values().stream().findFirst();
    }

    boolean reads(String text) {
        try {
            ValuesTyping.value(text, figure());
            return true;
        } catch (UsageException | IllegalArgumentException misunderstood) {
            return false;
        }
    }

    void type(String text, int row, Side side) {
        if (has() && !text.equals(text(row, side))) {
            Optional<Printed> value = read(text, row, side);
            change(EDIT + "." + figure + "." + row + "." + side, values -> values.with(row, side, value));
        }
    }

    /** What is not understood leaves the document as it is there. */
    private Optional<Printed> read(String text, int row, Side side) {
        Place place = new Place(figure, row, side);
        wrong.remove(place);
        try {
            return ValuesTyping.value(LocalNumbers.typed(text), figure());
        } catch (UsageException misunderstood) {
            wrong.put(place, wrong(text, row, side, misunderstood.problem()));
        } catch (IllegalArgumentException impossible) {
            wrong.put(place, wrong(text, row, side, impossible.getMessage()));
        }
        return values().at(row, side);
    }

    private static Wrong wrong(String text, int row, Side side, String why) {
        String column = Words.of(side == Side.BEFORE ? "audit.figure.before" : "audit.figure.after");
        return new Wrong(Words.of("audit.values.place", row + 1, column), text, why);
    }

    /** Puts what was copied into one column or both, from a row on; it is undone as one. */
    void paste(String text, int row, Side side) {
        if (!has()) {
            return;
        }
        try {
            List<List<String>> rows = ValuesTyping.pasted(LocalNumbers.typed(text));
            boolean isBoth = rows.stream().anyMatch(cells -> cells.size() > 1);
            Side first = isBoth ? Side.BEFORE : side;
            List<Optional<Printed>> ofFirst = column(rows, 0, row, first);
            List<Optional<Printed>> ofSecond = isBoth ? column(rows, 1, row, Side.AFTER) : List.of();
            change("", values -> values.with(row, first, ofFirst).with(row, Side.AFTER, ofSecond));
        } catch (UsageException useless) {
            refuse(useless.problem());
        }
    }

    private List<Optional<Printed>> column(List<List<String>> rows, int cell, int from, Side side) {
        return IntStream.range(0, rows.size())
                .mapToObj(row -> read(rows.get(row).size() > cell ? rows.get(row).get(cell) : "", from + row, side)).toList();
    }

    /** Empties cells. */
    void clear(int[] rows, List<Side> sides) {
        change("", values -> {
            ValuesDraft cleared = values;
            for (int row : rows) {
                for (Side side : sides) {
                    wrong.remove(new Place(figure, row, side));
                    cleared = cleared.with(row, side, Optional.empty());
                }
            }
            return cleared;
        });
    }

    /** Empties all of them. */
    void clear() {
        wrong.keySet().removeIf(place -> place.figure() == figure);
        change("", values -> ValuesDraft.NONE);
    }

    void paired(boolean paired) {
        change("audit.values.paired", values -> values.paired(paired));
    }

    void each(Optional<Each> each) {
        change("audit.values.each", values -> values.of(each));
    }

    private void change(String field, UnaryOperator<ValuesDraft> change) {
        int place = figure;
        try {
            desk.typed(EDIT, field, draft -> {
                FigureDraft of = draft.figures().get(place);
                return draft.withFigure(place, of.with(change.apply(of.values())));
            });
            refused = "";
        } catch (IllegalArgumentException impossible) {
            refused = impossible.getMessage();
        }
        changed.run();
    }

    private void refuse(String words) {
        refused = words;
        changed.run();
    }

    /** {@return what is wrong with the first cell that is not understood, or with what was pasted; empty where nothing is} */
    String complaint() {
        return refused.isEmpty() ? wrong().map(cell -> cell.words() + ": " + cell.why()).orElse("") : refused;
    }
}
