/** A picture of a chart, its axes, and the curves that are traced from it: first in pixels, then in the units of the chart. */
package fairpull.domain.tracing;
