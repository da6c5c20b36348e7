package culm.bench.batch;

import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.Closing;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;

/** What happens on one staple as the tie length changes. */
interface TieCourse {
    /** Height where the sides close, mm; NaN when they never do or it cannot be computed; negative infinity when further down than asked for. */
    double closes(double tie);

    /** How far the sides are open at the staple's top, mm; NaN when it cannot be computed. */
    double openAtTop(double tie);

    /** By the reference path: for every blank, and slowly. */
    static TieCourse reference(Blank blank) {
        double crooked = Math.abs(blank.number(Inputs.CROOKED));
        return new TieCourse() {
            private double tie = Double.NaN;
            private Closing closing;

            @Override
            public synchronized double closes(double length) {
                return or(at(length).at());
            }

            @Override
            public synchronized double openAtTop(double length) {
                return or(at(length).openAtTop());
            }

            private Closing at(double length) {
                if (length != tie) {
                    closing = ClosingFinder.find(blank.with(Inputs.TIE_LENGTH, length), crooked);
                    tie = length;
                }
                return closing;
            }

            private double or(OptionalDouble value) {
                return value.isPresent() ? value.getAsDouble() : Double.NaN;
            }
        };
    }
}
