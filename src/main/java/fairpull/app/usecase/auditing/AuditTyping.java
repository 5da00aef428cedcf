package fairpull.app.usecase.auditing;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.PublicationDraft;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What people type into the fields of a publication, and how its figures stand in them. An empty field is “not disclosed”. */
public final class AuditTyping {
    private static final int MOST_PULLS = 1000;
    private static final Pattern RANGE = Pattern.compile("\\s*(.+?)\\s*(?:-|–|…|\\bto\\b)\\s*(.+?)\\s*");
    private static final Pattern WITH_FREEDOM = Pattern.compile("(.*?)[\\s,;(]+df\\s*=?\\s*(\\d+(?:\\.\\d+)?)\\)?\\s*");

    private AuditTyping() {
    }

    /** {@return a figure as it was printed; one without a unit takes that of the figure beside it} */
    public static Optional<Printed> printed(String text, Optional<Printed> beside) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Printed figure = Printed.parse(text).orElseThrow(() -> misunderstood("a figure as it was printed, such as 214.3 hp"));
        boolean isBare = figure.unit().equals(Units.ONE);
        if (isBare && beside.isEmpty()) {
            throw misunderstood("the figure with its unit, such as 214.3 hp");
        }
        return Optional.of(isBare ? new Printed(figure.value(), figure.decimals(), beside.get().unit()) : figure);
    }

    /** {@return an engine speed as it was printed; a bare number means 1/min} */
    public static Optional<Printed> speed(String text) {
        Optional<Printed> speed = printed(text, Optional.of(new Printed(0, 0, Units.RPM)));
        if (speed.filter(known -> known.unit().quantity() != Quantity.ENGINE_SPEED || !(known.value() > 0)).isPresent()) {
            throw misunderstood("an engine speed above 0, such as 5500 rpm");
        }
        return speed;
    }

    /** {@return the gain that is claimed of a figure, in its unit or in percent; empty where any gain is claimed} */
    public static Optional<Printed> gain(String text, Optional<Printed> figure) {
        Optional<Printed> gain = printed(text, figure);
        if (gain.isPresent() && figure.isPresent() && gain.get().unit().quantity() != Quantity.FRACTION
                && !gain.get().isLike(figure.get())) {
            throw misunderstood("the gain in " + figure.get().unit().symbol() + " or in percent");
        }
        return gain;
    }

    /** {@return a height above sea level as it was printed} */
    public static Optional<Printed> elevation(String text) {
        return printed(text, Optional.empty());
    }

    /** {@return a printed figure as it stands in its field} */
    public static String text(Optional<Printed> figure) {
        return figure.map(Printed::words).orElse("");
    }

    /** {@return how many pulls were run} */
    public static Optional<Integer> pulls(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(PlanTyping.count(text, 1, MOST_PULLS));
    }

    /** {@return the order in which the states were run} */
    public static Optional<RunOrder> order(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(RunOrder.parse(text));
    }

    /** {@return words; empty for none} */
    public static Optional<String> words(String text) {
        return Optional.of(text.strip()).filter(words -> !words.isEmpty());
    }

    /** {@return the engine speeds from a lower to an upper one} */
    public static Optional<SpeedRange> sweep(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Matcher ends = RANGE.matcher(text);
        if (!ends.matches()) {
            throw misunderstood("two engine speeds, such as 2000-6500 rpm");
        }
        Printed high = speed(ends.group(2)).orElseThrow();
        Printed low = printed(ends.group(1), Optional.of(high)).orElseThrow();
        if (low.unit().quantity() != Quantity.ENGINE_SPEED || !(low.si() > 0 && low.si() < high.si())) {
            throw misunderstood("two engine speeds from a lower to a higher one, such as 2000-6500 rpm");
        }
        return Optional.of(new SpeedRange(low.si(), high.si()));
    }

    /** {@return a range of engine speeds as it stands in its field} */
    public static String text(SpeedRange sweep) {
        return Numbers.given(Units.RPM.fromSi(sweep.lowRadPerS())) + "-"
                + Numbers.given(Units.RPM.fromSi(sweep.highRadPerS()), Units.RPM.symbol());
    }

    /** {@return a scatter that was stated, with the degrees of freedom behind it where they follow, such as {@code 0.7 % df 11}} */
    public static Optional<StatedScatter.Layer> layer(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Matcher parts = WITH_FREEDOM.matcher(text);
        boolean told = parts.matches();
        OptionalDouble freedom = told ? OptionalDouble.of(Double.parseDouble(parts.group(2))) : OptionalDouble.empty();
        return printed(told ? parts.group(1) : text, Optional.empty()).map(deviation -> new StatedScatter.Layer(deviation, freedom));
    }

    /** {@return a layer of scatter as it stands in its field} */
    public static String text(StatedScatter.Layer layer) {
        String behind = layer.degreesOfFreedom().isEmpty() ? "" : " df " + Numbers.given(layer.degreesOfFreedom().getAsDouble());
        return layer.deviation().words() + behind;
    }

    /** {@return a unit of what a curve shows} */
    public static Optional<Unit> unit(String text) {
        return words(text).map(name -> Units.find(name).orElseThrow(() -> misunderstood("a unit such as hp, kW or N·m")));
    }

    /** {@return what is still lacking before anything can be audited, in sentences; none where nothing is} */
    public static List<String> lacking(PublicationDraft draft) {
        List<String> lacking = new ArrayList<>();
        draft.figures().stream().filter(figure -> !figure.isBlank() && figure.figure().isEmpty()).forEach(figure -> lacking.add(
                "“" + figure.name() + "” still lacks its figure " + (figure.before().isEmpty() ? "before" : "after") + "."));
        draft.figures().stream().filter(figure -> !figure.values().isBlank() && figure.values().values().isEmpty()).forEach(
                figure -> lacking.add("The values of “" + figure.name() + "” are not whole yet: "
                        + (figure.values().paired() ? "each before needs its after, in two rows or more."
                                : "two or more are needed on each side.")));
        if (lacking.isEmpty() && draft.publication().isEmpty()) {
            lacking.add("Type a figure before and after, with all the digits that were printed.");
        }
        draft.claims().stream().filter(claim -> claim.words().isBlank() && claim.gain().isPresent()).forEach(claim -> lacking.add(
                "A claim of " + claim.gain().get().words() + " still lacks its words."));
        return lacking;
    }

    /** {@return the name of an item of a procedure in lower case, as undo says it} */
    public static String lowered(String label) {
        return label.isEmpty() ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    private static UsageException misunderstood(String wanted) {
        return new UsageException("", wanted);
    }
}
