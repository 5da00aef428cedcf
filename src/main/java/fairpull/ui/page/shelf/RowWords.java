package fairpull.ui.page.shelf;

import fairpull.app.document.Settings;
import fairpull.app.usecase.shelf.ListedTest;
import fairpull.app.usecase.shelf.ListedTest.Outcome;
import fairpull.ui.page.Desk;
import fairpull.ui.page.shelf.TestRows.Column;
import fairpull.ui.page.shelf.TestRows.Row;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Words;
import java.util.Comparator;
import java.util.function.Function;
import java.util.stream.Stream;

/** What stands in a cell: a line, and a lesser one beneath. */
final class RowWords {
    private final Settings settings;

    RowWords(Settings settings) {
        this.settings = settings;
    }

    String first(Row row, Column column) {
        return switch (column) {
            case TEST -> row.test().map(this::title).orElse(String.valueOf(row.folder().getFileName()));
            case STATE -> row.test().map(ListedTest::stateWords).orElse(Words.of("shelf.awaited"));
            case VERDICT -> outcome(row, Outcome::verdictWords);
            case CHANGE -> LocalNumbers.shown(outcome(row, Outcome::change));
            case MARK -> "";
            case DATE -> row.test().flatMap(ListedTest::date).map(date -> date.toLocalDate().toString()).orElse("");
        };
    }

    String second(Row row, Column column) {
        return switch (column) {
            case TEST -> joined(apart(row), row.test().map(test -> test.trouble().isEmpty() ? parts(test) : test.trouble()).orElse(""));
            case VERDICT -> outcome(row, outcome -> outcome.alarm().isEmpty() ? outcome.beside() : outcome.alarm());
            case CHANGE -> LocalNumbers.shown(outcome(row, Outcome::interval));
            case STATE -> row.test().map(ListedTest::measure).orElse("");
            case MARK, DATE -> "";
        };
    }

    /** {@return whether the lesser line says that something is wrong} */
    static boolean isWrong(Row row, Column column) {
        return column == Column.TEST && row.test().filter(test -> !test.trouble().isEmpty()).isPresent()
                || column == Column.VERDICT && !outcome(row, Outcome::alarm).isEmpty();
    }

    /** {@return what is wrong with a test in full; empty where nothing is} */
    String wrong(Row row) {
        return (row.test().map(ListedTest::trouble).orElse("") + " " + outcome(row, Outcome::alarm)).strip();
    }

    /** {@return where it lies; nothing of a test that is run blind, since names of folders tell what is in them} */
    String place(Row row) {
        return row.test().filter(this::isBlind).isPresent() ? "" : row.folder().toString();
    }

    private String apart(Row row) {
        return row.apart().isEmpty() || place(row).isEmpty() ? "" : Words.of("shelf.apart", row.apart());
    }

    private static String joined(String one, String other) {
        return one.isEmpty() || other.isEmpty() ? one + other : one + " · " + other;
    }

    private String title(ListedTest test) {
        return isBlind(test) ? Words.of("blind.title") : test.title();
    }

    private String parts(ListedTest test) {
        return isBlind(test) ? "" : test.parts();
    }

    /** Who runs a day blind is not told here what is fitted either. */
    private boolean isBlind(ListedTest test) {
        return test.state() != ListedTest.State.COMPLETE && Desk.isBlind(settings, test.folder());
    }

    private static String outcome(Row row, Function<Outcome, String> words) {
        return row.test().flatMap(ListedTest::outcome).map(words).orElse("");
    }

    /** {@return everything that is said of a row, for who looks for a word} */
    String all(Row row) {
        return String.join(" ", Stream.of(Column.values()).map(column -> first(row, column) + " " + second(row, column)).toList()) + " "
                + row.folder().getFileName();
    }

    /** {@return the order of a column: words by their letters, states as the work goes, changes by worthwhile gains, days by time} */
    Comparator<Row> order(Column column) {
        return switch (column) {
            case STATE -> Comparator.comparing(row -> row.test().map(test -> test.state().ordinal()).orElse(-1));
            case CHANGE, MARK -> Comparator.comparing(row -> row.test().flatMap(ListedTest::outcome).map(Outcome::inGains)
                    .orElse(Double.NaN));
            case TEST, VERDICT, DATE -> Comparator.comparing(row -> first(row, column), String.CASE_INSENSITIVE_ORDER);
        };
    }
}
