package fairpull.domain.curve;

import fairpull.domain.plan.Part;

/**
 * What bringing a pull onto the grid did to it.
 *
 * @param install its install
 * @param part what was fitted
 * @param pull its name within the install
 * @param lowRadPerS the lowest speed it covers; nothing is said below it
 * @param highRadPerS the highest speed it covers; nothing is said above it
 * @param rawPeak its largest value as recorded, in the unit of the curves
 * @param gridPeak its largest value on the grid; NaN where it covers no speed of the grid
 * @param interpolated at how many speeds of the grid too few values lay within the bandwidth, so that neighbours were joined by a line
 */
public record PullOnGrid(String install, Part part, String pull, double lowRadPerS, double highRadPerS, double rawPeak, double gridPeak,
        int interpolated) {
}
