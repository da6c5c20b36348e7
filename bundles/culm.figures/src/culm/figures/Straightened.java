package culm.figures;

/**
 * Hands a path on with fewer points: a point is left out where the line without it passes within {@value #NEAR} of it. Outlines have a point for each
 * half mm and more, and each takes time to paint, also where they are straight.
 */
public final class Straightened implements PathSink {
    /** Less than can be seen on any screen, drawing units. */
    public static final double NEAR = 0.05;
    private final PathSink to;
    private double fromX;
    private double fromY;
    private double heldX;
    private double heldY;
    private boolean held;
    /** A line from the last point that stays may go between these two directions; none yet where both are zero. */
    private double leftX;
    private double leftY;
    private double rightX;
    private double rightY;

    private Straightened(PathSink to) {
        this.to = to;
    }

    /**
     * Hands a whole path on.
     *
     * @param path the path
     * @param to what is left of it goes there
     */
    public static void walk(Path path, PathSink to) {
        Straightened all = new Straightened(to);
        path.walk(all);
        all.release();
    }

    @Override
    public void move(double x, double y) {
        release();
        to.move(x, y);
        begin(x, y);
    }

    @Override
    public void line(double x, double y) {
        if (held && !through(x, y)) {
            release();
        }
        if (!held) {
            leftX = 0;
            leftY = 0;
            rightX = 0;
            rightY = 0;
        }
        narrow(x, y);
        heldX = x;
        heldY = y;
        held = true;
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
        release();
        to.curve(x1, y1, x2, y2, x, y);
        begin(x, y);
    }

    @Override
    public void close() {
        release();
        to.close();
    }

    private void begin(double x, double y) {
        fromX = x;
        fromY = y;
    }

    /** The held point is one of those that stay. */
    private void release() {
        if (held) {
            to.line(heldX, heldY);
            begin(heldX, heldY);
            held = false;
        }
    }

    /** Whether a line to a point passes all that are held between, and goes on as they do. */
    private boolean through(double x, double y) {
        double dx = x - fromX;
        double dy = y - fromY;
        double ahead = (x - heldX) * (heldX - fromX) + (y - heldY) * (heldY - fromY);
        return ahead >= 0 && leftX * dy - leftY * dx >= 0 && dx * rightY - dy * rightX >= 0;
    }

    /** Lines that go on have to pass near this point, too. */
    private void narrow(double x, double y) {
        double dx = x - fromX;
        double dy = y - fromY;
        double far = Math.sqrt(dx * dx + dy * dy);
        if (far <= NEAR) {
            return;
        }
        double sine = NEAR / far;
        double cosine = Math.sqrt(1 - sine * sine);
        double fromLeftX = cosine * dx + sine * dy;
        double fromLeftY = cosine * dy - sine * dx;
        if (leftX * fromLeftY - leftY * fromLeftX >= 0) {
            leftX = fromLeftX;
            leftY = fromLeftY;
        }
        double fromRightX = cosine * dx - sine * dy;
        double fromRightY = cosine * dy + sine * dx;
        if (fromRightX * rightY - fromRightY * rightX >= 0) {
            rightX = fromRightX;
            rightY = fromRightY;
        }
    }
}
