package fairpull.io.table;

import fairpull.domain.Remedy.Surface;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fairpull.domain.InputException;
import fairpull.domain.plan.Drift;
import fairpull.domain.pull.DecimalMark;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a file holds, it is read or refused with place and remedy; nothing else ever happens. */
class HostileInputTest {
    private static final int SOME = 2_500;
    private static final int MANY = 50_000;
    private static final String SYMBOLS = "0123456789.,;\t\"\r\n-+eE \u00b5\u00b0()[]AB%rpm";

    @TempDir
    private Path folder;

    @Test
    void randomAndSpoiltFilesAreReadOrRefused() throws IOException {
        randomBytes(SOME, 1);
        spoiltFiles(SOME, 2);
    }

    @Test
    @Tag("slow")
    void aHundredThousandRandomAndSpoiltFilesAreReadOrRefused() throws IOException {
        randomBytes(MANY, 3);
        spoiltFiles(MANY, 4);
    }

    /** Rows that look like titles or headers, said again and again between numbers. */
    @Test
    void randomTablesWithRepeatedRowsOfTextAreReadOrRefused() throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        List<String> rows = List.of("rpm,power", "A,a", "Pull 1", "62.8,A", "1000,50", "2000,60", "rpm,kW", "27,a", "60", "a,1", "", ",kW", "NaN,--");
        for (int i = 0; i < SOME; i++) {
            StringBuilder text = new StringBuilder();
            for (int row = random.nextInt(12); row >= 0; row--) {
                text.append((rows.get(random.nextInt(rows.size())) + "\n").repeat(1 + random.nextInt(3)));
            }
            readOrRefused(text.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** The shape of the data of Davies and Goldsmith (1972) on pastes and penicillin: numbers beside letters that are units too. */
    @Test
    void lettersBesideNumbersAreNeitherAHeaderNorUnits() throws IOException {
        Path pastes = Files.writeString(folder.resolve("pastes.csv"),
                "strength,batch,cask,sample\n62.8,A,a,A:a\n62.6,A,a,A:a\n60.1,A,b,A:b\n62.8,A,a,A:a\n62.8,A,a,A:a\n");
        Path penicillin = Files.writeString(folder.resolve("penicillin.csv"), "diameter,plate,sample\n27,a,A\n23,a,B\n26,a,C\n23,a,D\n");

        assertThat(ExportReader.read(pastes).rows()).isEqualTo(5);
        assertThat(ExportReader.read(penicillin).rows()).isEqualTo(4);
    }

    private void randomBytes(int files, long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        int read = 0;
        for (int i = 0; i < files; i++) {
            byte[] bytes = new byte[random.nextInt(200)];
            if (i % 2 == 0) {
                random.nextBytes(bytes);
            } else {
                bytes = symbols(random, bytes.length).getBytes(i % 4 == 1 ? StandardCharsets.UTF_8 : StandardCharsets.UTF_16);
            }
            read += readOrRefused(bytes) ? 1 : 0;
        }
        assertThat(read).isLessThan(files / 2);
    }

    private void spoiltFiles(int files, long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        List<byte[]> sound = new ArrayList<>();
        sound.add("install,part,pull,minutes,value\n1,A,1,0,1.5\n2,B,1,9.5,2.5\n".getBytes(StandardCharsets.UTF_16));
        for (Path shape : shapes()) {
            sound.add(Files.readAllBytes(shape));
        }
        for (int i = 0; i < files; i++) {
            byte[] bytes = sound.get(i % sound.size()).clone();
            for (int change = random.nextInt(4); change > 0; change--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            readOrRefused(Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)));
        }
    }

    @Test
    void everyTruncationOfASoundFileIsReadOrRefused() throws IOException {
        for (Path shape : shapes()) {
            byte[] sound = Files.readAllBytes(shape);
            int rows = ExportReader.read(shape).rows();
            for (int length = 0; length < sound.length; length++) {
                if (readOrRefused(Arrays.copyOf(sound, length))) {
                    assertThat(ExportReader.read(folder.resolve("file.csv")).rows()).isLessThanOrEqualTo(rows);
                }
            }
        }
    }

    @Test
    void aLineCutShortIsNoticed() throws IOException {
        assertThat(refusal("rpm,power (kW)\n2000,50.5\n3000,60.5\n40".getBytes(StandardCharsets.UTF_8)).oneLine())
                .contains("line 4: the file is cut off in its last line");
        assertThat(refusal("rpm,power (kW),\u00b5\n2000,50.5,\u00b5\n3000,60.5,\u00b5".getBytes(StandardCharsets.UTF_8), 1).oneLine())
                .contains("the file ends in the middle of a character");
        assertThat(refusal("rpm,power\n2000,50.5\n".getBytes(StandardCharsets.UTF_16), 1).oneLine())
                .contains("the file ends in the middle of a character");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "|the file is empty",
        "~~ ~|the file holds nothing but blanks",
        "rpm,power~|line 1: there is a header but no row of data below it",
        "2000,50.5~3000,60.5~|line 1: there is no header: the first line already holds numbers",
        "once upon a time~there was a motor~|no line of names with numbers below it was found",
        "rpm,power~2000,50.5~3000,60,5~|line 3: the line has 3 cells and the header names 2 columns; ",
        "rpm,power~2000,'50.5~3000,60.5~|line 2: a quote is not closed",
        "rpm;power~1.800;1.250~2.000;1.350~|line 2: “1.800” can be read with either decimal mark; ",
        "rpm;power~1800,5;1.5~2000,5;2.5~|line 2: “1.5” and “1800,5” in line 2 have different decimal marks; "})
    void refusalsNamePlaceAndRemedy(String text, String message) throws IOException {
        String unfolded = text == null ? "" : text.replace('~', '\n').replace('\'', '"');

        assertThat(refusal(unfolded.getBytes(StandardCharsets.UTF_8)).oneLine())
                .startsWith(folder.resolve("file.csv").toString()).contains(message);
    }

