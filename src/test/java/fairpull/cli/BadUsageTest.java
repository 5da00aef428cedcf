package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Command lines that are wrong in themselves: status 2, the option named, nothing written. {@code TEST} and {@code RUN} stand for paths. */
class BadUsageTest {
    private static final String NEW = "new FRESH --part-a a --part-b b --measure peak_power_in_kW ";
    private static final String SIZE = "size --sequence ABABA --pull-scatter 1 --refit-scatter 1 --gain 2 ";

    @TempDir
    private Path folder;

    @BeforeEach
    void aTestAndAnExport() {
        SmallTest.make(folder.resolve("test"), "ABA");
        SmallTest.export(folder.resolve("run.csv"), 100);
    }

    static Stream<Arguments> commandLines() {
        return Stream.of(
                arguments("jugde TEST", "jugde"),
                arguments("--colour", "--colour"),
                arguments("check TEST TEST", "not expected here"),
                arguments("check", "TEST"),
                arguments("check TEST --colour", "--colour"),
                arguments("judge", "--table"),
                arguments("judge TEST --drift linear", "--drift"),
                arguments("judge TEST --worthwhile 3", "--worthwhile"),
                arguments("judge TEST --drawn --json", "--drawn"),
                arguments("import TEST RUN --pull 3", "--install"),
                arguments("import TEST RUN --warm-up", "--install"),
                arguments("import TEST RUN --install A1 --pull 0", "--pull"),
                arguments("import TEST RUN --install A1 --pull -3", "--pull"),
                arguments("import TEST RUN --install A1 --pull two", "--pull"),
                arguments("import TEST RUN --install A1 --at noon", "--at"),
                arguments("import TEST RUN --install A1 --column colour=3", "--column"),
                arguments("import TEST RUN --install A1 --corrected twice", "--corrected"),
                arguments("import TEST RUN RUN2 --install A1 --at 2026-05-09T09:42:00+02:00", "--at"),
                arguments("import TEST", "FILE"),
                arguments("note TEST A1-1", "--condition"),
                arguments("note TEST A1-1 --condition intake-air", "--condition"),
                arguments("note TEST A1-1 --condition colour=red", "--condition"),
                arguments("note TEST A1 --aborted slip", "PULL"),
                arguments("note TEST C1-1 --aborted slip", "PULL"),
                arguments("note TEST A1 --remark x --condition intake-air=24C", "--condition"),
                arguments("note TEST A1-1 --table RUN", "--table"),
                arguments("note TEST --table RUN --remark x", "--remark"),
                arguments("note TEST A1-1 --value 13s", "--value"),
                arguments("note TEST A1-1 --value colour=13s", "--value"),
                arguments("exclude TEST A1-1", "--because"),
                arguments("exclude TEST first --because x", "PULL"),
                arguments("exclude TEST A1-1 --because _", "--because"),
                arguments("amend TEST --because x", "--set"),
                arguments("amend TEST --set title=x", "--because"),
                arguments("amend TEST --set title --because x", "--set"),
                arguments("amend TEST --set title=x --set title=y --because x", "--set"),
                arguments("report TEST", "--out"),
                arguments("report TEST --out TEST", "--out"),
                arguments("report TEST --out TEST/plan.json", "--out"),
                arguments("report TEST --out TEST/pulls/A1-1.csv", "--out"),
                arguments("demo --json", "--json"),
                arguments(NEW + "--pulls 0", "--pulls"),
                arguments(NEW + "--pulls 1001", "--pulls"),
                arguments(NEW + "--warm-ups -1", "--warm-ups"),
                arguments(NEW + "--sequence ABC", "--sequence"),
                arguments(NEW + "--sequence AAA", "part B"),
                arguments(NEW + "--sequence AB||A", "--sequence"),
                arguments(NEW + "--interval -5", "--interval"),
                arguments(NEW + "--swap 3hp", "--swap"),
                arguments(NEW + "--set-up soon", "--set-up"),
                arguments(NEW + "--worthwhile 3s", "--worthwhile"),
                arguments(NEW + "--worthwhile -3kW", "worthwhile"),
                arguments(NEW + "--worthwhile 2%", "--expected"),
                arguments(NEW + "--expected many", "--expected"),
                arguments(NEW + "--claim lots", "--claim"),
                arguments(NEW + "--refit-df 4", "--refit-scatter"),
                arguments(NEW + "--refit-scatter 0kW", "--refit-scatter"),
                arguments(NEW + "--refit-scatter 1kW --refit-df many", "--refit-df"),
                arguments(NEW + "--rig treadmill", "--rig"),
                arguments(NEW + "--correction twice", "--correction"),
                arguments(NEW + "--covariate colour", "--covariate"),
                arguments(NEW + "--draw x", "--draw"),
                arguments(NEW + "--power-wanted 1", "--power-wanted"),
                arguments(NEW + "--further peak_power_in_kW", "peak power"),
                arguments("new FRESH --part-a a --part-b b --measure power", "measure"),
                arguments("new FRESH --part-a a --part-b b --measure mean_power_6000-3000_rpm_in_kW", "lower"),
                arguments("new FRESH --part-a a --part-b b --measure peak_power_in_s", "measure"),
                arguments("new FRESH --part-a _ --part-b b --measure peak_power_in_kW", "part A"),
                arguments("new FRESH --part-a a --measure peak_power_in_kW", "--part-b"),
                arguments(SIZE + "--pulls 0", "--pulls"),
                arguments(SIZE + "--pulls 2.5", "--pulls"),
                arguments(SIZE + "--refit-df -1", "--refit-df"),
                arguments(SIZE + "--interval 0", "--interval"),
                arguments(SIZE + "--swap -1", "--swap"),
                arguments(SIZE + "--alpha 2", "--alpha"),
                arguments(SIZE.replace("ABABA", "AXA"), "letters A and B"),
                arguments(SIZE.replace("ABABA", "AAA"), "letters A and B"),
                arguments(SIZE.replace("--gain 2", "--gain 0"), "--gain"),
                arguments(SIZE.replace("--gain 2", ""), "--gain"),
                arguments(SIZE.replace("--pull-scatter 1", ""), "--pull-scatter"),
                arguments(SIZE.replace("--refit-scatter 1", ""), "--refit-scatter"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commandLines")
    void isRefusedWithTheOptionNamed(String line, String named) throws IOException {
        Map<String, String> before = Folders.contents(folder);

        Run.of(Arrays.stream(line.strip().split(" +")).map(this::word).toArray()).refused(2, named);

        assertThat(Folders.contents(folder)).isEqualTo(before);
    }

    private Object word(String word) {
        return word.replace("FRESH", folder.resolve("fresh").toString())
                .replace("TEST", folder.resolve("test").toString())
                .replace("RUN", folder.resolve("run.csv").toString())
                .replace('_', ' ');
    }
}
