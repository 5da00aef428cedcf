package fairpull.app.usecase.conditions;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.heat.Mode;
import fairpull.domain.heat.Sensitivity;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.DecimalComma;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The amounts of a question about heat, as people type them. */
final class SoakTyped {
    /** A log may end this much below a typed ambient: thermometers differ. Common practice, no source. */
    static final double AMBIENT_SLACK_K = 2;
    /** No place where a car is tested is hotter; common practice, no source. */
    private static final double HOTTEST_AMBIENT_K = Units.CELSIUS.toSi(55);
    /** Nor colder. */
    static final double COLDEST_AMBIENT_K = Units.CELSIUS.toSi(-40);

    private static final double SHORTEST_TIME_CONSTANT_S = 0.1;
    private static final double LONGEST_TIME_CONSTANT_S = 3.6e6;
    private static final double LARGEST_DIFFERENCE_K = 1000;
    private static final double SMALLEST_DIFFERENCE_K = 0.001;
    private static final double SHORTEST_INTERVAL_S = 1;
    private static final double LONGEST_INTERVAL_S = 86_400;

    private final PlanSoak.Request request;

    SoakTyped(PlanSoak.Request request) {
        this.request = request;
    }

    static String degrees(double kelvin) {
        return String.format(Locale.ROOT, "%.1f °C", Units.CELSIUS.fromSi(kelvin));
    }

    Optional<Double> from() {
        return request.from().map(text -> seconds("--from", text, Units.SECOND));
    }

    OptionalDouble ambientK() {
        if (request.ambient().isEmpty()) {
            return OptionalDouble.empty();
        }
        String text = request.ambient().get();
        Amount amount = amount("--ambient", text);
        if (amount.unit().quantity() != Quantity.TEMPERATURE) {
            throw new UsageException("--ambient", "expected a temperature with its unit, such as 22C or 72F; found “" + text + "”");
        }
        if (!(amount.si() >= COLDEST_AMBIENT_K && amount.si() <= HOTTEST_AMBIENT_K)) {
            throw new InputException(Place.none(), "ambient: nobody tests a car at " + amount.words(), amount.unit().equals(Units.CELSIUS)
                    ? new Remedy("if it is " + new Amount(amount.value(), Units.FAHRENHEIT).words() + ", say --ambient "
                            + plain(amount.value()) + "F", "if it is in °F, write " + plain(amount.value()) + " °F")
                    : Remedy.everywhere("give the temperature that the car cools down to"));
        }
        return OptionalDouble.of(amount.si());
    }

    OptionalDouble pullRiseK() {
        return request.pullRise().map(text -> OptionalDouble.of(kelvin("--pull-rise", text))).orElse(OptionalDouble.empty());
    }

    List<Mode> modes() {
        List<Double> constants = request.timeConstants().stream().map(text -> seconds("--time-constant", text, Units.MINUTE)).toList();
        if (constants.stream().anyMatch(constant -> !(constant >= SHORTEST_TIME_CONSTANT_S && constant <= LONGEST_TIME_CONSTANT_S))) {
            throw new UsageException("--time-constant", "must lie between 0.1 s and 1000 h");
        }
        if (constants.size() == 1) {
            return List.of(new Mode(constants.get(0), 1));
        }
        if (constants.size() > 2 || request.share().isEmpty()) {
            throw new UsageException("--time-constant", constants.size() > 2 ? "may be given once or twice"
                    : "two of them need --share, what the first has of a pull's rise, such as --share 60%");
        }
        double share = amount("--share", request.share().get()).si();
        if (!(share > 0 && share < 1)) {
            throw new UsageException("--share", "must lie between 0 and 100%");
        }
        return List.of(new Mode(constants.get(0), share), new Mode(constants.get(1), 1 - share));
    }

    SoakQuestion question(double riseK, double ambientK) {
        double interval = seconds("--interval", request.interval(), Units.MINUTE);
        double swap = seconds("--swap", request.swap(), Units.MINUTE);
        if (!(interval >= SHORTEST_INTERVAL_S && interval <= LONGEST_INTERVAL_S)) {
            throw new UsageException("--interval", "must lie between a second and a day, was " + request.interval());
        }
        if (!(swap >= 0 && swap <= LONGEST_INTERVAL_S)) {
            throw new UsageException("--swap", "must lie between 0 and a day, was " + request.swap());
        }
        try {
            String letters = request.sequence().strip().toUpperCase(Locale.ROOT);
            SoakQuestion.Day day = new SoakQuestion.Day(letters, request.pulls(), interval, swap);
            return new SoakQuestion(riseK, kelvin("--tolerance", request.tolerance()), day, ambientK, sensitivity(), measure());
        } catch (IllegalArgumentException malformed) {
            throw new UsageException("soak", malformed.getMessage());
        }
    }

