package culm.figures.chart;

import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Drawing;

/**
 * A chart with the way back from a place on the page to values.
 *
 * @param drawing the drawing
 * @param plot    where the values lie
 * @param x       the axis across
 * @param y       the axis up
 */
public record ChartDrawing(Drawing drawing, Box plot, Axis x, Axis y) {
}
