package fairpull.domain.heat;

/**
 * One exponential of a fitted cool-down.
 *
 * @param timeConstantS seconds in which it falls to 1/e
 * @param standardErrorS its standard error
 * @param lowS lower end of its interval, symmetric in the logarithm
 * @param highS upper end
 * @param amplitudeK its height at the first reading
 * @param amplitudeErrorK the standard error of that
 */
public record FittedMode(double timeConstantS, double standardErrorS, double lowS, double highS, double amplitudeK,
                         double amplitudeErrorK) {
}
