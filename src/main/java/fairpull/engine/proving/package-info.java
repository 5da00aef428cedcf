/** A plan proved by simulation: campaigns drawn, judged by the judge's own core, counted. Uses {@code judging} and {@code stats}. */
package fairpull.engine.proving;
