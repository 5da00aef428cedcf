package fairpull.bench;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvReader;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.io.table.ExportFile;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * 100 MB of numbers in ten columns: FastCSV alone with {@code Double.parseDouble} of every cell, against looking at the file as an import
 * and its preview do, and against reading four columns of it as judging does. The target is at most 1.3 times the first. The heap is
 * held at 64 MB for looking, whose memory must not grow with the file.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(1)
public class ReaderBenchmark {
    private static final long BYTES = 100_000_000;
    private static final int COLUMNS = 10;

    private Path file;

    /** Writes the file. */
    @Setup
    public void write() throws IOException {
        file = Files.createTempFile("reader", ".csv");
        SplittableRandom random = new SplittableRandom(1);
        try (BufferedWriter writer = Files.newBufferedWriter(file)) {
            writer.write("Time (s),Engine speed (rpm),Power (kW),Torque (Nm),a,b,c,d,e,f\n");
            long written = 0;
            for (int row = 0; written < BYTES; row++) {
                StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%.3f", row / 1000.0));
                for (int column = 1; column < COLUMNS; column++) {
                    line.append(',').append(random.nextInt(1, 10_000_000) / 1000.0);
                }
                writer.write(line.append('\n').toString());
                written += line.length();
            }
        }
    }

    /** Deletes it. */
    @TearDown
    public void delete() throws IOException {
        Files.delete(file);
    }

    /** The tokeniser alone. */
    @Benchmark
    public double fastCsvAlone() throws IOException {
        double sum = 0;
        Sums sums = new Sums();
        try (CsvReader<Double> reader = CsvReader.builder().build(sums, file, StandardCharsets.UTF_8)) {
            for (double row : reader) {
                sum += row;
            }
        }
        return sum;
    }

    /** What an import and its preview look at: every cell. */
    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx64m")
    public ExportFile look() {
        return ExportFile.look(file, Optional.empty());
    }

    /** What judging reads. */
    @Benchmark
    public ExportFile fourColumns() {
        return ExportFile.read(file, new Mapping("", List.of(new Mapping.Column(0, "Time (s)", Quantity.TIME, Units.SECOND),
                new Mapping.Column(1, "Engine speed (rpm)", Quantity.ENGINE_SPEED, Units.RPM),
                new Mapping.Column(2, "Power (kW)", Quantity.POWER, Units.KILOWATT),
                new Mapping.Column(3, "Torque (Nm)", Quantity.TORQUE, Units.NEWTON_METRE)), Optional.empty(), Optional.empty()));
    }

    /** Parses every cell of a row; the header has no number. */
    private static final class Sums extends AbstractBaseCsvCallbackHandler<Double> {
        private boolean header = true;
        private double sum;

        @Override
        protected void handleBegin(long startingLine) {
            sum = 0;
            header = startingLine == 1;
        }

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            sum += header ? 0 : Double.parseDouble(new String(buffer, offset, length));
        }

        @Override
        protected Double buildRecord() {
            return sum;
        }
    }
}
