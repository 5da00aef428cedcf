package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reading that was wrong is put right on the same bytes, with a reason; nothing else is ever replaced. All of it invented. */
class ReadAnewTest {
    private static final double WATTS_A_METRIC_HORSEPOWER = 735.49875;

    @TempDir
    private Path folder;
    private Path test;
    private List<Path> files;

    @BeforeEach
    void importWithAWrongUnit() {
        test = SmallTest.make(folder.resolve("test"), "ABA", "--pulls", "1");
        files = SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 101);
        SmallTest.write(files.get(1), SmallTest.read(files.get(1)).replace("kW", "PS"));
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).succeeded();
    }

    private Run again(Path file, String pull, Object... more) {
        Object[] words = {"--install", "B1", "--pull", pull, "--column", "power=Power (PS):kW"};
        return Run.of(SmallTest.words("import", test, List.of(file),
                Stream.of(words, more).flatMap(Stream::of).toArray()));
    }

    private JsonNode judged() {
        return Run.of("judge", test, "--json").json();
    }

    private double valueOfB() {
        return judged().get("installs").get(1).get("mean").asDouble();
    }

    @Test
    void theSameBytesAreReadWithTheUnitNamedAndTheFindingTellsWhy() {
        assertThat(valueOfB()).isCloseTo(104 * WATTS_A_METRIC_HORSEPOWER / 1000, within(1e-9));

        again(files.get(1), "1", "--because", "the unit was kW").succeeded();

        assertThat(valueOfB()).isCloseTo(104, within(1e-9));
        JsonNode finding = judged();
        assertThat(finding.get("warnings").toString()).contains("B1-1 (the unit was kW)").doesNotContain("known whether");
        assertThat(finding.toString()).doesNotContain("by hand");
        assertThat(SmallTest.read(test.resolve("log.jsonl")).lines().filter(line -> line.contains("pull-taken"))).hasSize(4);
    }

    @Test
    void withoutAReasonOrWithOtherBytesNothingIsReplaced() {
        again(files.get(1), "1").refused(3, "B1-1 is there already", "--because");
        again(files.get(1), "1", "--because", " ").refused(2, "needs a reason");
        Path other = SmallTest.write(folder.resolve("other.csv"), SmallTest.read(files.get(1)).replace("104", "108"));
        again(other, "1", "--because", "a better one").refused(3, "not the bytes that pull B1-1 came in with");
        assertThat(valueOfB()).isLessThan(80);
    }

    @Test
    void aPullThatNeverCameInHasNothingToReadAnew() {
        Path small = SmallTest.make(folder.resolve("empty"), "ABA");
        Run.of("import", small, files.get(0), "--because", "why not").refused(3, "A1-1 has not come in", "leave out --because");
    }
}
