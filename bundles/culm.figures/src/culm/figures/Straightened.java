package culm.figures;

/**
 * Hands a path on with fewer points: a point is left out where the line without it passes within {@value #NEAR} of it. Outlines have a point for each
 * half mm and more, and each takes time to paint, also where they are straight.
 */
public final class Straightened implements PathSink {
    /** Less than can be seen on any screen, drawing units. */
    public static final double NEAR = 0.03;
    private final PathSink to;
    private double fromX;
    private double fromY;
    private double heldX;
    private double heldY;
    private boolean held;
    /** Where a line may go from the last point that stays, from a direction on, radians. */
    private double direction;
    private double left;
    private double right;

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
            left = Double.NEGATIVE_INFINITY;
            right = Double.POSITIVE_INFINITY;
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

    private static double turned(double angle) {
        return angle - 2 * Math.PI * Math.rint(angle / (2 * Math.PI));
    }

    /** Whether a line to a point passes all that are held between, and goes on as they do. */
    private boolean through(double x, double y) {
        double dx = x - fromX;
        double dy = y - fromY;
        double ahead = (x - heldX) * (heldX - fromX) + (y - heldY) * (heldY - fromY);
        double off = turned(Math.atan2(dy, dx) - direction);
        return ahead >= 0 && off >= left && off <= right;
    }

    /** Lines that go on have to pass near this point, too. */
    private void narrow(double x, double y) {
        double dx = x - fromX;
        double dy = y - fromY;
        double far = Math.hypot(dx, dy);
        if (!held) {
            direction = Math.atan2(dy, dx);
        }
        if (far <= NEAR) {
            return;
        }
        double off = turned(Math.atan2(dy, dx) - direction);
        double half = Math.asin(NEAR / far);
        left = Math.max(left, off - half);
        right = Math.min(right, off + half);
    }
}
