package fairpull.io.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Writes pulls as the shapes of table that are read, in a hand drawn by lot; every number has two decimals, which settles their mark. */
final class ShapeWriter {
    /** What a shape writes; all pulls have time, engine speed and power, in this order. */
    enum Shape {
        WIDE, LOGGER, LONG, LONG_NUMBERED, OWN_TIMES, NAMED, GROUPED, REPEATED, OF_A_PLAN, FIXED_WIDTH, WORDS, HEADER_AGAIN, BLANK_LINES,
        NUMBERED, TIME_AGAIN, CLOCK;

        /** {@return whether it can hold several pulls} */
        boolean holdsSeveral() {
            return !List.of(WIDE, LOGGER, LONG, OWN_TIMES, FIXED_WIDTH, WORDS, CLOCK).contains(this);
        }
    }

    private static final List<String> TITLES = List.of("Time (s)", "Engine speed (rpm)", "Power (kW)");
    private static final List<String> LINE_ENDS = List.of("\n", "\r\n", "\r");

    private final Shape shape;
    private final SplittableRandom random;
    private final char delimiter;
    private final char mark;
    private final boolean quotes;
    private final String pad;
    private final String end;
    private final StringBuilder text = new StringBuilder();

    private ShapeWriter(Shape shape, SplittableRandom random) {
        this.shape = shape;
        this.random = random;
        this.delimiter = ";\t,".charAt(random.nextInt(3));
        this.quotes = random.nextInt(4) == 0;
        this.mark = delimiter == ',' && !quotes ? '.' : ".,".charAt(random.nextInt(2));
        this.pad = random.nextInt(3) == 0 ? " ".repeat(1 + random.nextInt(2)) : "";
        this.end = LINE_ENDS.get(random.nextInt(3));
    }

    /** {@return pulls as text; NaN is written as a blank} */
    static String write(Shape shape, List<double[][]> pulls, SplittableRandom random) {
        return new ShapeWriter(shape, random).write(pulls);
    }

    private String write(List<double[][]> pulls) {
        switch (shape) {
            case WIDE, LOGGER -> wide(pulls.get(0));
            case CLOCK -> clock(pulls.get(0));
            case LONG, LONG_NUMBERED -> inLongForm(pulls);
            case OWN_TIMES -> ownTimes(pulls.get(0));
            case NAMED, GROUPED, REPEATED, OF_A_PLAN -> beside(pulls);
            case FIXED_WIDTH -> fixedWidth(pulls.get(0));
            case WORDS -> words(pulls.get(0));
            default -> stacked(pulls);
        }
        return text.toString();
    }

    private void wide(double[][] pull) {
        if (random.nextBoolean()) {
            line(List.of("Invented"));
        }
        List<String> titles = new ArrayList<>(TITLES);
        if (shape == Shape.LOGGER) {
            titles.addAll(List.of("Lambda ()", "Gear ()"));
        }
        line(titles);
        for (double[] row : pull) {
            List<String> cells = cells(row);
            if (shape == Shape.LOGGER) {
                cells.addAll(List.of(random.nextBoolean() ? "" : number(0.9), ""));
            }
            line(cells);
        }
    }

    private void clock(double[][] pull) {
        line(List.of("Time", TITLES.get(1), TITLES.get(2)));
        for (double[] row : pull) {
            long hundredths = Math.round(row[0] * 100) % 8_640_000;
            List<String> cells = cells(row);
            cells.set(0, String.format(Locale.ROOT, "%02d:%02d:%02d.%02d", hundredths / 360_000, hundredths / 6000 % 60, hundredths / 100 % 60,
                    hundredths % 100));
            line(cells);
        }
    }

