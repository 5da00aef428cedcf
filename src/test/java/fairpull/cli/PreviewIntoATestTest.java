package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

        assertThat(preview.words()).contains("to be said: no column is taken as power, and without it there is no “mean power 3000-6500 "
                + "rpm”; torque and engine speed would serve as well; name a column with --column power=\"its header\":UNIT",
                "doubt: no column is taken as speed or as time, and without it there is no “time 60-100 km/h”");
    }

    @Test
    void torqueAndEngineSpeedServeForPower() throws IOException {
        Run preview = Run.of("import", test, file("rpm,torque (Nm)", "3000,100", "6500,150"), "--preview").succeeded();

        assertThat(preview.words()).doesNotContain("mean power", "to be said").contains("there is no “time 60-100 km/h”");
    }

    @Test
    void withoutATestNothingIsSaidOfMeasures() throws IOException {
        Run preview = Run.of("import", folder.resolve("none"), file("rpm,x", "3000,100", "6500,150"), "--preview").succeeded();

        assertThat(preview.words()).contains("none is no test yet").doesNotContain("without it");
    }

    private Path file(String... lines) throws IOException {
        return Files.writeString(folder.resolve("A1-1.csv"), String.join("\n", lines) + "\n");
    }
}
