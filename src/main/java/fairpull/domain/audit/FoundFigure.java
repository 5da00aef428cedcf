package fairpull.domain.audit;

import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;

/** The figures that findings of an audit may have: what each is called in files, and in what it is told. */
public enum FoundFigure {
    /** Power ÷ (torque × engine speed). */
    RATIO("ratio", Told.AS_IT_IS),
    /** The least such ratio that rounding allows. */
    LEAST_RATIO("least", Told.AS_IT_IS),
    /** The most that rounding allows. */
    MOST_RATIO("most", Told.AS_IT_IS),
    /** How far reading allows such a ratio to be off. */
    RATIO_ALLOWED("allowed", Told.AS_IT_IS),
    /** The worst deviation of such a ratio beyond that. */
    WORST_BEYOND("worstBeyond", Told.AS_IT_IS),
    /** Its engine speed. */
    WORST_AT("worstAtRpm", Told.SPEED),
    /** The engine speed of a pair of figures. */
    SPEED("speedRpm", Told.SPEED),
    /** A figure as it is printed. */
    PRINTED("printed", Told.LEVEL),
    /** What the values behind it come to. */
    OF_VALUES("ofValues", Told.LEVEL),
    /** What a curve shows in its place. */
    SHOWN("shown", Told.LEVEL),
    /** How far rounding and reading allow these to be apart. */
    ALLOWED("allowed", Told.DIFFERENCE),
    /** By how much all values after differ from those before. */
    DIFFERENCE("difference", Told.DIFFERENCE),
    /** Where the numbers of power and torque must meet by their units. */
    EXPECTED_SPEED("expectedRpm", Told.SPEED),
    /** Where they do; NaN for nowhere. */
    MET_SPEED("metRpm", Told.SPEED),
    /** How far reading allows these speeds to be apart. */
    SPEED_ALLOWED("allowedRpm", Told.SPEED),
    /** How many points: in a row, or looked at. */
    POINTS("points", Told.AS_IT_IS),
    /** How many points were published. */
    PUBLISHED_POINTS("publishedPoints", Told.AS_IT_IS),
    /** The value of these points. */
    VALUE("value", Told.LEVEL),
    /** The factor between two curves. */
    FACTOR("factor", Told.AS_IT_IS),
    /** Mean relative gain in the first part of a sweep. */
    GAIN_AT_START("gainAtStart", Told.AS_IT_IS),
    /** Mean relative gain after it. */
    GAIN_AFTER("gainAfter", Told.AS_IT_IS),
    /** The engine speed between both parts. */
    UNTIL("untilRpm", Told.SPEED),
    /** What quoting the best of several pulls adds on average. */
    ADDS("adds", Told.DIFFERENCE),
    /** Pulls behind the figure before. */
    PULLS_BEFORE("pullsBefore", Told.AS_IT_IS),
    /** Pulls behind the figure after. */
    PULLS_AFTER("pullsAfter", Told.AS_IT_IS),
    /** Critical value of a figure picked afterwards, in standard errors. */
    CRITICAL_VALUE("criticalValue", Told.AS_IT_IS),
    /** That of a figure named before. */
    NAMED_BEFORE("namedBefore", Told.AS_IT_IS),
    /** The lowest engine speed that was picked from; NaN where it is not known. */
    FROM("fromRpm", Told.SPEED),
    /** The highest. */
    TO("toRpm", Told.SPEED),
    /** The relative gain that something else makes of an unchanged car; NaN where it is not known. */
    APPARENT_GAIN("apparentGain", Told.AS_IT_IS),
    /** Height of the rig above sea level in m; NaN where it is not known. */
    ELEVATION("elevationM", Told.AS_IT_IS);

    private final String key;
    private final Told told;

    FoundFigure(String key, Told told) {
        this.key = key;
        this.told = told;
    }

    private enum Told {
        AS_IT_IS, LEVEL, DIFFERENCE, SPEED
    }

    /** {@return its name in files, unique within a code} */
    public String key() {
        return key;
    }

    /** {@return what is told of a number in SI: in the unit of its finding, speeds in rpm, ratios, shares and counts as they are} */
    double in(Unit unit, double si) {
        return switch (told) {
            case AS_IT_IS -> si;
            case LEVEL -> PlainNumber.withoutNoise(unit.fromSi(si));
            case DIFFERENCE -> PlainNumber.withoutNoise(unit.differenceFromSi(si));
            case SPEED -> PlainNumber.withoutNoise(Units.RPM.fromSi(si));
        };
    }
}
