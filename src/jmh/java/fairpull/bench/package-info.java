/** Benchmarks; run by the profile {@code jmh}, see DEVELOPERS.md. */
package fairpull.bench;
