package fairpull.readme;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.cli.CommandLineProgram;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The commands of the README work as they stand, in the order in which they stand. */
class ReadmeTest {
    private static final Path PLAYGROUND = Path.of("target/readme");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @BeforeEach
    void clear() throws IOException {
        if (Files.exists(PLAYGROUND)) {
            try (Stream<Path> files = Files.walk(PLAYGROUND)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    @Test
    void everyCommandWorks() throws IOException {
        List<String> commands = Files.readAllLines(Path.of("README.md")).stream().filter(line -> line.startsWith("fairpull ")).toList();
        StringWriter said = new StringWriter();
        CommandLineProgram program = new CommandLineProgram(new PrintWriter(said), new PrintWriter(said), Clock.systemUTC());

        assertThat(commands).hasSizeGreaterThan(9);
        for (String command : commands) {
            said.getBuffer().setLength(0);
            assertThat(program.runVerb(words(command.substring("fairpull ".length())))).as("%s: %s", command, said).isZero();
        }
        assertThat(PLAYGROUND.resolve("pump.html")).exists();
    }

    @Test
    void everyVerbIsInTheTable() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        StringWriter help = new StringWriter();
        new CommandLineProgram(new PrintWriter(help), new PrintWriter(help), Clock.systemUTC()).runVerb(List.of());
        List<String> verbs = help.toString().lines().dropWhile(line -> !line.startsWith("Commands:")).skip(1)
                .filter(line -> line.matches("  [a-z]+ .*")).map(line -> line.strip().split(" ")[0]).toList();

        assertThat(verbs).contains("size", "judge").allSatisfy(verb -> assertThat(readme).contains("`" + verb + "`"));
    }

    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(line);
        while (matcher.find()) {
            words.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        return words;
    }
}
