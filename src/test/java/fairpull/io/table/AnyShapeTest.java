package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.io.table.ShapeWriter.Shape;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pulls written in any shape read back to the same numbers, pull by pull. */
class AnyShapeTest {
    private static final int SOME = 5_000;
    private static final int MANY = 100_000;

    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenIsRead() throws IOException {
        writeAndRead(SOME, 3);
    }

    @Test
    @Tag("slow")
    void whatIsWrittenIsReadAHundredThousandTimes() throws IOException {
        writeAndRead(MANY, 4);
    }

    private void writeAndRead(int tables, long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        for (int table = 0; table < tables; table++) {
            Shape shape = Shape.values()[table % Shape.values().length];
            List<double[][]> pulls = pulls(shape, random);
            String text = ShapeWriter.write(shape, pulls, random);
            ExportFile file = ExportFile.look(Files.write(folder.resolve("table.csv"), text.getBytes(StandardCharsets.UTF_8)),
                    Optional.empty());

            assertThat(file.pulls()).as("%s %d:%n%s", shape, table, text).isEqualTo(pulls.size());
            Mapping mapping = ColumnGuess.mapping(file.sample(), Map.of(), Optional.empty());
            for (int pull = 0; pull < pulls.size(); pull++) {
                Channels channels = MappedExport.channels(file.pull(pull + 1), mapping);
                double[][] complete = complete(shape, pulls.get(pull));
                List<Unit> units = List.of(Units.SECOND, Units.RPM, Units.KILOWATT);
                for (int column = 0; column < units.size(); column++) {
                    int at = column;
                    Unit unit = units.get(column);
                    Samples expected = Samples.of(Arrays.stream(complete).mapToDouble(row -> unit.toSi(row[at])).toArray());
                    assertThat(channels.find(unit.quantity())).as("%s %d, %s:%n%s", shape, table, unit.quantity(), text).contains(expected);
                }
            }
        }
    }

    private static List<double[][]> pulls(Shape shape, SplittableRandom random) {
        List<double[][]> pulls = new ArrayList<>();
        int count = shape.holdsSeveral() ? 2 + random.nextInt(3) : 1;
        for (int pull = 0; pull < count; pull++) {
            double[][] rows = new double[3 + random.nextInt(10)][];
            long time = shape == Shape.CLOCK ? 8_639_000 : 0;
            for (int row = 0; row < rows.length; row++) {
                boolean blank = (shape == Shape.LOGGER || shape == Shape.FIXED_WIDTH) && row > 0 && random.nextInt(4) == 0;
                rows[row] = new double[] {time / 100.0, random.nextInt(100_000, 900_000) / 100.0,
                    blank ? Double.NaN : random.nextInt(100, 30_000) / 100.0};
                time += 1 + random.nextInt(300);
            }
            pulls.add(rows);
        }
        return pulls;
    }

    /** Rows with a blank are left out; of power at every second time, the rows between lie on straight lines. */
    private static double[][] complete(Shape shape, double[][] rows) {
        if (shape != Shape.OWN_TIMES) {
            return Arrays.stream(rows).filter(row -> !Double.isNaN(row[2])).toArray(double[][]::new);
        }
        double[][] complete = Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
        for (int row = 1; row < rows.length - 1; row += 2) {
            double share = (rows[row][0] - rows[row - 1][0]) / (rows[row + 1][0] - rows[row - 1][0]);
            complete[row][2] = rows[row - 1][2] + share * (rows[row + 1][2] - rows[row - 1][2]);
        }
        return rows.length % 2 == 1 ? complete : Arrays.copyOf(complete, rows.length - 1);
    }
}
