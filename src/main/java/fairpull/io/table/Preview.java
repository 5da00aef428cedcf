package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.unit.Quantity;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What an import would take, before anything is taken.
 *
 * @param export the export as it was read, the first pull where pulls stand side by side
 * @param pulls how many pulls the file holds
 * @param labels what it calls them; empty where it does not
 * @param howFound how they were found
 * @param columns its columns with what they seem to be and why, or as they were chosen by hand
 * @param doubts what is not certain, one sentence each
 * @param questions what has to be decided before it can be imported, with the option that decides it
 */
public record Preview(Export export, int pulls, List<String> labels, String howFound, List<GuessedColumn> columns, List<String> doubts,
                      List<String> questions) {
    public Preview {
        labels = List.copyOf(labels);
        columns = List.copyOf(columns);
        doubts = List.copyOf(doubts);
        questions = List.copyOf(questions);
    }

    /**
     * {@return the preview of a file}
     *
     * @param file what tells the meaning of its columns
     * @param parted what tells its pulls: the same, or the file with the pulls that someone found in its rows
     * @param overrides the columns that were chosen by hand
     * @param surface where the questions are to be answered
     * @throws InputException if a choice does not fit
     */
    public static Preview of(ExportFile file, ExportFile parted, Map<Quantity, ColumnChoice> overrides, Surface surface) {
        Export export = file.sample();
        ColumnGuess.Guess guess = ColumnGuess.guess(export, overrides);
        List<String> all = file.trouble().isPresent() ? List.of("") : parted.labels();
        List<String> labels = all.stream().filter(label -> !label.isEmpty()).toList();
        List<String> questions = Stream.concat(file.trouble().stream(), guess.questions().values().stream())
                .map(question -> question.getMessage() + "; " + question.remedy().on(surface)).toList();
        Set<String> doubts = new LinkedHashSet<>(guess.doubts(surface));
        doubts.addAll(parted.sample().doubts());
        doubts.addAll(MissingValues.doubts(file.table().columns(), column -> isUsed(guess, column)));
        return new Preview(export, all.size(), labels, parted.howFound(), guess.columns(), List.copyOf(doubts), questions);
    }

    /**
     * {@return the preview of a file that is said to be one pull}
     *
     * @throws InputException as {@link #of}
     */
    public static Preview ofOnePull(ExportFile file, Map<Quantity, ColumnChoice> overrides, Surface surface) {
        ColumnGuess.Guess guess = ColumnGuess.guess(file.table(), overrides);
        return new Preview(file.table(), 1, List.of(), "said", guess.columns(), guess.doubts(surface), guess.questions().values().stream()
                .map(question -> question.getMessage() + "; " + question.remedy().on(surface)).toList())
                .with(MissingValues.doubts(file.table().columns(), column -> isUsed(guess, column)), List.of());
    }

    /** {@return the same with more doubts and questions} */
    public Preview with(List<String> moreDoubts, List<String> moreQuestions) {
        return new Preview(export, pulls, labels, howFound, columns, Stream.concat(doubts.stream(), moreDoubts.stream()).toList(),
                Stream.concat(questions.stream(), moreQuestions.stream()).toList());
    }

    private static boolean isUsed(ColumnGuess.Guess guess, ExportColumn column) {
        return guess.columns().stream().anyMatch(one -> one.column().index() == column.index() && one.quantity().isPresent());
    }

    /** {@return the first rows as written, each cell by its place in the file} */
    public List<List<String>> firstRows() {
        return export.firstRows();
    }
}
