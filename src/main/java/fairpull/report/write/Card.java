package fairpull.report.write;

import fairpull.report.wording.Said;
import java.util.ArrayList;
import java.util.List;

/**
 * One thought of a report, as the template takes it.
 *
 * @param kind how it is shown, or where: {@code verdict}, {@code alarm}, {@code change}, {@code standing}, {@code claims} or {@code plain}
 * @param heading what was found
 * @param paragraphs sentences under it
 * @param figures charts
 * @param caption what the marks of the charts mean; empty without charts
 * @param said answers with their figures
 * @param table a table; {@link Table#none()} where there is none
 * @param steps numbered steps
 * @param plainly what {@code said} says without its figures, for where these are one click away; empty where {@code said} is plain itself
 * @param method whether the card is the method behind others, which a window keeps folded
 */
public record Card(String kind, String heading, List<String> paragraphs, List<Figure> figures, String caption, List<Said> said, Table table,
        List<String> steps, List<Said> plainly, boolean method) {
    /**
     * A table.
     *
     * @param name which one, for its style; empty for none
     * @param columns their heads
     * @param rows as many cells as columns each
     * @param words how many columns from the left hold words; the others hold figures and are set to the right
     */
    public record Table(String name, List<String> columns, List<List<String>> rows, int words) {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }

        /** {@return no table} */
        public static Table none() {
            return new Table("", List.of(), List.of(), 0);
        }
    }

    public Card {
        paragraphs = List.copyOf(paragraphs);
        figures = List.copyOf(figures);
        said = List.copyOf(said);
        steps = List.copyOf(steps);
        plainly = List.copyOf(plainly);
    }

    static Card plain(String heading) {
        return new Card("plain", heading, List.of(), List.of(), "", List.of(), Table.none(), List.of(), List.of(), false);
    }

    Card as(String otherKind) {
        return new Card(otherKind, heading, paragraphs, figures, caption, said, table, steps, plainly, method);
    }

    Card saying(String paragraph) {
        List<String> more = new ArrayList<>(paragraphs);
        more.add(paragraph);
        return new Card(kind, heading, more, figures, caption, said, table, steps, plainly, method);
    }

    Card showing(List<Figure> charts, String words) {
        return new Card(kind, heading, paragraphs, charts, words, said, table, steps, plainly, method);
    }

    Card answering(List<Said> answers) {
        return new Card(kind, heading, paragraphs, figures, caption, answers, table, steps, plainly, method);
    }

    Card tabling(Table other) {
        return new Card(kind, heading, paragraphs, figures, caption, said, other, steps, plainly, method);
    }

    Card stepping(List<String> other) {
        return new Card(kind, heading, paragraphs, figures, caption, said, table, other, plainly, method);
    }

    Card answeringPlainly(List<Said> words) {
        return new Card(kind, heading, paragraphs, figures, caption, said, table, steps, words, method);
    }

    Card asMethod() {
        return new Card(kind, heading, paragraphs, figures, caption, said, table, steps, plainly, true);
    }
}
