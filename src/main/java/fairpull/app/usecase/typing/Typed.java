package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Scatter;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.DecimalComma;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.Optional;
import java.util.OptionalDouble;

/** Amounts as people type them beside a deciding measure: in its unit, in another of the same quantity, or in percent of its level. */
public final class Typed {
    private final Measure measure;
    private final OptionalDouble levelSi;

    public Typed(Measure measure, OptionalDouble levelSi) {
        this.measure = measure;
        this.levelSi = levelSi;
    }

    /** {@return a level of the measure, in SI} */
    public static double levelSi(String option, String text, Measure measure) {
        Amount amount = amount(option, text);
        if (amount.isBare()) {
            return measure.unit().toSi(amount.value());
        }
        return of(option, amount, measure).si();
    }

    /** {@return an amount as it is printed, with the measure's unit where none was typed} */
    public static String words(String text, Measure measure) {
        Amount amount = amount("amount", text);
        return amount.isBare() ? new Amount(amount.value(), measure.unit()).words() : amount.words();
    }

    /** {@return a difference of the measure, in SI} */
    public double differenceSi(String option, String text) {
        Amount amount = amount(option, text);
        if (amount.isBare()) {
            return measure.unit().differenceToSi(amount.value());
        }
        if (amount.unit().quantity() == Quantity.FRACTION && measure.unit().quantity() != Quantity.FRACTION) {
            return amount.si() * levelSi.orElseThrow(() -> new UsageException(option,
                    new Remedy("a percentage needs the expected level of the measure; give --expected, such as --expected 190hp",
                    "a percentage needs the expected level of the measure: give it on the page Question")));
        }
        return of(option, amount, measure).differenceSi();
    }

    /** {@return a scatter of the measure with its degrees of freedom; empty where none is given} */
    public Optional<Scatter> scatter(String option, String text, String dfOption, String degreesOfFreedom) {
        if (text == null) {
            if (degreesOfFreedom != null) {
                throw new UsageException(dfOption, "degrees of freedom without a scatter; give " + option + " too");
            }
            return Optional.empty();
        }
        double si = differenceSi(option, text);
        if (!(si > 0)) {
            throw new UsageException(option, "a scatter must be above 0");
        }
        double df = degreesOfFreedom == null ? 0 : degreesOfFreedom(dfOption, degreesOfFreedom);
        return Optional.of(new Scatter(si, df, Scatter.Origin.TYPED_IN));
    }

    /** {@return degrees of freedom: 0 or more, or {@code inf} for a scatter that is taken as known} */
    public static double degreesOfFreedom(String option, String text) {
        if (text.equalsIgnoreCase("inf")) {
            return Double.POSITIVE_INFINITY;
        }
        Optional<Amount> amount = Amount.parse(text).filter(typed -> typed.isBare() && typed.value() >= 0);
        return amount.orElseThrow(() -> new UsageException(option, "expected 0 or more, or inf; found " + text)).value();
    }

    /** {@return minutes as seconds: a bare number means minutes} */
    public static double minutesAsSeconds(String option, String text) {
        Amount amount = amount(option, text);
        boolean isTime = amount.isBare() || amount.unit().quantity() == Quantity.TIME;
        if (!isTime || amount.value() < 0 || Double.isInfinite(amount.value())) {
            throw new UsageException(option, "expected minutes, 0 or more; found " + text);
        }
        return amount.isBare() ? Units.MINUTE.toSi(amount.value()) : amount.si();
    }

    /** {@return a bandwidth of engine speed in rad/s: a bare number means 1/min; empty where none is given} */
    public static OptionalDouble bandwidth(String option, String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(engineSpeed(option, text).differenceSi());
    }

    /** {@return an engine speed: a bare number means 1/min} */
    public static Amount engineSpeed(String option, String text) {
        Amount amount = Amount.parse(text).filter(typed -> typed.value() > 0 && !Double.isInfinite(typed.value())
                && (typed.isBare() || typed.unit().quantity() == Quantity.ENGINE_SPEED)).orElseThrow(() -> new UsageException(option,
                "expected an engine speed above 0, such as 100rpm; found “" + text + "”"));
        return amount.isBare() ? new Amount(amount.value(), Units.RPM) : amount;
    }

    private static Amount amount(String option, String text) {
        return Amount.parse(text).orElseThrow(() -> new UsageException(option, DecimalComma.in(text)
                .orElse("expected a number with its unit, found “" + text + "”")));
    }

    private static Amount of(String option, Amount amount, Measure measure) {
        if (amount.unit().quantity() != measure.unit().quantity()
                || amount.unit().quantity() == Quantity.OTHER && !amount.unit().equals(measure.unit())) {
            throw new UsageException(option, "“" + amount.unit().symbol() + "” is not a unit of " + measure.name() + ", which is read in "
                    + measure.unit().symbol());
        }
        return amount;
    }
}
