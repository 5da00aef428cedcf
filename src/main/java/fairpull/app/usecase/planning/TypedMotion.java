package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.MovingMass;
import fairpull.domain.plan.MovingMass.CoastDown;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a pull accelerates, as a person types it. */
public final class TypedMotion {
    private static final Pattern WITH_UNCERTAINTY = Pattern.compile("\\s*(-?[\\d.]+)\\s*(?:(?:±|\\+-)\\s*([\\d.]+))?\\s*(.*?)\\s*");

    private TypedMotion() {
    }

    /**
     * The texts; null where an option was not given.
     *
     * @param mass a mass, or a moment of inertia and a radius parted by @
     * @param coastDown the three coefficients
     * @param window the width of the fit
     */
    public record Typing(String mass, String coastDown, String window) {
    }

    private record Uncertain(double si, double uncertaintySi) {
    }

    /** {@return what is typed; empty where nothing is} */
    static Optional<MovingMass> parse(Typing typing) {
        if (typing.mass() == null) {
            if (typing.coastDown() != null || typing.window() != null) {
                throw new UsageException("--moving-mass", "a coast-down or a window needs the mass that is accelerated");
            }
            return Optional.empty();
        }
        if (typing.window() == null) {
            throw new UsageException("--acceleration-window", "power from speed and time needs the window of the fit, such as 0.5s");
        }
        double windowS = Amount.parse(typing.window()).filter(typed -> typed.unit().quantity() == Quantity.TIME && typed.value() > 0)
                .map(Amount::si).orElseThrow(() -> new UsageException("--acceleration-window", "expected a time above 0, such as 0.5s; "
                        + "found “" + typing.window() + "”"));
        Uncertain mass = mass(typing.mass());
        return Optional.of(new MovingMass(mass.si(), mass.uncertaintySi(), windowS, Optional.ofNullable(typing.coastDown())
                .map(TypedMotion::coastDown)));
    }

    private static Uncertain mass(String text) {
        String[] parts = text.split("@", -1);
        if (parts.length == 1) {
            return uncertain("--moving-mass", text, Quantity.MASS, "1480±15kg or 12.5±0.1kg·m²@0.318m");
        }
        Uncertain inertia = uncertain("--moving-mass", parts[0], Quantity.MOMENT_OF_INERTIA, "12.5±0.1kg·m²@0.318m");
        Uncertain radius = uncertain("--moving-mass", parts[1], Quantity.LENGTH, "12.5±0.1kg·m²@0.318m");
        double mass = MovingMass.ofRoller(inertia.si(), radius.si());
        double relative = Math.hypot(inertia.uncertaintySi() / inertia.si(), 2 * radius.uncertaintySi() / radius.si());
        return new Uncertain(mass, mass * relative);
    }

    private static CoastDown coastDown(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 3) {
            throw new UsageException("--coast-down", "expected three coefficients such as 110±8,0.9±0.5,0.42±0.01; found “" + text + "”");
        }
        Uncertain[] f = new Uncertain[parts.length];
        for (int i = 0; i < parts.length; i++) {
            f[i] = uncertain("--coast-down", parts[i], Quantity.OTHER, "110±8,0.9±0.5,0.42±0.01");
        }
        return new CoastDown(f[0].si(), f[1].si(), f[2].si(), f[0].uncertaintySi(), f[1].uncertaintySi(), f[2].uncertaintySi());
    }

    /** {@code OTHER} stands for a bare number. */
    private static Uncertain uncertain(String option, String text, Quantity wanted, String example) {
        UsageException misunderstood = new UsageException(option, "expected something like " + example + "; found “" + text + "”");
        Matcher parts = WITH_UNCERTAINTY.matcher(text);
        if (!parts.matches()) {
            throw misunderstood;
        }
        Amount amount = Amount.parse(parts.group(1) + parts.group(3)).orElseThrow(() -> misunderstood);
        boolean fits = wanted == Quantity.OTHER ? amount.isBare() : amount.unit().quantity() == wanted;
        if (!fits) {
            throw misunderstood;
        }
        double uncertainty = parts.group(2) == null ? 0
                : Amount.parse(parts.group(2) + parts.group(3)).map(Amount::differenceSi).orElseThrow(() -> misunderstood);
        return new Uncertain(amount.si(), uncertainty);
    }
}
