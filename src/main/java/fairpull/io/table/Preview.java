package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.Map;
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
     * @param overrides the columns that were chosen by hand
     * @throws InputException if a choice does not fit
     */
    public static Preview of(ExportFile file, Map<Quantity, ColumnChoice> overrides) {
        Export export = file.sample();
        ColumnGuess.Guess guess = ColumnGuess.guess(export, overrides);
        List<String> all = file.trouble().isPresent() ? List.of("") : file.labels();
        List<String> labels = all.stream().filter(label -> !label.isEmpty()).toList();
        List<String> questions = Stream.concat(file.trouble().stream(), guess.questions().values().stream())
                .map(question -> question.getMessage() + "; " + question.remedy()).toList();
        List<String> doubts = Stream.concat(guess.doubts().stream(), MissingValues.doubts(file.table().columns(),
                column -> isUsed(guess, column)).stream()).toList();
        return new Preview(export, all.size(), labels, file.howFound(), guess.columns(), doubts, questions);
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
