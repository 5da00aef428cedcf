/** Numerics on arrays: distributions, the mixed model of installs and pulls, outliers, randomisation. Knows no plan and no table. */
package fairpull.engine.stats;
