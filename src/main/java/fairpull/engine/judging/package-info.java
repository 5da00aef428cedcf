/** Judges a table of pulls: the estimate, the verdict and the checks beside it, as numbers and codes. Uses {@code engine.stats}. */
package fairpull.engine.judging;
