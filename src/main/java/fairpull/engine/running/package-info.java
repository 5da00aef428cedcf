/**
 * A day while it is run: what is next, which gates hold, the rest of it re-timed, what to drop. No clock: the time now is given. May use
 * {@code engine.planning} and {@code engine.stats}; it knows no estimate of the change, so none can be shown before a look.
 */
package fairpull.engine.running;
