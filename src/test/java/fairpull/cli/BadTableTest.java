package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables of pulls that cannot be judged, and options that contradict: one line, the right status, nothing written. */
class BadTableTest {
    private static final String GOOD = """
            install,part,pull,minutes,value
            A1,A,1,0,100.1
            A1,A,2,5,100.4
            B1,B,1,30,102.2
            B1,B,2,35,102.0
            A2,A,1,60,100.3
            A2,A,2,65,100.0
            """;

    @TempDir
    private Path folder;

    static Stream<Arguments> tables() {
        return Stream.of(
                arguments("a missing column", GOOD.replace("part", "which"), List.of(), words("line 1", "part")),
                arguments("a part named C", GOOD.replace("B1,B,2", "B1,C,2"), List.of(), words("line 5", "part", "“C”")),
                arguments("one install only", GOOD.replaceAll("(?m)^(B1|A2).*\\R", ""), List.of(), words("one install")),
                arguments("one part only", GOOD.replaceAll("(?m)^B1.*\\R", ""), List.of(), words("part A")),
                arguments("all values equal", GOOD.replaceAll("(?m)\\d+\\.\\d+$", "100"), List.of(), words("equal")),
                arguments("NaN", GOOD.replace("102.2", "NaN"), List.of(), words("line 4", "value", "NaN")),
                arguments("an infinite number", GOOD.replace("102.2", "Infinity"), List.of(), words("line 4", "value")),
                arguments("a number out of range", GOOD.replace("102.2", "1e999"), List.of(), words("line 4", "value")),
                arguments("text in a number", GOOD.replace("102.2", "fast"), List.of(), words("line 4", "value", "fast")),
                arguments("a blank in a number", GOOD.replace("102.2", ""), List.of(), words("line 4", "value", "blank")),
                arguments("duplicate pulls", GOOD.replace("A1,A,2", "A1,A,1"), List.of(), words("line 3", "pull")),
                arguments("an install of two parts", GOOD.replace("A2,A,1", "B1,A,3"), List.of(), words("line 6", "part")),
                arguments("an empty file", "", List.of(), words("empty")),
                arguments("blanks only", "\n  \n\n", List.of(), words("blank")),
                arguments("a header only", "install,part,pull,value\n", List.of(), words("no pull")),
                arguments("drift without minutes", GOOD.replace("minutes", "clock"), List.of("--drift", "linear"), words("minutes")),
                arguments("drift with a blank minute", GOOD.replace(",35,", ",,"), List.of("--drift", "linear"),
                        words("line 5", "minutes")),
                arguments("a covariate that is not there", GOOD, List.of("--covariate", "iat"), words("iat")),
                arguments("a covariate that is no number", GOOD.replace(",0,", ",calm,").replace("minutes", "wind"),
                        List.of("--covariate", "wind"), words("line 2", "wind", "not a number")),
                arguments("the value as a covariate", GOOD, List.of("--covariate", "value"), words("value", "not a covariate")),
                arguments("the install as a covariate", GOOD, List.of("--covariate", "install"), words("install", "not a covariate")),
                arguments("the part as a covariate", GOOD, List.of("--covariate", "part"), words("part", "not a covariate")),
                arguments("the minutes as a covariate", GOOD, List.of("--covariate", "minutes"), words("minutes", "--drift linear")),
                arguments("values whose squares overflow", GOOD.replaceAll("(?m)(\\.\\d+)$", "$1e155"), List.of(),
                        words("line 2", "value", "100.1e155", "out of range", "another unit")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tables")
    void aTableThatCannotBeJudgedIsRefused(String name, String table, List<String> options, String[] words) throws IOException {
        Path file = SmallTest.write(folder.resolve("pulls.csv"), table);
        Map<String, String> before = Folders.contents(folder);

        for (String json : List.of("", "--json")) {
            List<String> more = new ArrayList<>(options);
            if (!json.isEmpty()) {
                more.add(json);
            }
            Run.of(judge(file, more)).refused(3, words).refused(3, "pulls.csv");
        }

        assertThat(Folders.contents(folder)).isEqualTo(before);
    }

    static Stream<Arguments> options() {
        return Stream.of(
                arguments(List.of("--refit-scatter", "1"), "--refit-df"),
                arguments(List.of("--refit-scatter", "1", "--refit-df", "0"), "--refit-df"),
                arguments(List.of("--pull-scatter", "1"), "--pull-df"),
                arguments(List.of("--refit-df", "4"), "--refit-scatter"),
                arguments(List.of("--refit-scatter", "-1", "--refit-df", "4"), "--refit-scatter"),
                arguments(List.of("--refit-scatter", "NaN", "--refit-df", "4"), "--refit-scatter"),
                arguments(List.of("--refit-scatter", "1", "--refit-df", "NaN"), "--refit-df"),
                arguments(List.of("--refit-scatter", "1", "--refit-df", "-4"), "--refit-df"),
                arguments(List.of("--worthwhile", "0"), "--worthwhile"),
                arguments(List.of("--worthwhile", "3hp"), "--worthwhile"),
                arguments(List.of("--alpha", "0"), "--alpha"),
                arguments(List.of("--alpha", "0.5"), "--alpha"),
                arguments(List.of("--sides", "three"), "--sides"),
                arguments(List.of("--drift", "cubic"), "--drift"),
                arguments(List.of("--better", "bigger"), "--better"),
                arguments(List.of("--colour", "red"), "--colour"),
                arguments(List.of("--drift"), "--drift"),
                arguments(List.of("--alpha", "0.05", "--alpha", "0.1"), "--alpha"),
                arguments(List.of("plans/electric-pump"), "--table"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("options")
    void anOptionThatIsWrongOrMissingIsNamed(List<String> options, String named) throws IOException {
        Path file = SmallTest.write(folder.resolve("pulls.csv"), GOOD);
        Map<String, String> before = Folders.contents(folder);

        Run.of(judge(file, options)).refused(2, named);

        assertThat(Folders.contents(folder)).isEqualTo(before);
    }

    @Test
    void theGoodTableIsJudged() {
        Run.of(judge(SmallTest.write(folder.resolve("pulls.csv"), GOOD), List.of("--drift", "linear"))).succeeded();
    }

    @Test
    void aFilePastTheLimitIsRefusedUnread() throws IOException {
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile sparse = new RandomAccessFile(large.toFile(), "rw")) {
            sparse.setLength((512L << 20) + 1);
        }

        Run.of("judge", "--table", large).refused(3, "large.csv", "512 MB");
        Run.of("import", SmallTest.make(folder.resolve("test"), "ABA"), large, "--install", "A1").refused(3, "large.csv", "512 MB");
    }

    @Test
    void aFileThatIsNoTextIsRefused() throws IOException {
        byte[] bytes = new byte[4096];
        new Random(1).nextBytes(bytes);
        Path binary = Files.write(folder.resolve("run.bin"), bytes);

        Run.of("judge", "--table", binary).refused(3, "run.bin", "text");
        Run.of("import", SmallTest.make(folder.resolve("test"), "ABA"), binary, "--install", "A1").refused(3, "run.bin", "text");
    }

    @Test
    void aFileThatIsNotThereOrAFolderIsRefused() throws IOException {
        Run.of("judge", "--table", folder.resolve("none.csv")).refused(3, "none.csv");
        Run.of("judge", "--table", Files.createDirectories(folder.resolve("heap"))).refused(3, "heap");
    }

    private static Object[] judge(Path file, List<String> more) {
        List<Object> words = new ArrayList<>(List.of("judge", "--table", file));
        words.addAll(more);
        return words.toArray();
    }

    private static String[] words(String... words) {
        return words;
    }
}
