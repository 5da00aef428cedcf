/**
 * From the channels of one pull to the value of a measure: the sweep, the curve over engine speed, elapsed times, responses,
 * power out of motion; and whether the sweeps of several pulls can be compared. Pure functions.
 */
package fairpull.engine.curve;