    @Test
    void theMarkCanBeGiven() throws IOException {
        Path file = Files.writeString(folder.resolve("file.csv"), "rpm;power\n1.800;1.250\n2.000;1.350\n");

        assertThat(ExportReader.read(file, Optional.of(DecimalMark.COMMA)).columns().get(0).numbers().at(0)).isEqualTo(1800);
        assertThat(ExportReader.read(file, Optional.of(DecimalMark.POINT)).columns().get(0).numbers().at(0)).isEqualTo(1.8);
    }

    @Test
    void aLaterCellSettlesTheMarkHoweverFarDown() throws IOException {
        String doubtful = "1,250;1,500\n".repeat(3_000);
        Path file = Files.writeString(folder.resolve("file.csv"), "rpm;power\n" + doubtful + "1,5;2\n");

        assertThat(ExportReader.read(file).columns().get(0).numbers().at(0)).isEqualTo(1.25);
    }

    @Test
    void missingFilesFoldersAndBinaries() throws IOException {
        assertThat(catchThrowableOfType(InputException.class, () -> ExportReader.read(folder.resolve("none.csv"))).oneLine())
                .contains("there is no such file");
        assertThat(catchThrowableOfType(InputException.class, () -> ExportReader.read(folder)).oneLine()).contains("this is not a file");
        assertThat(refusal(new byte[] {'P', 'K', 3, 4, 0, 0, 1, 2, 3, 0, 10, 13}).oneLine()).contains("this is a binary file");
    }

    @Test
    void aFilePastTheLimitIsRefusedUnread() throws IOException {
        Path file = folder.resolve("large.csv");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(ExportReader.MAXIMUM_BYTES + (1 << 20));
        }
        assertThat(catchThrowableOfType(InputException.class, () -> ExportReader.read(file)).oneLine())
                .contains("the file has 513 MB and the limit is 512 MB");
        assertThat(catchThrowableOfType(InputException.class, () -> PullTableReader.read(file, TableOptions.plain())).oneLine())
                .contains("the limit is 512 MB");
    }

    @Test
    void endlessLinesCellsAndQuotesAreRefused() throws IOException {
        assertThat(refusal(("a,b\n" + "1,".repeat(1_000_000)).getBytes(StandardCharsets.UTF_8)).oneLine()).contains("more than 2000 cells");
        assertThat(refusal("1,".repeat(1_000_000).getBytes(StandardCharsets.UTF_8)).oneLine()).contains("more than");
        assertThat(refusal("a".repeat(5_000_000).getBytes(StandardCharsets.UTF_8)).oneLine()).contains("a cell has more than 16384 characters");
        Path file = folder.resolve("file.csv");
        try (BufferedWriter writer = Files.newBufferedWriter(file)) {
            writer.write("rpm,power\n1000,\"5\n");
            for (int i = 0; i < 500_000; i++) {
                writer.write("2000,50.5\n");
            }
        }
        assertThat(catchThrowableOfType(InputException.class, () -> ExportReader.read(file)).oneLine())
                .contains("line 2: a quote is not closed");
    }

    private static List<Path> shapes() throws IOException {
        try (Stream<Path> files = Files.walk(ExportShapesTest.resource("time-based").getParent())) {
            return files.filter(file -> Files.isRegularFile(file) && !file.endsWith("README.md")).sorted().toList();
        }
    }

    private boolean readOrRefused(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("file.csv"), bytes);
        boolean read = false;
        try {
            Export export = ExportReader.read(file);
            ExportFile look = ExportFile.look(file, Optional.empty());
            Preview.of(look, look, Map.of(), Surface.COMMAND_LINE);
            read = true;
            ExportFile whole = ExportFile.look(file, Optional.empty());
            for (int pull = 1; pull <= whole.pulls(); pull++) {
                MappedExport.channels(whole.pull(pull), ColumnGuess.mapping(whole.sample(), Map.of(), Optional.empty()));
            }
        } catch (InputException refusal) {
            assertThat(refusal.remedy().command()).isNotBlank();
            assertThat(refusal.place().file()).isEqualTo(file.toString());
        }
        try {
            PullTableReader.read(file, new TableOptions(List.of(), Drift.LINEAR, ""));
        } catch (InputException refusal) {
            assertThat(refusal.remedy().command()).isNotBlank();
        }
        return read;
    }

    private InputException refusal(byte[] bytes) throws IOException {
        return refusal(bytes, 0);
    }

    private InputException refusal(byte[] bytes, int cutOff) throws IOException {
        Path file = Files.write(folder.resolve("file.csv"), Arrays.copyOf(bytes, bytes.length - cutOff));
        InputException refusal = catchThrowableOfType(InputException.class, () -> ExportReader.read(file));
        assertThat(refusal).isNotNull();
        return refusal;
    }

    private static String symbols(SplittableRandom random, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(SYMBOLS.charAt(random.nextInt(SYMBOLS.length())));
        }
        return text.toString();
    }
}
