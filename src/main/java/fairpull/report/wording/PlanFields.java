package fairpull.report.wording;

import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Every field of a plan in words: its place in the file, what it is called, and in what its value is read. */
final class PlanFields {
    /** How the value of a field is read by people. */
    enum Kind {
        /** A name, a remark, a time of day: as it stands. */
        TEXT,
        /** One of some words joined by hyphens. */
        WORD,
        /** A standard of correction. */
        STANDARD,
        /** A whole number, or degrees of freedom. */
        COUNT,
        SHARE,
        YES_NO,
        /** A level, or a difference, of the deciding measure. */
        LEVEL,
        GAIN,
        /** A gain of the measure that the claim names. */
        CLAIMED,
        /** A speed of the measure of elapsed time. */
        TIMED_SPEED,
        RPM,
        RPM_PER_S,
        SECONDS,
        MINUTES,
        KILOGRAMS,
        NEWTONS,
        NEWTONS_AT_SPEED,
        NEWTONS_AT_SPEED_SQUARED,
        KILOPASCAL,
        /** A limit of a gate, or how far from the reference it lets. */
        GATE,
        GATE_WIDTH,
        /** The uncertainty of a sensor, a difference in what it reads. */
        SENSOR
    }

    /**
     * A field at its place.
     *
     * @param words what it is called there, its positions counted from 1
     * @param kind how its value is read
     * @param position the first position in its place, counted from 0; −1 where it has none
     */
    record Field(String words, Kind kind, int position) {
    }

    private record Row(Pattern place, String words, Kind kind) {
    }

    private static final List<Row> ROWS = new ArrayList<>();

    static {
        add("schemaVersion", "version of the format", Kind.COUNT);
        add("title", "title of the test", Kind.TEXT);
        add("remark", "remark on the test", Kind.TEXT);
        question();
        rig();
        sequence();
        add("analysis.drift", "drift modelled", Kind.WORD);
        add("analysis.covariates.#", "condition $1 whose slope is taken out", Kind.WORD);
        add("gates.#.condition", "gate $1, what is read", Kind.WORD);
        add("gates.#.limit.kind", "gate $1, kind of limit", Kind.WORD);
        add("gates.#.limit.lowSi", "gate $1, lowest", Kind.GATE);
        add("gates.#.limit.highSi", "gate $1, highest", Kind.GATE);
        add("gates.#.limit.toleranceSi", "gate $1, furthest from the reference", Kind.GATE_WIDTH);
        add("checklist.#", "point $1 of the checklist", Kind.TEXT);
        add("looks.spending", "how looks share the error rate", Kind.WORD);
        add("looks.afterInstalls.#", "installs before look $1", Kind.COUNT);
        add("curve.bandwidthRadPerS", "bandwidth of curves", Kind.RPM);
        add("curve.grid.fromRadPerS", "lowest speed at which curves are compared", Kind.RPM);
        add("curve.grid.toRadPerS", "highest speed at which curves are compared", Kind.RPM);
        add("curve.grid.stepRadPerS", "step of the speeds at which curves are compared", Kind.RPM);
        add("curve.scored.tipInRadPerS", "speed not scored after full throttle", Kind.RPM);
        add("curve.scored.tipInS", "time not scored after full throttle", Kind.SECONDS);
        add("curve.scored.liftOffRadPerS", "speed not scored before lift-off", Kind.RPM);
        add("curve.scored.liftOffS", "time not scored before lift-off", Kind.SECONDS);
    }

    private PlanFields() {
    }

    /** {@return the field at a place such as {@code gates.0.limit.toleranceSi}; empty where a plan has none there} */
    static Optional<Field> at(String place) {
        for (Row row : ROWS) {
            Matcher found = row.place().matcher(place);
            if (found.matches()) {
                String words = row.words();
                for (int group = 1; group <= found.groupCount(); group++) {
                    words = words.replace("$" + group, String.valueOf(Integer.parseInt(found.group(group)) + 1));
                }
                return Optional.of(new Field(words, row.kind(), found.groupCount() == 0 ? -1 : Integer.parseInt(found.group(1))));
            }
        }
        return Optional.empty();
    }

    private static void question() {
        add("question.partA", "part A", Kind.TEXT);
        add("question.partB", "part B", Kind.TEXT);
        measure("question.deciding", "deciding measure");
        measure("question.further.#", "further measure $1");
        add("question.expectedLevelSi", "expected level", Kind.LEVEL);
        add("question.worthwhileGainSi", "worthwhile gain", Kind.GAIN);
        add("question.sides", "sides of the question", Kind.WORD);
        add("question.errorRate", "error rate", Kind.SHARE);
        add("question.powerWanted", "chance wanted of finding the worthwhile gain", Kind.SHARE);
        add("question.claims.#.words", "claim $1", Kind.TEXT);
        add("question.claims.#.measure", "measure of claim $1", Kind.TEXT);
        add("question.claims.#.atLeastSi", "gain of claim $1", Kind.CLAIMED);
        add("question.claims.#.speedRadPerS", "engine speed of claim $1", Kind.RPM);
    }

