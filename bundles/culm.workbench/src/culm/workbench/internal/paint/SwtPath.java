package culm.workbench.internal.paint;

import org.eclipse.swt.graphics.Device;

import culm.figures.Path;
import culm.figures.PathSink;
import culm.figures.Straightened;

/** A path of a drawing as one of SWT; to be disposed. */
final class SwtPath implements PathSink {
    private final org.eclipse.swt.graphics.Path path;

    private SwtPath(Device device) {
        path = new org.eclipse.swt.graphics.Path(device);
    }

    static org.eclipse.swt.graphics.Path of(Device device, Path path) {
        SwtPath sink = new SwtPath(device);
        Straightened.walk(path, sink);
        return sink.path;
    }

    @Override
    public void move(double x, double y) {
        path.moveTo((float) x, (float) y);
    }

    @Override
    public void line(double x, double y) {
        path.lineTo((float) x, (float) y);
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
        path.cubicTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x, (float) y);
    }

    @Override
    public void close() {
        path.close();
    }
}
