package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * One command line, run within the test.
 *
 * @param arguments the words after the program's name
 * @param status the exit status
 * @param out what it printed on standard output
 * @param err what it printed on standard error
 */
record Run(List<String> arguments, int status, String out, String err) {
    static final OffsetDateTime NOW = OffsetDateTime.parse("2026-05-09T18:30:00+02:00");
    private static final ObjectMapper JSON = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    static Run of(Object... words) {
        return at(NOW, words);
    }

    static Run at(OffsetDateTime time, Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> arguments = List.of(words).stream().map(Object::toString).toList();
        int status = new CommandLineProgram(new PrintWriter(out, true), new PrintWriter(err, true),
                Clock.fixed(time.toInstant(), time.getOffset())).runVerb(arguments);
        return new Run(arguments, status, out.toString(), err.toString());
    }

    /** Done, with nothing on standard error. */
    Run succeeded() {
        assertThat(err).as("standard error of %s", arguments).isEmpty();
        assertThat(status).as("status of %s", arguments).isZero();
        return this;
    }

    /** {@return standard output of a run that succeeded, as running text: line ends and narrow spaces are blanks} */
    String words() {
        return succeeded().out.replaceAll("\\s*\\R *", " ").replace('\u202f', ' ');
    }

    /** Refused in one line that holds some words; nothing on standard output, nothing that only a programmer reads. */
    Run refused(int expected, String... words) {
        assertThat(err).as("standard error of %s", arguments).endsWith("\n").startsWith("fairpull: ")
                .doesNotContain("Exception", "\tat ", "java.", "NullPointer", "a fault of the program");
        assertThat(words).as("what the line must hold").allSatisfy(word -> assertThat(err).contains(word));
        assertThat(err.lines()).as("lines of standard error").hasSize(1);
        assertThat(out).as("standard output").isEmpty();
        assertThat(status).as("status of %s: %s", arguments, err).isEqualTo(expected);
        return this;
    }

    /** {@return the one JSON document that standard output must be} */
    JsonNode json() {
        succeeded();
        try {
            return JSON.readTree(out);
        } catch (JsonProcessingException noDocument) {
            throw new AssertionError("not one JSON document: " + out, noDocument);
        }
    }
}
