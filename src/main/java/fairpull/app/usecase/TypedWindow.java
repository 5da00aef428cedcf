package fairpull.app.usecase;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.WindowQuestion;
import java.util.Optional;

/**
 * The question about the ambient window as it is typed, in percent.
 *
 * @param worthwhile the worthwhile gain
 * @param share of it that the correction may get wrong
 * @param modelError error of the correction itself, as a share of its distance from 1
 */
public record TypedWindow(String worthwhile, Optional<String> share, Optional<String> modelError) {

    /** {@return the question about this air} */
    WindowQuestion question(AirReading now, Optional<AirReading> first, boolean needsHumidity) {
        if (needsHumidity && now.humidity() instanceof Humidity.NotRead) {
            throw new UsageException("--window", "needs the humidity: give --humidity, --dew-point or --wet-bulb");
        }
        return new WindowQuestion(between("--worthwhile", worthwhile, "1.5%"),
                share.map(text -> between("--share", text, "25%")).orElse(WindowQuestion.SHARE_GUESS),
                modelError.map(text -> between("--model-error", text, "10%")).orElse(WindowQuestion.MODEL_ERROR_GUESS), now, first);
    }

    private static double between(String option, String text, String example) {
        double share = ReadingCheck.percent(option, text, example).si();
        if (!(share > 0 && share < 1)) {
            throw new UsageException(option, "must lie between 0 and 100 %, was " + text);
        }
        return share;
    }
}
