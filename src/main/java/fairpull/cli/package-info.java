/** The command line: one small class a verb, over the use cases. Sees domain and app only; the only place that prints. */
package fairpull.cli;