    private static void measure(String place, String words) {
        add(place + ".name", words + ", its name", Kind.TEXT);
        add(place + ".unit", words + ", its unit", Kind.TEXT);
        add(place + ".correction", words + ", its correction", Kind.STANDARD);
        add(place + ".better", words + ", what is better", Kind.WORD);
        add(place + ".definition.kind", words + ", its kind", Kind.WORD);
        add(place + ".definition.quantity", words + ", its quantity", Kind.WORD);
        add(place + ".definition.lowRadPerS", words + ", lower end of its band", Kind.RPM);
        add(place + ".definition.highRadPerS", words + ", upper end of its band", Kind.RPM);
        add(place + ".definition.speedRadPerS", words + ", its engine speed", Kind.RPM);
        add(place + ".definition.speed", words + ", the speed that is timed", Kind.WORD);
        add(place + ".definition.fromSi", words + ", timed from", Kind.TIMED_SPEED);
        add(place + ".definition.toSi", words + ", timed to", Kind.TIMED_SPEED);
        add(place + ".definition.of", words + ", what responds", Kind.WORD);
        add(place + ".definition.share", words + ", share that is reached", Kind.SHARE);
    }

    private static void rig() {
        add("rig.name", "rig", Kind.TEXT);
        add("rig.kind", "kind of rig", Kind.WORD);
        add("rig.gear", "gear", Kind.TEXT);
        add("rig.sweepRateRadPerS2", "sweep rate", Kind.RPM_PER_S);
        add("rig.tyrePressurePa", "tyre pressure", Kind.KILOPASCAL);
        add("rig.sensors.#.name", "sensor $1", Kind.TEXT);
        add("rig.sensors.#.quantity", "sensor $1, what it reads", Kind.WORD);
        add("rig.sensors.#.uncertaintySi", "sensor $1, its uncertainty", Kind.SENSOR);
        scatter("rig.pullScatter", "scatter of pulls");
        scatter("rig.refitScatter", "scatter of refits");
        add("rig.movingMass.massKg", "mass that a pull accelerates", Kind.KILOGRAMS);
        add("rig.movingMass.massUncertaintyKg", "uncertainty of that mass", Kind.KILOGRAMS);
        add("rig.movingMass.windowS", "time over which acceleration is smoothed", Kind.SECONDS);
        String coastDown = "rig.movingMass.coastDown.";
        add(coastDown + "f0N", "coast-down force at rest", Kind.NEWTONS);
        add(coastDown + "f1NsPerM", "coast-down force that grows with speed", Kind.NEWTONS_AT_SPEED);
        add(coastDown + "f2Ns2PerM2", "coast-down force that grows with speed squared", Kind.NEWTONS_AT_SPEED_SQUARED);
        add(coastDown + "uncertaintyF0N", "uncertainty of the coast-down force at rest", Kind.NEWTONS);
        add(coastDown + "uncertaintyF1NsPerM", "uncertainty of the force that grows with speed", Kind.NEWTONS_AT_SPEED);
        add(coastDown + "uncertaintyF2Ns2PerM2", "uncertainty of the force that grows with speed squared", Kind.NEWTONS_AT_SPEED_SQUARED);
    }

    private static void scatter(String place, String words) {
        add(place + ".standardDeviationSi", words, Kind.GAIN);
        add(place + ".degreesOfFreedom", words + ", its degrees of freedom", Kind.COUNT);
        add(place + ".origin", words + ", where it is from", Kind.WORD);
    }

    private static void sequence() {
        String install = "sequence.sessions.#.installs.#.";
        add("sequence.sessions.#.name", "name of session $1", Kind.TEXT);
        add(install + "label", "session $1, install $2, its label", Kind.TEXT);
        add(install + "part", "session $1, install $2, its part", Kind.TEXT);
        add(install + "countedPulls", "session $1, install $2, counted pulls", Kind.COUNT);
        add(install + "warmUpPulls", "session $1, install $2, warm-up pulls", Kind.COUNT);
        add(install + "unstrapped", "session $1, install $2, car unstrapped", Kind.YES_NO);
        add("sequence.sessions.#.hours.start", "session $1, start of day", Kind.TEXT);
        add("sequence.sessions.#.hours.end", "session $1, end of day", Kind.TEXT);
        add("sequence.sessions.#.hours.breaks.#.start", "session $1, break $2, its start", Kind.TEXT);
        add("sequence.sessions.#.hours.breaks.#.lengthS", "session $1, break $2, its length", Kind.MINUTES);
        add("sequence.origin", "how the order came about", Kind.WORD);
        add("sequence.seed", "seed of the draw", Kind.COUNT);
        add("sequence.pullIntervalS", "time from pull to pull", Kind.MINUTES);
        add("sequence.swapS", "time that a swap adds", Kind.MINUTES);
        add("sequence.setUpS", "time before the first pull of a session", Kind.MINUTES);
    }

    private static void add(String place, String words, Kind kind) {
        ROWS.add(new Row(Pattern.compile(place.replace(".", "\\.").replace("#", "(\\d{1,4})")), words, kind));
    }

    /** {@return the unit in which a kind is printed, of those that need nothing else of the plan} */
    static Optional<String> printed(Kind kind, double si) {
        return Optional.ofNullable(switch (kind) {
            case RPM -> Numbers.given(Math.round(Units.RPM.fromSi(si) * 10) / 10.0, Units.RPM.symbol());
            case RPM_PER_S -> Numbers.given(Units.RPM.fromSi(si), "rpm/s");
            case SECONDS -> Numbers.given(si, "s");
            case MINUTES -> Numbers.given(Units.MINUTE.fromSi(si), Units.MINUTE.symbol());
            case KILOGRAMS -> Numbers.given(si, "kg");
            case NEWTONS -> Numbers.given(si, "N");
            case NEWTONS_AT_SPEED -> Numbers.given(si, "N/(m/s)");
            case NEWTONS_AT_SPEED_SQUARED -> Numbers.given(si, "N/(m/s)²");
            case KILOPASCAL -> Numbers.given(Units.KILOPASCAL.fromSi(si), Units.KILOPASCAL.symbol());
            case SHARE -> Numbers.percent(si);
            default -> null;
        });
    }
}
