package fairpull.ui.form;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class FaultWordsTest {
    @Test
    void everyKindOfFaultHasWordsThatSayWhatToDo() {
        assertThat(FaultWords.of(new InputException(Place.of("plan.json"), "it is broken", "mend it"))).contains("plan.json", "mend it");
        assertThat(FaultWords.of(new UsageException("--out", "name a file"))).isEqualTo("name a file");
        assertThat(FaultWords.of(new UncheckedIOException(new IOException("No space left on device")))).contains("No space", "not full");
        assertThat(FaultWords.of(new NoSuchFileException("pulls.csv"))).contains("pulls.csv is not there").doesNotContain("full");
        assertThat(FaultWords.of(new AccessDeniedException("pulls.csv"))).contains("may not be read or written by you");
        assertThat(FaultWords.of(new OutOfMemoryError())).contains("memory");
    }

    @Test
    void whatWentWrongAndWhatToDoAreSentencesOfTheirOwn() {
        assertThat(FaultWords.sentences(new InputException(Place.none(), "it is broken; in two places", "mend it"))).containsExactly(
                "It is broken; in two places.", "Mend it.");
        assertThat(FaultWords.sentences(new UsageException("--out", "name a file"))).containsExactly("Name a file.");
    }

    /** As in the watched folder, where the name of the file stands in the line above. */
    @Test
    void aFileThatIsNamedAlreadyIsNotNamedAgain() {
        Path file = Path.of("rig", "run3.csv");
        assertThat(FaultWords.sentences(new InputException(Place.of("run3.csv"), "this may be the stopped pull", "say which"), file))
                .containsExactly("This may be the stopped pull.", "Say which.");
        assertThat(FaultWords.sentences(new InputException(Place.of(file.toString(), 256), "it is cut off", "export it again"), file))
                .containsExactly("Line 256: it is cut off.", "Export it again.");
    }

    @Test
    void aFaultOfTheProgramIsNotBlamedOnTheDisk() {
        assertThat(FaultWords.of(new IllegalStateException("unforeseen"))).startsWith("A fault of the program").doesNotContain("disk");
        assertThat(FaultWords.of(new StackOverflowError())).startsWith("A fault of the program");
    }
}
