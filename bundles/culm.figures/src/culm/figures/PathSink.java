package culm.figures;

/** Receives a path piece by piece; coordinates in drawing units, y downwards. */
public interface PathSink {
    void move(double x, double y);

    void line(double x, double y);

    /** A cubic curve with two control points. */
    void curve(double x1, double y1, double x2, double y2, double x, double y);

    void close();
}
