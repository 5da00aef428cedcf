/** Curves out of the picture of a chart. */
package fairpull.app.usecase.tracing;
