/** Before the day: what a sequence can see and what it costs. Uses {@code engine.stats}. */
package fairpull.engine.planning;
