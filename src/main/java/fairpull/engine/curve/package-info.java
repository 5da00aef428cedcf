/** From the channels of one pull to the value of a measure: the sweep, the curve over engine speed, elapsed times. Pure functions. */
package fairpull.engine.curve;
