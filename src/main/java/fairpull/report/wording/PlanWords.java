package fairpull.report.wording;

import fairpull.domain.finding.Fate;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.ScoredWindow;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.UnitSystem;
import fairpull.domain.unit.Units;
import java.util.Locale;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What was planned, in words. */
public final class PlanWords {
    private PlanWords() {
    }

    /** {@return the plan in a paragraph: parts, measure, order, analysis} */
    public static String paragraph(Plan plan) {
        Question question = plan.question();
        Measure deciding = question.deciding();
        StringBuilder text = new StringBuilder();
        text.append("A: ").append(question.partA()).append(". B: ").append(question.partB()).append(". Deciding measure: ")
                .append(definition(deciding)).append(", in ").append(deciding.unit().symbol()).append(", ")
                .append(correction(deciding.correction())).append("; ").append(better(deciding.better())).append(". ");
        question.worthwhileGainSi().ifPresent(gain -> text.append("Worthwhile gain: ")
                .append(Numbers.given(deciding.unit().differenceFromSi(gain), deciding.unit().symbol())).append(". "));
        plan.looks().ifPresent(looks -> text.append(LookWords.planned(looks, question.errorRate())).append(' '));
        plan.bandwidthRadPerS().ifPresent(width -> text.append("Curves over engine speed: ").append(bandwidth(plan.bandwidthRadPerS()))
                .append(". "));
        plan.scoredWindow().ifPresent(window -> text.append("Not scored of each sweep: ").append(scored(window)).append(". "));
        plan.rig().movingMass().ifPresent(mass -> text.append("Where exports lack power, it comes from ")
                .append(Numbers.given(mass.massKg(), "kg")).append(" accelerated").append(mass.coastDown().isPresent()
                        ? " and the coast-down" : "").append(", smoothed over ").append(Numbers.given(mass.windowS(), "s")).append(". "));
        return text.append("Order ").append(plan.sequence().letters()).append(", ").append(counted(plan)).append(" counted pulls, on ")
                .append(plan.rig().name()).append(" (").append(kind(plan.rig().kind())).append("). Drift modelled: ")
                .append(plan.analysis().drift().name().toLowerCase(Locale.ROOT)).append('.').toString();
    }

    /** {@return the bandwidth to which curves are smoothed, in words} */
    static String bandwidth(OptionalDouble radPerS) {
        return radPerS.isPresent() ? "bandwidth " + Numbers.given(Units.RPM.differenceFromSi(radPerS.getAsDouble()), "rpm")
                : "curves as exported";
    }

    private static String scored(ScoredWindow window) {
        List<String> parts = new ArrayList<>();
        window.tipInRadPerS().ifPresent(drop -> parts.add("the first " + Numbers.given(Units.RPM.differenceFromSi(drop), "rpm")));
        window.tipInS().ifPresent(drop -> parts.add("the first " + Numbers.given(drop, "s")));
        window.liftOffRadPerS().ifPresent(drop -> parts.add("the last " + Numbers.given(Units.RPM.differenceFromSi(drop), "rpm")));
        window.liftOffS().ifPresent(drop -> parts.add("the last " + Numbers.given(drop, "s")));
        return String.join(", ", parts);
    }

    private static int counted(Plan plan) {
        return plan.sequence().installs().mapToInt(Install::countedPulls).sum();
    }

    /** {@return how the value of a pull comes about} */
    public static String definition(Measure measure) {
        return definition(measure.definition());
    }

