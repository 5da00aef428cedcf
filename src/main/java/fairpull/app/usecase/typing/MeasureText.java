package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A measure as a person types it, its unit last: {@code mean power 3000-6500 rpm in hp}, {@code peak torque in N·m},
 * {@code power at 5500 rpm in kW}, {@code time 60-100 km/h in s},
 * {@code response of torque to 90 % in s}, {@code typed trap speed in mph}. A comma and {@code less is better}
 * or {@code more is better} may follow; without it a time is better shorter, all else larger.
 */
public final class MeasureText {
    private static final String HOW = "write it like “mean power 3000-6500 rpm in hp”, “peak torque in N·m”, “power at 5500 rpm in kW”, "
            + "“time 60-100 km/h in s”, “response of torque to 90 % in s” or “typed trap speed in mph”";
    private static final Pattern WHOLE =
            Pattern.compile("(?<what>.+?) in (?<unit>[^,]+?)(?:\\s*,\\s*(?<better>more|less) is better)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern BAND = Pattern.compile("mean (\\w+) ([\\d.]+)\\s*[-–]\\s*([\\d.]+)\\s*(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern PEAK = Pattern.compile("peak (\\w+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern AT = Pattern.compile("(\\w+) at (.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TIME = Pattern.compile("time ([\\d.]+)\\s*[-–]\\s*([\\d.]+)\\s*(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern RESPONSE =
            Pattern.compile("response of (\\w+) to ([\\d.]+)\\s*%", Pattern.CASE_INSENSITIVE);
    private static final Pattern TYPED = Pattern.compile("typed (.+)", Pattern.CASE_INSENSITIVE);

    private final String text;

    private MeasureText(String text) {
        this.text = text;
    }

    /**
     * Returns the measure that a text describes.
     *
     * @param correction the standard its values are brought to; left out where the measure is neither power nor torque
     * @throws UsageException where the text is not understood
     */
    public static Measure parse(String text, Correction correction) {
        return new MeasureText(text.strip()).measure(correction);
    }

    private record Defined(String name, Definition definition) {
    }

    private Measure measure(Correction correction) {
        Matcher whole = match(WHOLE, text).orElseThrow(() -> misunderstood("no unit"));
        Unit unit = Units.findOrAsTyped(whole.group("unit"));
        Defined defined = defined(whole.group("what").strip(), unit);
        Definition definition = defined.definition();
        if (unit.quantity() != definition.quantity()) {
            throw misunderstood("a " + definition.quantity().words() + " is not read in " + unit.symbol());
        }
        boolean corrected = definition.quantity() == Quantity.POWER || definition.quantity() == Quantity.TORQUE;
        return new Measure(defined.name(), definition, unit, corrected ? correction : Correction.NONE, better(whole, definition));
    }

    private Defined defined(String what, Unit unit) {
        List<Function<String, Optional<Defined>>> forms = List.of(this::band, this::peak, this::elapsed, this::response, this::at,
                typed -> typed(typed, unit));
        for (Function<String, Optional<Defined>> form : forms) {
            Optional<Defined> defined = form.apply(what);
            if (defined.isPresent()) {
                return defined.get();
            }
        }
        throw misunderstood("what is measured");
    }

    private Optional<Defined> band(String what) {
        return match(BAND, what).map(parts -> {
            Unit speed = engineSpeed(parts.group(4));
            double low = number(parts.group(2));
            double high = number(parts.group(3));
            check(low < high, "a band runs from the lower to the higher speed");
            return new Defined(what, new Definition.MeanOverBand(channel(parts.group(1)), speed.toSi(low), speed.toSi(high)));
        });
    }

    private Optional<Defined> peak(String what) {
        return match(PEAK, what).map(parts -> new Defined(what, new Definition.Peak(channel(parts.group(1)))));
    }

    private Optional<Defined> at(String what) {
        return match(AT, what).map(parts -> {
            Amount speed = Amount.parse(parts.group(2)).orElseThrow(() -> misunderstood("at which speed"));
            check(speed.unit().quantity() == Quantity.ENGINE_SPEED && speed.value() > 0, "an engine speed in rpm");
            return new Defined(what, new Definition.AtSpeed(channel(parts.group(1)), speed.si()));
        });
    }

    private Optional<Defined> elapsed(String what) {
        return match(TIME, what).map(parts -> {
            Unit speed = Units.findOrAsTyped(parts.group(3));
            check(speed.quantity() == Quantity.SPEED || speed.quantity() == Quantity.ENGINE_SPEED, "a speed in km/h, mph, m/s or rpm");
            double from = number(parts.group(1));
            double to = number(parts.group(2));
            check(from < to, "an elapsed time runs from the lower to the higher speed");
            return new Defined(what, new Definition.Elapsed(speed.quantity(), speed.toSi(from), speed.toSi(to)));
        });
    }

    private Optional<Defined> response(String what) {
        return match(RESPONSE, what).map(parts -> {
            Quantity of = channel(parts.group(1));
            check(of == Quantity.TORQUE || of == Quantity.POWER, "a response of torque or power");
            double percent = number(parts.group(2));
            check(percent > 0 && percent < 100, "a share between 0 and 100 %");
            return new Defined(what, new Definition.Response(of, Units.PERCENT.toSi(percent)));
        });
    }

    private Optional<Defined> typed(String what, Unit unit) {
        return match(TYPED, what).map(parts -> new Defined(parts.group(1), new Definition.Typed(unit.quantity())));
    }

    private Better better(Matcher whole, Definition definition) {
        if (whole.group("better") != null) {
            return Better.valueOf(whole.group("better").toUpperCase(Locale.ROOT));
        }
        return definition.quantity() == Quantity.TIME ? Better.LESS : Better.MORE;
    }

    private Quantity channel(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "power" -> Quantity.POWER;
            case "torque" -> Quantity.TORQUE;
            case "force", "thrust" -> Quantity.FORCE;
            default -> throw misunderstood("“" + word + "” is not a channel that can be compared (power, torque, force)");
        };
    }

    private Unit engineSpeed(String symbol) {
        Unit unit = Units.findOrAsTyped(symbol);
        check(unit.quantity() == Quantity.ENGINE_SPEED, "a band of engine speed in rpm");
        return unit;
    }

    private double number(String digits) {
        return Amount.parse(digits).filter(Amount::isBare).map(Amount::value).orElseThrow(() -> misunderstood("“" + digits + "”"));
    }

    private void check(boolean holds, String expected) {
        if (!holds) {
            throw misunderstood("expected " + expected);
        }
    }

    private UsageException misunderstood(String detail) {
        return new UsageException("measure", "“" + text + "” is not understood (" + detail + "); " + HOW);
    }

    private static Optional<Matcher> match(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }
}
