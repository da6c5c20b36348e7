package culm.explore;

import java.util.List;

import org.hipparchus.random.SobolSequenceGenerator;

/** Which combinations of the axes' values are tried. Rows are numbered from 0; any row can be told by itself. */
public sealed interface VariantPlan {
    /** How many rows. */
    long rows(List<Axis> axes);

    /** A thread's own reader of rows. */
    Reader reader(List<Axis> axes);

    /** Reads rows, in any order but best in theirs. */
    interface Reader {
        /**
         * One row.
         * @param value the number of each axis; for parts the choice's index; NaN where the base's own stays
         */
        void row(long row, double[] value);
    }

    /** Every combination; the first axis changes slowest. */
    record Grid() implements VariantPlan {
        /** @throws IllegalArgumentException beyond 10^15 rows */
        @Override
        public long rows(List<Axis> axes) {
            double product = axes.stream().mapToDouble(Axis::size).reduce(1, (x, y) -> x * y);
            if (product > 1e15) {
                throw new IllegalArgumentException("That grid would have more than 10^15 rows.");
            }
            return (long) product;
        }

        @Override
        public Reader reader(List<Axis> axes) {
            return (row, value) -> {
                long rest = row;
                for (int i = axes.size() - 1; i >= 0; i--) {
                    int size = axes.get(i).size();
                    value[i] = at(axes.get(i), (int) (rest % size));
                    rest /= size;
                }
            };
        }
    }

    /** The base's own values first, then each axis alone through all its values, the others as in the base. */
    record OneAtATime() implements VariantPlan {
        @Override
        public long rows(List<Axis> axes) {
            return 1 + axes.stream().mapToLong(Axis::size).sum();
        }

        @Override
        public Reader reader(List<Axis> axes) {
            return (row, value) -> {
                java.util.Arrays.fill(value, Double.NaN);
                long rest = row - 1;
                for (int i = 0; i < axes.size() && rest >= 0; i++) {
                    int size = axes.get(i).size();
                    if (rest < size) {
                        value[i] = at(axes.get(i), (int) rest);
                    }
                    rest -= size;
                }
            };
        }
    }

    /**
     * A low-discrepancy sample: Sobol's sequence (Hipparchus, direction numbers of Joe and Kuo 2008) without its first point; numbers anywhere between the
     * least and the most of their axis, parts by equal shares.
     */
    record Sample(int count) implements VariantPlan {
        /** Most axes that the sequence serves. */
        public static final int MOST_AXES = 1000;

        public Sample {
            if (count < 1) {
                throw new IllegalArgumentException("A sample needs at least one row.");
            }
        }

        @Override
        public long rows(List<Axis> axes) {
            return count;
        }

        @Override
        public Reader reader(List<Axis> axes) {
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(axes.size());
            long[] next = {0};
            return (row, value) -> {
                double[] point = row + 1 == next[0] ? sobol.nextVector() : sobol.skipTo((int) row + 1);
                next[0] = row + 2;
                for (int i = 0; i < value.length; i++) {
                    value[i] = axes.get(i) instanceof Axis.Numbers numbers ? numbers.least() + point[i] * (numbers.most() - numbers.least())
                            : Math.floor(point[i] * axes.get(i).size());
                }
            };
        }
    }

    private static double at(Axis axis, int index) {
        return axis instanceof Axis.Numbers numbers ? numbers.values()[index] : index;
    }
}
