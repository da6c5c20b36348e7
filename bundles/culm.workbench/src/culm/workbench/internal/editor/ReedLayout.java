package culm.workbench.internal.editor;

import culm.blank.Limits;
import culm.figures.Lengths;
import culm.figures.Scale;
import culm.figures.TextMeasure;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedDrawing;
import culm.figures.reed.ReedOptions;
import culm.figures.reed.ReedView;

/**
 * How the reed is laid out on its canvas.
 *
 * @param width of the drawing, drawing units
 * @param graph height of the graph, drawing units
 * @param from lowest height shown, mm; NaN where the whole reed is shown
 * @param to highest height shown, mm; NaN where the whole reed is shown
 * @param limits what is judged by
 * @param unit in what lengths are written
 */
record ReedLayout(double width, double graph, double from, double to, Limits limits, Lengths unit) {
    private static final int ROWS = 4;
    private static final double LANE_MOST = 260;

    /** Draws a reed so. */
    ReedDrawing draw(Reed reed, TextMeasure measure) {
        Scale whole = ReedView.fitting(reed, width);
        Scale scale = Double.isNaN(from) ? whole : new Scale(from, to, whole.left(), whole.right());
        return ReedView.draw(reed, limits, scale, measure, new ReedOptions(1, ROWS, graph, true, LANE_MOST, unit));
    }
}
