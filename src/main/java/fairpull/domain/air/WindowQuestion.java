package fairpull.domain.air;

import java.util.Optional;

/**
 * In what air may pulls run?
 *
 * @param worthwhileGain the worthwhile gain as a share of the level
 * @param share of it that the correction may get wrong
 * @param modelError error of the correction itself, as a share of its change between two installs
 * @param now the air now
 * @param first the air at the first install, where there has been one
 * @param factors the range of factors within which the standard may be used, where another than its own is asked for
 */
public record WindowQuestion(double worthwhileGain, double share, double modelError, AirReading now, Optional<AirReading> first,
        Optional<AmbientWindow.Range> factors) {
    /** Starting guess, engineering judgement with no source. */
    public static final double MODEL_ERROR_GUESS = 0.1;
    /** Starting guess: a quarter of the worthwhile gain leaves three quarters to what is tested. */
    public static final double SHARE_GUESS = 0.25;

    public WindowQuestion {
        if (!(worthwhileGain > 0 && worthwhileGain < 1)) {
            throw new IllegalArgumentException("a worthwhile gain must lie between 0 and 100 %, was " + 100 * worthwhileGain + " %");
        }
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share must lie between 0 and 100 %, was " + 100 * share + " %");
        }
        factors.ifPresent(range -> {
            if (!(range.low() > 0 && range.low() < 1 && range.high() > 1 && range.high() <= 2)) {
                throw new IllegalArgumentException("a range of factors runs from below 1 to between 1 and 2, was " + range.low() + " to "
                        + range.high());
            }
        });
        if (!(modelError > 0 && modelError <= 1)) {
            throw new IllegalArgumentException("a model error must lie between 0 and 100 %, was " + 100 * modelError + " %");
        }
    }

    /** {@return the error allowed, relative to the level} */
    public double allowedError() {
        return worthwhileGain * share;
    }

    /** {@return the air from which a change counts: that of the first install, or the present one where there has been none} */
    public AirReading start() {
        return first.orElse(now);
    }

    /** {@return the same question after a first install in this air} */
    public WindowQuestion withFirst(AirReading air) {
        return new WindowQuestion(worthwhileGain, share, modelError, now, Optional.of(air), factors);
    }
}
