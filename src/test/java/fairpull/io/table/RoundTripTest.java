package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.pull.DecimalMark;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Any table, written in any dialect that is read, reads back to the same numbers. */
class RoundTripTest {
    private static final int TABLES = 2_000;
    private static final List<Charset> CHARSETS = List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"),
            StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE);
    private static final List<String> LINE_ENDS = List.of("\n", "\r\n", "\r");

    @TempDir
    private Path folder;

    /** How one table is written. */
    private record Hand(Delimiter delimiter, DecimalMark mark, boolean quotes, boolean trailingDelimiter, Charset charset, boolean mark16,
                        boolean preamble, boolean thousands, boolean endsLine) {
        static Hand of(SplittableRandom random) {
            Delimiter delimiter = Delimiter.values()[random.nextInt(3)];
            boolean quotes = random.nextBoolean();
            DecimalMark mark = delimiter == Delimiter.COMMA && !quotes ? DecimalMark.POINT : DecimalMark.values()[random.nextInt(2)];
            boolean groupable = quotes || mark.grouping() != delimiter.symbol();
            return new Hand(delimiter, mark, quotes, random.nextInt(4) == 0, CHARSETS.get(random.nextInt(4)), random.nextBoolean(),
                    random.nextInt(4) == 0, groupable && random.nextInt(4) == 0, random.nextBoolean());
        }

        boolean hasMark() {
            return mark16 && !charset.name().startsWith("windows");
        }
    }

    @Test
    void whatIsWrittenIsRead() throws IOException {
        SplittableRandom random = new SplittableRandom(42);
        for (int table = 0; table < TABLES; table++) {
            double[][] numbers = numbers(random, 2 + random.nextInt(6), 1 + random.nextInt(30));
            Hand hand = Hand.of(random);
            byte[] bytes = bytes(write(numbers, hand, random), hand);
            Export export = ExportReader.read(Files.write(folder.resolve("table.csv"), bytes));

            assertThat(export.dialect().delimiter()).as("%s", hand).isEqualTo(hand.delimiter());
            assertThat(export.dialect().byteOrderMark()).as("%s", hand).isEqualTo(hand.hasMark());
            assertThat(export.rows()).as("%s", hand).isEqualTo(numbers.length);
            for (int column = 0; column < numbers[0].length; column++) {
                ExportColumn read = export.columns().get(column);
                assertThat(read.header()).isEqualTo(header(column));
                for (int row = 0; row < numbers.length && read.isNumeric(); row++) {
                    assertThat(read.numbers().at(row)).as("table %d row %d column %d of %s", table, row, column, hand)
                            .isEqualTo(Double.valueOf(numbers[row][column]));
                }
            }
        }
    }

    private static double[][] numbers(SplittableRandom random, int columns, int rows) {
        double[][] numbers = new double[rows][columns];
        for (double[] row : numbers) {
            for (int column = 0; column < columns; column++) {
                row[column] = switch (column == 0 ? 0 : random.nextInt(5)) {
                    case 0 -> random.nextInt(-40_000, 40_000) + 0.25; // two decimals settle the decimal mark
                    case 1 -> random.nextInt(-10_000, 10_000);
                    case 2 -> random.nextInt(1_000_000) / 1000.0;
                    case 3 -> random.nextDouble() * Math.pow(10, random.nextInt(-8, 9));
                    default -> Double.NaN;
                };
            }
        }
        return numbers;
    }

    private static String write(double[][] numbers, Hand hand, SplittableRandom random) {
        StringBuilder text = new StringBuilder(hand.preamble() ? "Invented, not measured\nRun 3\n" : "");
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < numbers[0].length; column++) {
            cells.add(header(column));
        }
        line(text, cells, hand, LINE_ENDS.get(random.nextInt(3)));
        for (int row = 0; row < numbers.length; row++) {
            cells.clear();
            for (double number : numbers[row]) {
                cells.add(Double.isNaN(number) ? "" : cell(number, hand));
            }
            boolean last = row == numbers.length - 1;
            line(text, cells, hand, last && !hand.endsLine() ? "" : LINE_ENDS.get(random.nextInt(3)));
        }
        return text.toString();
    }

    private static void line(StringBuilder text, List<String> cells, Hand hand, String end) {
        String quote = hand.quotes() ? "\"" : "";
        for (int i = 0; i < cells.size(); i++) {
            text.append(i == 0 ? "" : String.valueOf(hand.delimiter().symbol())).append(quote).append(cells.get(i)).append(quote);
        }
        text.append(hand.trailingDelimiter() ? String.valueOf(hand.delimiter().symbol()) : "").append(end);
    }

    private static String cell(double number, Hand hand) {
        String plain = Double.toString(number);
        int point = plain.indexOf('.');
        String whole = plain.substring(0, point);
        boolean grouped = hand.thousands() && whole.replace("-", "").length() > 3 && plain.indexOf('E') < 0;
        String shown = grouped
                ? whole.substring(0, whole.length() - 3) + hand.mark().grouping() + whole.substring(whole.length() - 3)
                : whole;
        return shown.length() > 8 || whole.replace("-", "").length() > 6
                ? plain.replace('.', hand.mark().symbol())
                : shown + hand.mark().symbol() + plain.substring(point + 1);
    }

    private static String header(int column) {
        return column == 0 ? "Drift (µs)" : "Channel " + column + " (°)";
    }

    private static byte[] bytes(String text, Hand hand) {
        return ((hand.hasMark() ? "\ufeff" : "") + text).getBytes(hand.charset());
    }
}
