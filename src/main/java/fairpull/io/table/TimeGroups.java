package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Groups of channels with a time column each: every channel belongs to the nearest time column at its left. They are brought onto the
 * time column of most stamps, on straight lines between their own numbers, and nothing is read beyond these.
 */
final class TimeGroups {
    private final Export table;
    private final Map<ExportColumn, List<ExportColumn>> groups = new LinkedHashMap<>();

    private TimeGroups(Export table) {
        this.table = table;
    }

    /** {@return whether a header speaks of the time of its row} */
    static boolean isTime(String name, String unitText) {
        Optional<Unit> unit = UnitText.find(unitText).filter(found -> !unitText.isBlank());
        ColumnWords words = ColumnWords.of(name);
        return unit.isPresent()
                ? unit.get().quantity() == Quantity.TIME && !words.isElsewhere(Quantity.TIME)
                : words.isTime();
    }

    /** {@return the same table with one time column; as it was where it has no groups} */
    static Export onOneTime(Export table) {
        TimeGroups groups = new TimeGroups(table);
        return groups.find() ? groups.resampled() : table;
    }

    private boolean find() {
        ExportColumn time = null;
        for (ExportColumn column : table.columns()) {
            if (column.isNumeric() && isTime(column.name(), column.unitText())) {
                time = column;
                groups.put(column, new ArrayList<>());
            } else if (time != null) {
                groups.get(time).add(column);
            } else if (column.isNumeric()) {
                return false;
            }
        }
        return groups.size() > 1 && !differsNowhere() && areApart();
    }

    private boolean differsNowhere() {
        return groups.keySet().stream().map(ExportColumn::numbers).distinct().count() == 1;
    }

    /** Time columns are apart if they bear one name, or each that of its channel, or have unequal numbers of stamps. */
    private boolean areApart() {
        boolean oneName = groups.keySet().stream().map(column -> bare(column.name())).distinct().count() == 1;
        boolean unequal = groups.keySet().stream().map(ExportColumn::numberCount).distinct().count() > 1;
        return oneName || unequal || groups.entrySet().stream().allMatch(group -> group.getValue().stream()
                .anyMatch(channel -> !bare(channel.name()).isEmpty() && bare(group.getKey().name()).contains(bare(channel.name()))));
    }

    private static String bare(String name) {
        return String.join(" ", ColumnWords.split(name)).replaceAll("[\\d ]+$", "");
    }

    private Export resampled() {
        ExportColumn base = groups.keySet().stream()
                .reduce((best, other) -> other.numberCount() > best.numberCount() ? other : best).orElseThrow();
        double[] times = series(base, base).times();
        List<ExportColumn> columns = new ArrayList<>();
        List<String> moved = new ArrayList<>();
        groups.forEach((time, channels) -> {
            if (time == base) {
                columns.add(time.with(Samples.of(times)));
            }
            for (ExportColumn channel : channels) {
                columns.add(channel.isNumeric() ? channel.with(Samples.of(series(time, channel).at(times))) : channel);
                if (time != base && channel.isNumeric()) {
                    moved.add("“" + channel.label() + "”");
                }
            }
        });
        String doubt = shortened(moved) + (moved.size() == 1 ? " has" : " have") + " another time column than “" + base.label()
                + "” and " + (moved.size() == 1 ? "is" : "are")
                + " interpolated to its times; nothing is read before the first and after the last time of their own";
        Export whole = table.with(columns, times.length);
        return moved.isEmpty() ? whole : whole.doubting(doubt);
    }

    private static String shortened(List<String> labels) {
        int shown = 6;
        return labels.stream().limit(shown).collect(Collectors.joining(", ")) + (labels.size() > shown ? " and others" : "");
    }

    private Series series(ExportColumn time, ExportColumn channel) {
        Series series = new Series();
        for (int row = 0; row < Math.min(time.numbers().size(), channel.numbers().size()); row++) {
            if (!Double.isNaN(time.numbers().at(row))) {
                series.add(time.numbers().at(row), channel.numbers().at(row));
            }
        }
        if (series.isFalling()) {
            throw new InputException(Place.of(table.fileName(), table.dialect().headerLine(), time.label()),
                    "the time goes back below it, and other channels have a time of their own", "export one pull a file");
        }
        return series;
    }
}
