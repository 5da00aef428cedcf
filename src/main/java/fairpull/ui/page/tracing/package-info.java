/** A chart in a picture is traced: the picture with its points, the axes, the curves, their table. It needs no test and stands alone. */
package fairpull.ui.page.tracing;
