package fairpull.domain.search;

/**
 * A day that no other one beats in both length and detectable gain, told shortly.
 *
 * @param order its installs in letters
 * @param pulls counted pulls per install
 * @param warmUps warm-up pulls per install
 * @param minutes how long it takes
 * @param detectableGain smallest gain found with the power wanted
 */
public record FrontDay(String order, int pulls, int warmUps, double minutes, double detectableGain) {
}
