package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A preview into a test says what the plan's measures lack, before an import refuses the file or a finding misses it. */
class PreviewIntoATestTest {
    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void aTestOfPowerAndOfATime() {
        test = folder.resolve("test");
        Run.of("new", test, "--part-a", "a", "--part-b", "b", "--measure", "mean power 3000-6500 rpm in kW", "--further",
                "time 60-100 km/h in s").succeeded();
    }

    @Test
    void aMeasureWithoutItsColumnIsNamedWithWhatWouldServe() throws IOException {
        Run preview = Run.of("import", test, file("rpm,boost (kPa)", "3000,100", "6500,150"), "--preview").succeeded();

        assertThat(preview.words()).contains("to be said: no column is taken as power, so “mean power 3000-6500 rpm” cannot be "
                + "read; name it: --column power=\"its header\":kW; torque with engine speed would serve for power",
                "doubt: no column is taken as speed, none as time, so “time 60-100 km/h” cannot be read; name them: --column "
                + "speed=\"its header\":km/h --column time=\"its header\":s");
    }

    @Test
    void torqueAndEngineSpeedServeForPower() throws IOException {
        Run preview = Run.of("import", test, file("rpm,torque (Nm)", "3000,100", "6500,150"), "--preview").succeeded();

        assertThat(preview.words()).doesNotContain("mean power", "to be said").contains("so “time 60-100 km/h” cannot be read");
    }

    @Test
    void withoutATestNothingIsSaidOfMeasures() throws IOException {
        Run preview = Run.of("import", folder.resolve("none"), file("rpm,x", "3000,100", "6500,150"), "--preview").succeeded();

        assertThat(preview.words()).contains("none is no test yet").doesNotContain("cannot be read");
    }

    @Test
    void whereTooManyCellsSayNoValueTheChecksOfTheBandSpeak() throws IOException {
        for (int gap : new int[] {2, 12}) {
            List<String> lines = new ArrayList<>(List.of("rpm,power (kW)"));
            for (int row = 0; row <= 37; row++) {
                lines.add((2900 + 100 * row) + "," + (row >= 10 && row < 10 + gap ? "--" : 80 + row));
            }
            String out = Run.of("import", test, file(lines.toArray(String[]::new)), "--install", "A1", "--pull",
                    gap == 2 ? 1 : 2, "--corrected", "none")
                    .succeeded().words();

            assertThat(out).contains(gap + " of 38 rows are left out: no value of “power (kW)” stands in them");
            assertThat(out.contains("samples in the deciding band")).as(out).isEqualTo(gap == 12);
        }
    }

    private Path file(String... lines) throws IOException {
        return Files.writeString(folder.resolve("A1-1.csv"), String.join("\n", lines) + "\n");
    }
}
