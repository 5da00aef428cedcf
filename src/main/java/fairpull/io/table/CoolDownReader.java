package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads a logged cool-down: a time and a temperature that falls. What cannot be one is refused with the reason. */
public final class CoolDownReader {
    /** No intake air, coolant or oil gets hotter than this; common practice, no source. */
    private static final double HOTTEST_K = Units.CELSIUS.toSi(150);
    /** Ends of a log are averaged over this share of it, so that noise alone does not make it rise. */
    private static final int ENDS = 10;
    /** A rise at the beginning of more than this share of the range is heat still arriving. */
    private static final double STILL_ARRIVING = 0.1;

    private final String file;
    private final RowLines lines;
    private final Samples times;
    private final Samples temperatures;
    private final String column;
    private final Unit unit;

    private CoolDownReader(String file, RowLines lines, Samples times, Samples temperatures, String column, Unit unit) {
        this.file = file;
        this.lines = lines;
        this.times = times;
        this.temperatures = temperatures;
        this.column = column;
        this.unit = unit;
    }

    /**
     * Reads a log.
     *
     * @param file the log
     * @param overrides columns chosen by hand
     * @param fromS readings before this time of the log are left out; empty: all are used
     * @return the cool-down, its first reading at time 0; a log of very many readings averaged in blocks
     * @throws InputException if the file cannot be read, a column is missing or open, time runs backwards, there are too few readings, or
     *     the temperature is none of a car or does not fall
     */
    public static CoolDownLog read(Path file, Map<Quantity, ColumnChoice> overrides, Optional<Double> fromS) {
        Export export = ExportReader.read(file);
        Mapping mapping = ColumnGuess.mapping(export, EnumSet.of(Quantity.TEMPERATURE, Quantity.TIME), overrides, Optional.empty());
        Mapping.Column temperature = column(export, mapping, Quantity.TEMPERATURE);
        column(export, mapping, Quantity.TIME);
        MappedExport.Result mapped = MappedExport.read(export, mapping);
        Channels channels = mapped.channels();
        CoolDownReader reader = new CoolDownReader(export.fileName(), mapped.lines(), channels.find(Quantity.TIME).orElseThrow(),
                channels.find(Quantity.TEMPERATURE).orElseThrow(), name(export, temperature), temperature.unit());
        return reader.checked(fromS.orElse(Double.NEGATIVE_INFINITY));
    }

    private static String name(Export export, Mapping.Column column) {
        return export.columns().stream().filter(found -> found.index() == column.index()).map(ExportColumn::name)
                .filter(name -> !name.isBlank()).findFirst().orElse(column.name());
    }

    private static Mapping.Column column(Export export, Mapping mapping, Quantity quantity) {
        String unit = quantity == Quantity.TIME ? "s" : "C";
        return mapping.columns().stream().filter(column -> column.quantity() == quantity).findFirst()
                .orElseThrow(() -> new InputException(Place.of(export.fileName(), export.dialect().headerLine()),
                        "no column is known as " + quantity.words() + "; the columns are " + String.join(", ",
                                export.columns().stream().map(found -> "“" + found.label() + "”").toList()),
                        new Remedy("name one: --column " + ColumnChoice.id(quantity) + "=\"its header\":" + unit,
                    "in a copy of the file, name the column so that it is known, such as “Intake air (°C)” or “Time (s)”")));
    }

    private CoolDownLog checked(double fromS) {
        refuseTimeRunningBackwards();
        int first = 0;
        while (first < times.size() && times.at(first) < fromS) {
            first++;
        }
        int count = times.size() - first;
        if (count < CoolDownLog.FEWEST_READINGS) {
            throw trouble("the log holds " + count + (count == 1 ? " reading" : " readings") + " and a time constant needs at least "
                    + CoolDownLog.FEWEST_READINGS, Remedy.everywhere("log for longer or more often"));
        }
        double[] seconds = new double[count];
        double[] kelvin = new double[count];
        for (int i = 0; i < count; i++) {
            seconds[i] = times.at(first + i) - times.at(first);
            kelvin[i] = temperatures.at(first + i);
        }
        if (!(seconds[count - 1] > 0)) {
            throw trouble("time stands still", new Remedy("choose the column of time: --column time=NAME:s",
                    "in a copy of the file, keep only the column of time that runs"));
        }
        refuseTemperaturesOfNoCar(kelvin, first);
        refuseRising(kelvin, first);
        return averaged(seconds, kelvin);
    }

