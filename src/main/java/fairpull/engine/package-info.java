/** Pure functions: the same input gives the same output. No clock, no files, no logging, no threads, no unseeded randomness. */
package fairpull.engine;
