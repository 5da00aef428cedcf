/**
 * How a car cools between pulls: time constants fitted to a log, what repeated pulls settle to, and the interval and warm-ups that hold
 * the start temperature. Sees {@code engine.stats} and the domain only.
 */
package fairpull.engine.heat;
