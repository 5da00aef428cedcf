package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.InputException;
import fairpull.domain.heat.CoolDownLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoolDownReaderTest {
    @TempDir
    private Path folder;

    @Test
    void unitsOfTheHeaderCount() throws IOException {
        CoolDownLog log = read("Time (min),Intake Air (°F)\n2,122\n3,104\n4,95\n5,90\n6,86\n7,84\n");

        assertThat(log.timesS().stream()).containsExactly(0.0, 60.0, 120.0, 180.0, 240.0, 300.0);
        assertThat(log.temperaturesK().at(0)).isCloseTo(323.15, within(1e-9));
        assertThat(log.column()).isEqualTo("Intake Air");
    }

    @Test
    void semicolonsAndDecimalCommasAreRead() throws IOException {
        CoolDownLog log = read("Zeit (s);Kühlwasser Temp (°C)\n0;90,5\n10;85,2\n20;81,0\n30;77,7\n40;75,1\n50;73,0\n");
        assertThat(log.temperaturesK().at(5)).isCloseTo(346.15, within(1e-9));
    }

    @Test
    void readingsBeforeTheCoolDownAreLeftOutWhereAskedFor() throws IOException {
        String rising = "Time (s),IAT (°C)\n0,30\n10,45\n20,50\n30,44\n40,40\n50,37\n60,35\n70,34\n";

        assertThatThrownBy(() -> read(rising)).isInstanceOf(InputException.class).hasMessageContaining("first rises");
        CoolDownLog log = CoolDownReader.read(file(rising), Map.of(), Optional.of(20.0));
        assertThat(log.size()).isEqualTo(6);
        assertThat(log.spanS()).isEqualTo(50);
    }

    /** Blocks of 5 of 10 000 readings: the mean of a block of a straight line is its middle. */
    @Test
    void aVeryLongLogIsAveragedInBlocks() throws IOException {
        CoolDownLog log = read("Time (s),IAT (°C)\n" + IntStream.range(0, 10_000)
                .mapToObj(i -> String.format(Locale.ROOT, "%.1f,%.4f", i * 0.1, 60 - i * 0.003)).collect(Collectors.joining("\n")) + "\n");

        assertThat(log.readingsEach()).isEqualTo(5);
        assertThat(log.size()).isEqualTo(2000);
        assertThat(log.timesS().at(1)).isCloseTo(0.5, within(1e-9));
        assertThat(log.temperaturesK().at(0)).isCloseTo(333.15 - 0.006, within(1e-6));
    }

    private CoolDownLog read(String text) throws IOException {
        return CoolDownReader.read(file(text), Map.of(), Optional.empty());
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("log.csv"), text);
    }
}
