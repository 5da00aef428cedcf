/**
 * Curves read from the picture of a chart: what a pixel holds of a line's colour, a line followed column by column, its places turned
 * into the values of the axes, and how far each may be wrong. Sees the domain only.
 */
package fairpull.engine.tracing;
