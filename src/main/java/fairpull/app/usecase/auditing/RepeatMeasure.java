package fairpull.app.usecase.auditing;

import fairpull.app.usecase.typing.MeasureText;
import fairpull.domain.audit.Publication;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The measure that a published figure names: of power and torque the mean over a band, the value at a speed, or the peak where it names
 * neither; of anything else the value as it is typed.
 */
final class RepeatMeasure {
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d)[, ](?=\\d{3}\\b)");
    private static final String NUMBER = "(\\d{1,6}(?:\\.\\d{1,3})?)";
    private static final Pattern BAND = Pattern.compile(NUMBER + "\\s*(?:-|–|to)\\s*" + NUMBER + "\\s*(rpm|1/min)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SPEED = Pattern.compile(NUMBER + "\\s*(rpm|1/min)", Pattern.CASE_INSENSITIVE);

    private RepeatMeasure() {
    }

    /** {@return the measure of a figure} */
    static Measure of(Publication.Figure figure, Correction correction) {
        Unit unit = figure.before().unit();
        if (unit.quantity() != Quantity.POWER && unit.quantity() != Quantity.TORQUE) {
            return new Measure(figure.name(), new Definition.Typed(unit.quantity()), unit, Correction.NONE, figure.better());
        }
        Measure read = MeasureText.parse(text(figure) + " in " + unit.symbol(), correction);
        return new Measure(read.name(), read.definition(), read.unit(), read.correction(), figure.better());
    }

    private static String text(Publication.Figure figure) {
        String channel = figure.before().unit().quantity() == Quantity.TORQUE ? "torque" : "power";
        if (figure.at().isPresent()) {
            return channel + " at " + figure.at().get().words();
        }
        String name = THOUSANDS.matcher(figure.name()).replaceAll("");
        Matcher band = BAND.matcher(name);
        if (band.find() && Double.parseDouble(band.group(1)) < Double.parseDouble(band.group(2))) {
            return "mean " + channel + " " + band.group(1) + "-" + band.group(2) + " " + band.group(3);
        }
        Matcher speed = SPEED.matcher(name);
        return speed.find() && Double.parseDouble(speed.group(1)) > 0 ? channel + " at " + speed.group(1) + " " + speed.group(2)
                : "peak " + channel;
    }
}
