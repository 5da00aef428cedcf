package fairpull.io.table;

import java.util.List;

/**
 * What an import would take, before anything is taken.
 *
 * @param export the export as it was read
 * @param columns its columns with what they seem to be and why
 * @param doubts what is not certain, one sentence each
 * @param questions what has to be decided before it can be imported, with the option that decides it
 */
public record Preview(Export export, List<GuessedColumn> columns, List<String> doubts, List<String> questions) {
    public Preview {
        columns = List.copyOf(columns);
        doubts = List.copyOf(doubts);
        questions = List.copyOf(questions);
    }

    /** {@return the preview of an export} */
    public static Preview of(Export export) {
        ColumnGuess.Guess guess = ColumnGuess.guess(export);
        return new Preview(export, guess.columns(), guess.doubts(),
                guess.questions().values().stream().map(question -> question.getMessage() + "; " + question.remedy()).toList());
    }

    /** {@return the first rows as written, each cell by its place in the file} */
    public List<List<String>> firstRows() {
        return export.firstRows();
    }
}
