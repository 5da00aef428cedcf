package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.WindowQuestion;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The question about the ambient window as it is typed.
 *
 * @param worthwhile the worthwhile gain in percent of the level or in the unit of a power; null where it was not typed
 * @param share of it that the correction may get wrong
 * @param modelError error of the correction itself, as a share of its change between two installs
 * @param factors the range of factors within which the standard may be used, such as {@code 0.9-1.1}
 */
public record TypedWindow(String worthwhile, Optional<String> share, Optional<String> modelError, Optional<String> factors) {
    private static final Pattern RANGE = Pattern.compile("(\\d(?:\\.\\d+)?)\\s*[-–…]\\s*(\\d(?:\\.\\d+)?)");

    /** {@return the question about this air} */
    public WindowQuestion question(AirReading now, Optional<AirReading> first, Optional<Amount> level) {
        return new WindowQuestion(gain(level),
                share.map(text -> between("--share", text, "25%")).orElse(WindowQuestion.SHARE_GUESS),
                modelError.map(text -> between("--model-error", text, "10%")).orElse(WindowQuestion.MODEL_ERROR_GUESS), now, first,
                factors.map(TypedWindow::range));
    }

    private double gain(Optional<Amount> level) {
        Optional<Amount> gain = Amount.parse(worthwhile).filter(amount -> amount.unit().quantity() == Quantity.POWER
                || amount.unit().quantity() == Quantity.TORQUE);
        if (gain.isEmpty()) {
            return between("--worthwhile", worthwhile, "1.5%");
        }
        Amount power = level.filter(amount -> amount.unit().quantity() == gain.get().unit().quantity()).orElseThrow(() ->
                new UsageException("--worthwhile", "a gain of " + gain.get().words() + " needs the level in --power, such as --power 190"
                        + gain.get().unit().symbol() + "; or give it in percent, such as 1.5%"));
        double share = gain.get().differenceSi() / power.si();
        if (!(share > 0 && share < 1)) {
            throw new UsageException("--worthwhile", "must lie between 0 and the level, " + power.words() + ", was " + worthwhile);
        }
        return share;
    }

    private static AmbientWindow.Range range(String text) {
        Matcher ends = RANGE.matcher(text.strip());
        if (ends.matches()) {
            double low = Double.parseDouble(ends.group(1));
            double high = Double.parseDouble(ends.group(2));
            if (low > 0 && low < 1 && high > 1 && high <= 2) {
                return new AmbientWindow.Range(low, high);
            }
        }
        throw new UsageException("--factor-range", "expected a factor below 1 and one above it, such as 0.9-1.1; found “" + text + "”");
    }

    private static double between(String option, String text, String example) {
        double share = ReadingCheck.percent(option, text, example).si();
        if (!(share > 0 && share < 1)) {
            throw new UsageException(option, "must lie between 0 and 100 %, was " + text);
        }
        return share;
    }
}
