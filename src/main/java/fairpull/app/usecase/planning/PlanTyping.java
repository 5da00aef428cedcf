package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.MeasureText;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.PlanWords;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What people type into the fields of a plan, and how the plan's figures stand in them. What is not understood is said in words. */
public final class PlanTyping {
    private static final double MINUTES_AN_HOUR = 60;
    private static final String BETWEEN = "; ";

    private final Question question;

    private PlanTyping(Plan plan) {
        question = plan.question();
    }

    /** {@return typing in the fields of a plan: amounts may be in the unit of its deciding measure or in percent of its level} */
    public static PlanTyping in(Plan plan) {
        return new PlanTyping(plan);
    }

    /** {@return words that must not be empty} */
    public static String words(String text) {
        if (text.isBlank()) {
            throw new UsageException("", "say it in a few words");
        }
        return text.strip();
    }

    /** {@return the measure that a text describes} */
    public Measure measure(String text) {
        return MeasureText.parse(text, correction());
    }

    private Correction correction() {
        return question.deciding().correction();
    }

    /** {@return a measure as {@link #measure} reads it} */
    public static String text(Measure measure) {
        String typed = measure.definition() instanceof Definition.Typed ? "typed " : "";
        return typed + measure.name() + " in " + measure.unit().symbol();
    }

    /** {@return a level of the deciding measure in SI; empty for an empty text} */
    public OptionalDouble level(String text) {
        return text.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(positive(Typed.levelSi("", text, question.deciding())));
    }

    /** {@return a difference of the deciding measure in SI; empty for an empty text} */
    public OptionalDouble difference(String text) {
        return text.isBlank() ? OptionalDouble.empty()
                : OptionalDouble.of(positive(new Typed(question.deciding(), question.expectedLevelSi()).differenceSi("", text)));
    }

    private static double positive(double value) {
        if (!(value > 0)) {
            throw new UsageException("", "it must be above 0");
        }
        return value;
    }

    /** {@return a level as it stands in its field} */
    public String level(OptionalDouble si) {
        Unit unit = question.deciding().unit();
        return si.isEmpty() ? "" : Numbers.given(unit.fromSi(si.getAsDouble()), unit.symbol());
    }

    /** {@return a difference as it stands in its field} */
    public String difference(OptionalDouble si) {
        Unit unit = question.deciding().unit();
        return si.isEmpty() ? "" : Numbers.given(unit.differenceFromSi(si.getAsDouble()), unit.symbol());
    }

    /** {@return a whole number within its limits} */
    public static int count(String text, int least, int most) {
        try {
            int count = Integer.parseInt(text.strip());
            if (count >= least && count <= most) {
                return count;
            }
        } catch (NumberFormatException noNumber) {
            // said below, as for a number that is out of its limits
        }
        throw new UsageException("", "a whole number from " + least + " to " + most + ", such as " + Math.max(least, Math.min(most, 5)));
    }

    /** {@return minutes, with or without a unit of time, as seconds} */
    public static double minutes(String text) {
        return Typed.minutesAsSeconds("", text.strip());
    }

    /** {@return seconds as they stand in a field of minutes} */
    public static String minutes(double seconds) {
        return Numbers.given(Units.MINUTE.fromSi(seconds), Units.MINUTE.symbol());
    }

    /** {@return hours, with or without a unit of time, as minutes} */
    public static double hoursAsMinutes(String text) {
        return SearchDays.hoursAsMinutes("", text.strip());
    }

    /** {@return minutes as they stand in a field of hours} */
    public static String hours(double minutes) {
        return Numbers.given(minutes / MINUTES_AN_HOUR, Units.HOUR.symbol());
    }

    /** {@return an amount of money in the shop's own currency; 0 for an empty text} */
    public static double money(String text) {
        double money = text.isBlank() ? 0 : Amount.parse(text).filter(Amount::isBare).map(Amount::value).orElse(-1.0);
        if (!(money >= 0) || Double.isInfinite(money)) {
            throw new UsageException("", "an amount of money as a plain number, such as 120");
        }
        return money;
    }

    /** {@return an amount of money as it stands in its field; empty for 0} */
    public static String money(double money) {
        return money == 0 ? "" : Numbers.given(money);
    }

    /** {@return a time of day; empty for an empty text} */
    public static Optional<LocalTime> clock(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(WorkingHours.time("", text));
    }

    /** {@return times of day parted by bars, one a session or one for all; a place between bars may be empty} */
    public static List<Optional<LocalTime>> clocks(String text) {
        return Stream.of(text.split("\\|", -1)).map(PlanTyping::clock).toList();
    }

    /** {@return times of day as {@link #clocks} reads them: one where all are alike} */
    public static String clockText(List<Optional<LocalTime>> times) {
        List<String> texts = times.stream().map(time -> time.map(LocalTime::toString).orElse("")).toList();
        return texts.stream().distinct().count() == 1 ? texts.get(0) : String.join(" | ", texts);
    }

    /** {@return breaks such as {@code 12:30+45}, parted by commas, and by bars where days have their own; a place may be empty} */
    public static List<List<Break>> breaks(String text) {
        return Stream.of(text.split("\\|", -1)).map(day -> Stream.of(day.split(",", -1)).filter(pause -> !pause.isBlank())
                .map(pause -> WorkingHours.pause("", pause)).sorted(Comparator.comparing(Break::start)).toList()).toList();
    }

