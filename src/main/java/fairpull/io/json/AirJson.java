package fairpull.io.json;

import fairpull.domain.air.AirFigures;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.AmbientWindow.Ranges;
import fairpull.domain.air.Corrected;
import fairpull.domain.air.FactorUncertainty;
import fairpull.domain.air.Humidity;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A correction, as JSON. */
public final class AirJson {
    private AirJson() {
    }

    /**
     * {@return the answer as a document}
     *
     * @param corrected the factor and what belongs to it
     * @param warnings the sentences of its notices
     * @param value a value in hand
     * @param window the ambient window, where it was asked for
     * @param guessed whether an uncertainty is a starting guess
     */
    public static String document(Corrected corrected, List<String> warnings, Optional<Amount> value, Optional<AmbientWindow> window,
                                  boolean guessed) {
        AirFigures air = corrected.air();
        Tree tree = Tree.empty()
                .text("standard", corrected.standard().correction().id())
                .number("factor", corrected.factor())
                .number("vapourPressureHPa", air.state().vapourPressurePa() / 100)
                .number("dryPressureHPa", air.state().dryPressurePa() / 100)
                .number("airDensityKgM3", air.densityKgM3())
                .number("densityAltitudeM", air.densityAltitudeM())
                .texts("warnings", warnings)
                .number("stationPressureHPa", air.state().pressurePa() / 100)
                .number("relativeHumidity", air.relativeHumidity())
                .number("dewPointC", Units.CELSIUS.fromSi(air.dewPointK()))
                .number("pressureAltitudeM", air.pressureAltitudeM())
                .tree("uncertainty", uncertainty(corrected.uncertainty(), guessed));
        corrected.from().ifPresent(undone -> tree.tree("from", Tree.empty().text("standard", undone.standard().correction().id())
                .number("factor", undone.factor())).number("multiplier", corrected.multiplier()));
        value.ifPresent(amount -> tree.tree("power", power(corrected, amount)));
        window.ifPresent(answer -> tree.tree("window", window(answer)));
        return tree.document();
    }

    private static Tree power(Corrected corrected, Amount value) {
        return Tree.empty().text("unit", value.unit().symbol()).number("given", value.value())
                .number("observed", value.value() / corrected.from().map(Corrected.Undone::factor).orElse(1.0))
                .number("corrected", value.value() * corrected.multiplier());
    }

    private static Tree uncertainty(FactorUncertainty uncertainty, boolean guessed) {
        return Tree.empty()
                .number("temperature", uncertainty.temperature())
                .number("pressure", uncertainty.pressure())
                .number("humidity", uncertainty.humidity())
                .number("single", uncertainty.single())
                .number("sameSession", uncertainty.sameSession())
                .number("acrossDays", uncertainty.acrossDays())
                .number("simulatedSingle", uncertainty.simulatedSingle())
                .number("simulatedSameSession", uncertainty.simulatedSameSession())
                .flag("startingGuess", guessed);
    }

    private static Tree window(AmbientWindow window) {
        Tree tree = Tree.empty()
                .flag("go", window.go())
                .texts("obstacles", window.obstacles().stream().map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-')).toList())
                .number("worthwhileGain", window.question().worthwhileGain())
                .number("share", window.question().share())
                .number("modelErrorShare", window.question().modelError())
                .number("allowedError", window.allowedError())
                .number("sensorError", window.sensorError())
                .number("modelError", window.modelError());
        ranges(tree, window.ranges(), window.question().now().humidity());
        window.change().ifPresentOrElse(change -> tree.tree("largestChange", ranges(Tree.empty().number("factor", change.factor()),
                change.ranges(), window.question().start().humidity())), () -> tree.nothing("largestChange"));
        return tree.number("changeSoFar", window.changeSoFar().orElse(Double.NaN))
                .trees("pressureByAir", window.rows(), (element, row) -> {
                    element.number("temperatureC", Math.round(Units.CELSIUS.fromSi(row.temperatureK())))
                            .number("relativeHumidity", row.humidity());
                    range(element, "pressureHPa", row.pressurePa(), Units.HECTOPASCAL);
                });
    }

    private static Tree ranges(Tree tree, Ranges ranges, Humidity read) {
        range(tree, "temperatureC", ranges.temperatureK(), Units.CELSIUS);
        range(tree, "pressureHPa", ranges.pressurePa(), Units.HECTOPASCAL);
        boolean relative = read instanceof Humidity.Relative || read instanceof Humidity.NotRead;
        range(tree, relative ? "relativeHumidity" : read instanceof Humidity.DewPoint ? "dewPointC" : "wetBulbC", ranges.humidity(),
                relative ? Units.ONE : Units.CELSIUS);
        return tree;
    }

    private static void range(Tree tree, String key, Optional<Range> range, Unit unit) {
        range.ifPresentOrElse(ends -> tree.tree(key, Tree.empty().number("low", unit.fromSi(ends.low()))
                .number("high", unit.fromSi(ends.high()))), () -> tree.nothing(key));
    }
}
