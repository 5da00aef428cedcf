package fairpull.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DemoExportsTest {
    private static final Path DEMO_DATA = Path.of("demo-data");

    @Test
    void theCommittedFilesAreByteForByteWhatTheGeneratorWrites() throws IOException {
        for (Map.Entry<String, byte[]> file : DemoExports.files().entrySet()) {
            assertThat(Files.readAllBytes(DEMO_DATA.resolve(file.getKey()))).as(file.getKey()).isEqualTo(file.getValue());
        }
    }

    @Test
    void nothingElseLiesInTheFolderButItsReadmeAndThePublicationsTypedByHand() throws IOException {
        Set<String> expected = new TreeSet<>(DemoExports.files().keySet());
        expected.addAll(Set.of("README.md", "published/sound.json", "published/silent.json", "published/battery-trial-1953.json",
                "published/inlet.json", "published/inlet-before.csv", "published/inlet-after.csv"));
        try (Stream<Path> paths = Files.walk(DEMO_DATA)) {
            assertThat(paths.filter(Files::isRegularFile).map(path -> DEMO_DATA.relativize(path).toString().replace('\\', '/')))
                    .containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    @Test
    void everyExportIsSmallEnoughToReadThroughAndTheDemoStaysUnderTwoMegabytes() {
        Map<String, byte[]> files = DemoExports.files();
        assertThat(files.values()).allSatisfy(bytes -> assertThat(bytes.length).isLessThan(40_000));
        assertThat(files.values().stream().mapToLong(bytes -> bytes.length).sum()).isLessThan(2_000_000);
    }
}
