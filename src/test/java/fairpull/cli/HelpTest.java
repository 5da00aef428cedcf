package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The help of every verb: it fits a terminal, and its worked lines do what they say. */
class HelpTest {
    private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|\\S)+");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"size", "new", "check", "seal", "import", "note", "amend", "exclude", "judge", "report", "rig", "soak", "demo"})
    void fitsATerminalAndShowsAWorkedLine(String verb) {
        Run help = Run.of(verb, "--help").succeeded();

        assertThat(help.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(help.out()).contains("\nFor instance:\n  fairpull " + verb).doesNotContain("%%", "%n", "${");
        assertThat(Run.of("--help").succeeded().out()).containsPattern("(?m)^  " + verb + " ");
    }

    @Test
    void theProgramWithoutAVerbSaysWhatItCanDo() {
        assertThat(Run.of().succeeded().out()).isEqualTo(Run.of("--help").out()).contains("Exit status");
        assertThat(Run.of("--version").succeeded().out()).matches("fairpull \\d+\\.\\d+\\.\\d+\\S*\\R");
    }

    /** One day from new to report by nothing but the lines that the help shows, on a test and files of the names that they use. */
    @Test
    void theWorkedLinesDoWhatTheySay() {
        for (String install : List.of("A1", "B1", "A2", "B2", "A3")) {
            for (int pull = 1; pull <= (install.equals("A3") ? 3 : 5); pull++) {
                boolean later = install.equals("B1") && (pull == 3 || pull == 4) || install.equals("A2") && pull > 3;
                if (!later) {
                    SmallTest.export(folder.resolve("exports/" + install + "-" + pull + ".csv"),
                            (install.startsWith("A") ? 140 : 144) + 0.1 * pull + 0.01 * install.charAt(1));
                }
            }
        }
        SmallTest.write(folder.resolve("run17.csv"),
                SmallTest.read(SmallTest.export(folder.resolve("run17.csv"), 144.3)).replace("Power (kW)", "P wheel"));
        SmallTest.write(folder.resolve("session.csv"), SmallTest.read(folder.resolve("exports/A2-1.csv")).replace("40.", "39.") + "\n"
                + SmallTest.read(folder.resolve("exports/A2-2.csv")).replace("40.", "39."));
        SmallTest.write(folder.resolve("notebook.csv"), "pull,coolant (°C)\nA1-1,90\n");
        SmallTest.write(folder.resolve("pulls.csv"), "install,part,pull,minutes,value\nA1,A,1,0,100\nA1,A,2,5,101\nB1,B,1,30,103\nB1,B,2,35,104\n"
                + "A2,A,1,60,100.5\nA2,A,2,65,100.7\nB2,B,1,90,104\n");

        SmallTest.write(folder.resolve("baselines.csv"), "session,install,pull,value\n2026-01-12,A1,1,190.1\n2026-01-12,A1,2,191.4\n"
                + "2026-01-12,A2,1,192.0\n2026-01-19,A1,1,189.2\n2026-01-19,A2,1,190.3\n");

        for (String verb : List.of("size", "new", "check", "seal", "amend", "note", "import", "exclude", "judge", "report", "rig", "soak")) {
            List<List<Object>> lines = workedLines(verb);
            assertThat(lines).as(verb).isNotEmpty();
            lines.forEach(line -> Run.of(line.toArray()).succeeded());
        }
        assertThat(folder.resolve("pump-test.html")).isNotEmptyFile();
        assertThat(folder.resolve("pump-test.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("pump-tables/pulls.csv")).isNotEmptyFile();
    }

    private List<List<Object>> workedLines(String verb) {
        String help = Run.of(verb, "--help").out().replaceAll("\\\\\\R\\s*", "");
        return help.substring(help.indexOf("For instance:")).lines().skip(1).map(String::strip).filter(line -> !line.isEmpty())
                .map(this::words).toList();
    }

    private List<Object> words(String line) {
        List<Object> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            expanded(word.group().replace("\"", "")).forEach(words::add);
        }
        assertThat(words.remove(0)).isEqualTo("fairpull");
        return words;
    }

    /** What a shell would do, in the folder of this test. */
    private Stream<Object> expanded(String word) {
        if (word.equals("exports/*.csv")) {
            return Stream.of(folder.resolve("exports").toFile().list()).sorted().map(name -> folder.resolve("exports").resolve(name));
        }
        return Stream.of(word.matches("pump-test(\\.html|\\.pdf)?|pump-tables|my-rig|\\w+\\.csv") ? folder.resolve(word) : word);
    }
}
