package culm.explore.internal.fast;

import culm.blank.Inputs;

/** The oval top of a staple, scaled where its perimeter was measured with thread. */
final class TopLanes {
    /** Semi-axes, mm; NaN where thread and axes contradict each other. */
    final double[] a = new double[Columns.SIZE];
    final double[] b = new double[Columns.SIZE];
    /** Quarter of the perimeter, mm. */
    final double[] quarter = new double[Columns.SIZE];
    private final double[] wide;
    private final double[] narrow;
    private final double[] turns;
    private final double[] thread;
    private final double[] unwound;
    private final double[] still = new double[Columns.SIZE];
    private final double[] unused = new double[Columns.SIZE];

    TopLanes(Columns columns, String widePath, String narrowPath) {
        wide = columns.of(widePath);
        narrow = columns.of(narrowPath);
        boolean wound = columns.base().value(Inputs.CHECK_TURNS).isPresent() || columns.base().value(Inputs.CHECK_THREAD).isPresent()
                || columns.base().value(Inputs.CHECK_LENGTH).isPresent();
        turns = wound ? columns.of(Inputs.CHECK_TURNS) : null;
        thread = wound ? columns.of(Inputs.CHECK_THREAD) : null;
        unwound = wound ? columns.of(Inputs.CHECK_LENGTH) : null;
    }

    void prepare(int n) {
        for (int l = 0; l < n; l++) {
            a[l] = 0.5 * wide[l];
            b[l] = 0.5 * narrow[l];
        }
        EllipseLanes.quarter(a, b, still, still, quarter, unused, n);
        if (turns != null) {
            scale(n);
        }
    }

    private void scale(int n) {
        for (int l = 0; l < n; l++) {
            double turn = unwound[l] / turns[l];
            double measured = Math.sqrt(Math.max(0, turn * turn - thread[l] * thread[l])) - Math.PI * thread[l];
            double k = measured / (4 * quarter[l]);
            k = k > 0.7 && k < 1.4 ? k : Double.NaN;
            a[l] *= k;
            b[l] *= k;
            quarter[l] *= k;
        }
    }
}