    private Sensitivity sensitivity() {
        if (request.sensitivity().isEmpty()) {
            return new Sensitivity.InletRule();
        }
        String text = request.sensitivity().get();
        int slash = text.lastIndexOf('/');
        Optional<Amount> change = slash < 0 ? Optional.empty() : Amount.parse(text.substring(0, slash));
        Optional<Unit> per = slash < 0 ? Optional.empty() : Units.find(text.substring(slash + 1));
        if (change.isEmpty() || change.get().isBare() || per.isEmpty() || per.get().quantity() != Quantity.TEMPERATURE) {
            throw new UsageException("--sensitivity", "expected a change per degree, such as -0.18%/K or -0.35hp/K; found “" + text + "”");
        }
        return new Sensitivity.PerKelvin(relative(change.get()) / per.get().factor());
    }

    private double relative(Amount change) {
        if (change.unit().quantity() == Quantity.FRACTION) {
            return change.si();
        }
        Amount level = request.level().map(text -> amount("--level", text)).orElseThrow(() -> new UsageException("--sensitivity",
                "in " + change.unit().symbol() + " needs the level of the measure; give --level, such as --level 190hp"));
        requireSame("--sensitivity", change.unit(), level.unit());
        return change.differenceSi() / level.si();
    }

    private SoakQuestion.Measure measure() {
        if (request.level().isEmpty()) {
            if (request.worthwhile().isPresent()) {
                throw new UsageException("--worthwhile", "needs the level of the measure; give --level, such as --level 190hp");
            }
            return new SoakQuestion.Measure(Units.PERCENT, OptionalDouble.empty(), OptionalDouble.empty());
        }
        Amount level = amount("--level", request.level().get());
        if (!(level.si() > 0)) {
            throw new UsageException("--level", "must be above 0");
        }
        return new SoakQuestion.Measure(level.unit(), OptionalDouble.of(level.si()), request.worthwhile()
                .map(text -> OptionalDouble.of(worthwhile(text, level))).orElse(OptionalDouble.empty()));
    }

    private static double worthwhile(String text, Amount level) {
        Amount gain = amount("--worthwhile", text);
        double si;
        if (gain.isBare()) {
            si = level.unit().differenceToSi(gain.value());
        } else if (gain.unit().quantity() == Quantity.FRACTION && level.unit().quantity() != Quantity.FRACTION) {
            si = gain.si() * level.si();
        } else {
            requireSame("--worthwhile", gain.unit(), level.unit());
            si = gain.differenceSi();
        }
        if (!(si > 0)) {
            throw new UsageException("--worthwhile", "must be above 0");
        }
        return si;
    }

    private static void requireSame(String option, Unit one, Unit other) {
        if (one.quantity() != other.quantity() || one.quantity() == Quantity.OTHER && !one.equals(other)) {
            throw new UsageException(option, "“" + one.symbol() + "” does not go with a level in " + other.symbol());
        }
    }

    /** A difference of temperature; a bare number is kelvin. */
    private static double kelvin(String option, String text) {
        Amount amount = amount(option, text);
        if (!amount.isBare() && amount.unit().quantity() != Quantity.TEMPERATURE) {
            throw new UsageException(option, "expected kelvin, such as 2K; found “" + text + "”");
        }
        double kelvin = amount.isBare() ? amount.value() : amount.differenceSi();
        if (!(kelvin >= SMALLEST_DIFFERENCE_K && kelvin <= LARGEST_DIFFERENCE_K)) {
            throw new UsageException(option, "must lie between 0.001 K and 1000 K, was " + text);
        }
        return kelvin;
    }

    private static double seconds(String option, String text, Unit bare) {
        Amount amount = amount(option, text);
        if (!amount.isBare() && amount.unit().quantity() != Quantity.TIME) {
            throw new UsageException(option, "expected a time, such as 5min or 90s; found “" + text + "”");
        }
        return amount.isBare() ? bare.toSi(amount.value()) : amount.si();
    }

    private static Amount amount(String option, String text) {
        return Amount.parse(text).orElseThrow(() -> new UsageException(option, DecimalComma.in(text)
                .orElse("expected a number with its unit, found “" + text + "”")));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%s", value).replaceAll("\\.0$", "");
    }
}