    private void inLongForm(List<double[][]> pulls) {
        boolean numbered = shape == Shape.LONG_NUMBERED;
        List<String> header = new ArrayList<>(numbered ? List.of("Run no") : List.of());
        header.addAll(List.of("Time (s)", "channel", "value", "unit"));
        line(header);
        for (int pull = 0; pull < pulls.size(); pull++) {
            for (double[] row : pulls.get(pull)) {
                for (int channel = 1; channel < row.length; channel++) {
                    List<String> cells = new ArrayList<>(numbered ? List.of(String.valueOf(pull + 1)) : List.of());
                    cells.addAll(List.of(number(row[0]), channel == 1 ? "Engine speed" : "Power", number(row[channel]),
                            channel == 1 ? "rpm" : "kW"));
                    line(cells);
                }
            }
        }
    }

    /** Power comes at every second of the times. */
    private void ownTimes(double[][] pull) {
        line(List.of(TITLES.get(0), TITLES.get(1), TITLES.get(0), TITLES.get(2)));
        for (int row = 0; row < pull.length; row++) {
            boolean has = 2 * row < pull.length;
            line(List.of(number(pull[row][0]), number(pull[row][1]), has ? number(pull[2 * row][0]) : "",
                    has ? number(pull[2 * row][2]) : ""));
        }
    }

    private void beside(List<double[][]> pulls) {
        List<String> groups = new ArrayList<>();
        List<String> titles = new ArrayList<>();
        for (int pull = 1; pull <= pulls.size(); pull++) {
            groups.addAll(List.of("Run " + pull, "", ""));
            for (String title : TITLES) {
                titles.add(switch (shape) {
                    case NAMED -> "pull " + pull + " " + title;
                    case OF_A_PLAN -> "A1-" + pull + " " + title;
                    default -> title;
                });
            }
        }
        if (shape == Shape.GROUPED) {
            line(groups);
        }
        line(titles);
        int rows = pulls.stream().mapToInt(pull -> pull.length).max().orElseThrow();
        for (int row = 0; row < rows; row++) {
            List<String> cells = new ArrayList<>();
            for (double[][] pull : pulls) {
                cells.addAll(row < pull.length ? cells(pull[row]) : List.of("", "", ""));
            }
            line(cells);
        }
    }

    private void stacked(List<double[][]> pulls) {
        for (int pull = 0; pull < pulls.size(); pull++) {
            List<String> number = shape == Shape.NUMBERED ? List.of(String.valueOf(pull + 1)) : List.of();
            if (pull == 0 || shape == Shape.HEADER_AGAIN) {
                List<String> header = new ArrayList<>(shape == Shape.NUMBERED ? List.of("Pull") : List.of());
                header.addAll(TITLES);
                line(header);
            } else if (shape == Shape.BLANK_LINES) {
                text.append(end);
            }
            for (double[] row : pulls.get(pull)) {
                List<String> cells = new ArrayList<>(number);
                cells.addAll(cells(row));
                line(cells);
            }
        }
    }

    private void fixedWidth(double[][] pull) {
        text.append("Power run, invented: \"nobody\" was at the wheel,").append(end).append("all of it by lot.").append(end).append(end);
        boolean left = random.nextBoolean();
        int width = 20 + random.nextInt(4);
        columns(TITLES, left, width);
        for (double[] row : pull) {
            columns(cells(row), left, width);
        }
    }

    private void columns(List<String> cells, boolean left, int width) {
        cells.forEach(cell -> text.append(String.format(Locale.ROOT, "%" + (left ? "-" : "") + width + "s", cell)));
        text.append(end);
    }

    private void words(double[][] pull) {
        text.append("Time[s] rpm Power[kW]").append(end);
        for (double[] row : pull) {
            text.append(String.join(" ", cells(row))).append(end);
        }
    }

    private List<String> cells(double[] row) {
        List<String> cells = new ArrayList<>();
        for (double number : row) {
            cells.add(Double.isNaN(number) ? "" : number(number));
        }
        return cells;
    }

    private String number(double number) {
        return String.format(Locale.ROOT, "%.2f", number).replace('.', mark);
    }

    private void line(List<String> cells) {
        String quote = quotes ? "\"" : "";
        String between = pad + delimiter + pad;
        text.append(String.join(delimiter == '\t' ? "\t" : between, cells.stream().map(cell -> quote + cell + quote).toList())).append(end);
    }
}