    private CoolDownLog averaged(double[] seconds, double[] kelvin) {
        int each = (seconds.length + CoolDownLog.MOST_READINGS - 1) / CoolDownLog.MOST_READINGS;
        int blocks = seconds.length / each;
        double[] times = new double[blocks];
        double[] temperatures = new double[blocks];
        for (int block = 0; block < blocks; block++) {
            times[block] = mean(seconds, block * each, (block + 1) * each) - mean(seconds, 0, each);
            temperatures[block] = mean(kelvin, block * each, (block + 1) * each);
        }
        return new CoolDownLog(Samples.of(times), Samples.of(temperatures), column, each);
    }

    private void refuseTimeRunningBackwards() {
        for (int i = 1; i < times.size(); i++) {
            if (times.at(i) < times.at(i - 1)) {
                throw new InputException(lines.at(file, i), "time runs backwards, from " + seconds(times.at(i - 1)) + " to "
                        + seconds(times.at(i)), "sort the rows by time, or log one cool-down a file");
            }
        }
    }

    private void refuseTemperaturesOfNoCar(double[] kelvin, int skipped) {
        for (int i = 0; i < kelvin.length; i++) {
            if (kelvin[i] > HOTTEST_K) {
                throw new InputException(lines.at(file, skipped + i), "“" + column + "” reads " + degrees(kelvin[i])
                        + ", hotter than air, coolant or oil of a car get",
                        unit.equals(Units.FAHRENHEIT)
                                ? new Remedy("choose another column: --column temperature=NAME:C",
                                "keep the right column in a copy of the file")
                                : new Remedy("if it is in °F, say so: --column temperature=\"" + column + "\":F",
                                "if it is in °F, say so in the name of the column, in a copy of the file"));
            }
        }
    }

    private void refuseRising(double[] kelvin, int skipped) {
        int end = Math.max(1, kelvin.length / ENDS);
        double start = mean(kelvin, 0, end);
        double last = mean(kelvin, kelvin.length - end, kelvin.length);
        int peak = peak(kelvin, end);
        double highest = mean(kelvin, peak, peak + end);
        boolean risesFirst = highest - start > STILL_ARRIVING * (highest - last);
        if (risesFirst && highest - last > (highest - start) / 2) {
            throw trouble("“" + column + "” first rises, to " + degrees(highest) + ": heat is still arriving",
                    new Remedy("begin where it falls: --from " + seconds(times.at(skipped + peak + end / 2)).replace(" ", ""),
                    "in a copy of the file, leave out what stands before it falls"));
        }
        if (risesFirst || !(last < start)) {
            throw trouble("“" + column + "” does not fall, from " + degrees(start) + " to " + degrees(last) + " at the end",
                    Remedy.everywhere("log a cool-down, from right after a pull"));
        }
    }

    /** Where the mean of so many readings is highest. */
    private static int peak(double[] kelvin, int width) {
        int peak = 0;
        double above = 0;
        double highest = 0;
        for (int i = 1; i + width <= kelvin.length; i++) {
            above += kelvin[i + width - 1] - kelvin[i - 1];
            if (above > highest) {
                highest = above;
                peak = i;
            }
        }
        return peak;
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }

    private String degrees(double kelvin) {
        return String.format(Locale.ROOT, "%.1f %s", unit.fromSi(kelvin), unit.symbol());
    }

    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.6g s", seconds).replaceAll("(\\.\\d*?)0+ s", "$1 s").replace(". s", " s");
    }

    private InputException trouble(String problem, Remedy remedy) {
        return new InputException(Place.of(file), problem, remedy);
    }
}
