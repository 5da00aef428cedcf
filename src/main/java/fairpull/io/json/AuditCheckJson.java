package fairpull.io.json;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Found;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.function.BiFunction;

/** The questions put to a publication as JSON: figures by name, in the unit of the finding. */
final class AuditCheckJson {
    private AuditCheckJson() {
    }

    /**
     * A figure of a finding.
     *
     * @param key its name in the file
     * @param told from the figure and the unit of the finding
     */
    private record Figure(String key, BiFunction<Double, Unit, Double> told) {
        static Figure plain(String key) {
            return new Figure(key, (value, unit) -> value);
        }

        static Figure level(String key) {
            return new Figure(key, (value, unit) -> unit.fromSi(value));
        }

        static Figure size(String key) {
            return new Figure(key, (value, unit) -> unit.differenceFromSi(value));
        }

        static Figure speed(String key) {
            return new Figure(key, (value, unit) -> Units.RPM.fromSi(value));
        }
    }

    static void fill(Tree tree, AuditCheck check) {
        List<Figure> figures = figures(check.code());
        tree.text("code", Mapper.word(check.code())).text("state", Mapper.word(check.state()))
                .trees("found", check.found(), (one, found) -> found(one, found, figures));
    }

    private static void found(Tree tree, Found found, List<Figure> figures) {
        tree.text("about", found.about()).text("side", Mapper.word(found.side())).text("unit", found.unit().symbol());
        for (int k = 0; k < figures.size(); k++) {
            tree.number(figures.get(k).key(), figures.get(k).told().apply(found.figures().get(k), found.unit()));
        }
        tree.text("symbols", found.symbols());
    }

    private static List<Figure> figures(AuditCheck.Code code) {
        return switch (code) {
            case FIGURES_IDENTITY -> List.of(Figure.plain("ratio"), Figure.plain("least"), Figure.plain("most"), Figure.speed("speedRpm"));
            case VALUES_AGAINST_FIGURES -> List.of(Figure.level("printed"), Figure.level("ofValues"), Figure.size("allowed"));
            case VALUES_DO_NOT_SCATTER -> List.of(Figure.size("difference"));
            case CURVES_IDENTITY -> List.of(Figure.plain("ratio"), Figure.plain("allowed"), Figure.plain("worstBeyond"),
                    Figure.speed("worstAtRpm"));
            case CURVES_MEET -> List.of(Figure.speed("expectedRpm"), Figure.speed("metRpm"), Figure.speed("allowedRpm"));
            case TEXT_AGAINST_PLOT -> List.of(Figure.level("printed"), Figure.level("shown"), Figure.size("allowed"));
            case CURVE_PLATEAU -> List.of(Figure.plain("points"), Figure.level("value"));
            case CURVE_STRETCH_COPIED -> List.of(Figure.plain("points"));
            case CURVE_IS_MULTIPLE -> List.of(Figure.plain("factor"));
            case GAIN_AT_START_ONLY -> List.of(Figure.plain("gainAtStart"), Figure.plain("gainAfter"), Figure.speed("untilRpm"));
            case PICKED_PULLS -> List.of(Figure.size("adds"), Figure.plain("pullsBefore"), Figure.plain("pullsAfter"));
            case PICKED_SPEED -> List.of(Figure.plain("criticalValue"), Figure.plain("namedBefore"), Figure.speed("fromRpm"),
                    Figure.speed("toRpm"));
            case UNCORRECTED_DAYS -> List.of(Figure.plain("apparentGain"));
            case BAROMETERS -> List.of(Figure.plain("apparentGain"), Figure.plain("elevationM"));
            case SMOOTHING, NO_RETURN, ODDITIES -> List.of();
        };
    }
}