    /** {@return breaks as {@link #breaks} reads them: those of one day where all are alike} */
    public static String breakText(List<List<Break>> days) {
        List<String> texts = days.stream().map(day -> day.stream().map(pause -> pause.start() + "+" + minutes(pause.lengthS()))
                .collect(Collectors.joining(", "))).toList();
        return texts.stream().distinct().count() == 1 ? texts.get(0) : String.join(" | ", texts);
    }

    /** {@return measures parted by semicolons; none for an empty text} */
    public List<Measure> measures(String text) {
        return parts(text).map(this::measure).toList();
    }

    /** {@return measures as {@link #measures} reads them} */
    public static String text(List<Measure> measures) {
        return measures.stream().map(PlanTyping::text).collect(Collectors.joining(BETWEEN));
    }

    /**
     * {@return claims “at least …” about the deciding measure, parted by semicolons, each of them perhaps at an engine speed; what the
     * plan claims of further measures stays}
     */
    public List<Claim> claims(String text) {
        Stream<Claim> others = question.claims().stream().filter(claim -> !claim.measure().equals(question.deciding().name()));
        return Stream.concat(parts(text).map(this::claim), others).toList();
    }

    private Claim claim(String text) {
        Measure deciding = question.deciding();
        Claim claim = NewPlan.claim("", text, deciding, new Typed(deciding, question.expectedLevelSi()));
        if (claim.speedRadPerS().isPresent() && !deciding.definition().isReadOffCurve()) {
            throw new UsageException("", "“" + text + "” is about one engine speed, and the deciding measure has no curve over engine "
                    + "speed to look it up on; decide by one that has, such as “mean power 3000-6500 rpm in hp”, or leave the speed away");
        }
        return claim;
    }

    /** {@return the claims about the deciding measure as {@link #claims} reads them} */
    public String claims() {
        return question.claims().stream().filter(claim -> claim.measure().equals(question.deciding().name()))
                .map(this::text).collect(Collectors.joining(BETWEEN));
    }

    private String text(Claim claim) {
        String amount = difference(OptionalDouble.of(claim.atLeastSi()));
        return claim.speedRadPerS().isEmpty() ? amount : amount + " at "
                + Numbers.given(Units.RPM.fromSi(claim.speedRadPerS().getAsDouble()), Units.RPM.symbol());
    }

    private static Stream<String> parts(String text) {
        return Arrays.stream(text.split(";")).map(String::strip).filter(part -> !part.isEmpty());
    }

    /** {@return a share such as an error rate, in percent or as a fraction} */
    public static double share(String text) {
        Amount amount = Amount.parse(text).orElseThrow(() -> new UsageException("", "a share such as 5 %"));
        double share = amount.isBare() && amount.value() >= 1 ? amount.value() / 100 : amount.si();
        if (!(share > 0 && share < 1) || amount.unit().quantity() != Quantity.FRACTION) {
            throw new UsageException("", "a share between 0 and 100 %, such as 5 %");
        }
        return share;
    }

    /** {@return a share as it stands in its field} */
    public static String share(double share) {
        return Numbers.percent(share);
    }

    /** {@return what a measure is, in a sentence} */
    public static String definition(Measure measure) {
        String definition = PlanWords.definition(measure);
        return definition.substring(0, 1).toUpperCase(Locale.ROOT) + definition.substring(1) + "; " + PlanWords.better(measure.better())
                + ".";
    }

    /** {@return a standard of correction in words} */
    public static String correction(Correction correction) {
        return PlanWords.correction(correction);
    }

    /** {@return the measure brought to another standard; as it was where it is neither power nor torque} */
    public static Measure corrected(Measure measure, Correction correction) {
        boolean canBe = measure.unit().quantity() == Quantity.POWER || measure.unit().quantity() == Quantity.TORQUE;
        return canBe ? new Measure(measure.name(), measure.definition(), measure.unit(), correction, measure.better()) : measure;
    }

    /** {@return a scatter of the deciding measure that keeps its degrees of freedom; empty for an empty text} */
    public Optional<Scatter> scatter(String text, Optional<Scatter> before) {
        OptionalDouble si = difference(text);
        return si.isEmpty() ? Optional.empty()
                : Optional.of(new Scatter(si.getAsDouble(), before.map(Scatter::degreesOfFreedom).orElse(0.0), Scatter.Origin.TYPED_IN));
    }

    /** {@return a scatter as it stands in its field} */
    public String scatter(Optional<Scatter> scatter) {
        return scatter.map(known -> difference(OptionalDouble.of(known.standardDeviationSi()))).orElse("");
    }

    /** {@return degrees of freedom: 0 or none for a planning value, “inf” for a scatter taken as known} */
    public static double degreesOfFreedom(String text) {
        return text.isBlank() ? 0 : Typed.degreesOfFreedom("", text.strip());
    }

    /** {@return degrees of freedom as they stand in their field} */
    public static String degreesOfFreedom(Optional<Scatter> scatter) {
        return scatter.filter(Scatter::isRecord).map(known -> Double.isInfinite(known.degreesOfFreedom()) ? "inf"
                : Numbers.given(known.degreesOfFreedom())).orElse("");
    }
}