    /** {@return how a value defined like that comes about} */
    public static String definition(Definition definition) {
        return definition.match(new Definition.Cases<String>() {
            @Override
            public String meanOverBand(Definition.MeanOverBand band) {
                return "mean " + band.quantity().words() + " over " + rpm(band.lowRadPerS()) + " to " + rpm(band.highRadPerS())
                        + Numbers.THIN + "rpm, every speed weighing alike";
            }

            @Override
            public String peak(Definition.Peak peak) {
                return "largest " + peak.quantity().words() + " of the pull";
            }

            @Override
            public String atSpeed(Definition.AtSpeed at) {
                return at.quantity().words() + " at " + rpm(at.speedRadPerS()) + Numbers.THIN + "rpm";
            }

            @Override
            public String elapsed(Definition.Elapsed elapsed) {
                Unit unit = elapsed.speed() == Quantity.ENGINE_SPEED ? Units.RPM : Units.KM_PER_HOUR;
                return "time from " + Numbers.given(unit.fromSi(elapsed.fromSi())) + " to "
                        + Numbers.given(unit.fromSi(elapsed.toSi()), unit.symbol());
            }

            @Override
            public String response(Definition.Response response) {
                return "time from the pedal step to " + Numbers.given(Units.PERCENT.fromSi(response.share()), "%") + " of the "
                        + response.of().words() + " then reached";
            }

            @Override
            public String typed(Definition.Typed typed) {
                return "value read off and typed in";
            }
        });
    }

    private static String rpm(double radPerS) {
        return Numbers.given(Units.RPM.fromSi(radPerS));
    }

    /** {@return the standard that values are brought to} */
    public static String correction(Correction correction) {
        return correction == Correction.NONE ? "as measured, no correction for air" : "corrected to " + standard(correction);
    }

    /** {@return the name of a standard} */
    public static String standard(Correction correction) {
        return switch (correction) {
            case NONE -> "no correction";
            case SAE_J1349 -> "SAE J1349";
            case ISO_1585 -> "ISO 1585";
            case ISO_1585_CI -> "ISO 1585, compression ignition";
            case EEC_80_1269 -> "80/1269/EEC";
            case DIN_70020 -> "DIN 70020";
            case SAE_J607 -> "SAE J607";
        };
    }

    /** {@return the direction that is a gain} */
    public static String better(Better better) {
        return better == Better.MORE ? "more is better" : "less is better";
    }

    /** {@return the kind of rig} */
    public static String kind(Rig.Kind kind) {
        return switch (kind) {
            case ROLLER_INERTIA -> "roller rig, inertia";
            case ROLLER_BRAKE -> "roller rig, brake";
            case HUB -> "hub rig";
            case ENGINE_BENCH -> "engine bench";
            case ROAD -> "road";
            case STRIP -> "strip";
        };
    }

    /** {@return what became of a pull} */
    public static String fate(Fate fate) {
        return switch (fate) {
            case USED -> "used";
            case WARM_UP -> "warm-up";
            case EXCLUDED -> "left out";
            case ABORTED -> "aborted";
            case AWAITED -> "not in yet";
            case MISSING -> "never came in";
        };
    }

    /** {@return the unit in which a condition is printed} */
    public static Unit unitOf(Condition condition) {
        return unitOf(condition, UnitSystem.METRIC);
    }

    /** {@return the unit in which a condition is printed for people who think in a system of units} */
    public static Unit unitOf(Condition condition, UnitSystem system) {
        boolean metric = system == UnitSystem.METRIC;
        return switch (condition) {
            case INTAKE_AIR, COOLANT, OIL, GEARBOX -> metric ? Units.CELSIUS : Units.FAHRENHEIT;
            case BAROMETER -> metric ? Units.HECTOPASCAL : Units.INCH_OF_MERCURY;
            case HUMIDITY -> Units.PERCENT;
            case TYRE_PRESSURE -> metric ? Units.BAR : Units.POUND_PER_SQUARE_INCH;
        };
    }

    /** {@return the unit of differences of a condition: those of °C are in K} */
    public static Unit differenceUnitOf(Condition condition, UnitSystem system) {
        Unit unit = unitOf(condition, system);
        return unit.equals(Units.CELSIUS) ? Units.KELVIN : unit;
    }

    /** {@return a reading as printed} */
    public static String reading(Condition condition, double si) {
        double uncertainty = switch (condition) {
            case TYRE_PRESSURE -> 0.1;
            case HUMIDITY -> 10;
            case INTAKE_AIR, COOLANT, OIL, GEARBOX, BAROMETER -> 1;
        };
        return Numbers.resolving(uncertainty, "").bare(unitOf(condition).fromSi(si));
    }
}
