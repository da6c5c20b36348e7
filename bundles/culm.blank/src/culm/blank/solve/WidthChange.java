package culm.blank.solve;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Closing;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.blank.Widened;
import culm.blank.rules.Say;
import culm.geometry.GeometryException;
import culm.geometry.numeric.Roots;

/**
 * How much wider or narrower the cane would have to be shaped, the same all along, for the sides to close at a height.
 *
 * @param change length to add to every width (inside widths too), mm, to {@link Roots#TOLERANCE}; empty when there is none
 * @param no     why there is none
 */
public record WidthChange(OptionalDouble change, Optional<Bound> no) {
    /** Largest change that is tried, mm. */
    public static final double MOST = 1.5;
    private static final double SAME = 1e-6;

    /** The blank with every width changed by a length, mm. */
    public static Blank widened(Blank blank, double added) {
        return Widened.of(blank, Widened.by(blank) + added);
    }

    /** The change with which the sides of a blank (the worse side of a crooked one) close at a height, mm. */
    public static WidthChange forClosing(Blank blank, double height) {
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double end = blank.number(Inputs.TIE_LENGTH) - blank.number(Inputs.FOLDED_LENGTH);
        if (!(height > end && height <= top)) {
            return none(Bound.PARTS, "The sides cannot close at %s: the cane lies on the staple from %s to %s.", Say.mm(height), Say.mm(end), Say.mm(top));
        }
        double aside = Math.abs(blank.number(Inputs.CROOKED));
        Closing today = ClosingFinder.find(blank, aside);
        if (today.problem().isPresent()) {
            return none("notComputed", "%s", today.problem().get());
        }
        double low = reach(blank, height, -MOST);
        double high = reach(blank, height, MOST);
        if (open(blank, height, low) + aside < 0 || open(blank, height, high) + aside > 0) {
            return none("shape", "Even %s %s all along, the sides do not close at %s.", Say.fine(Math.abs(open(blank, height, high) + aside > 0 ? high : low)),
                    open(blank, height, high) + aside > 0 ? "wider" : "narrower", Say.mm(height));
        }
        double change = Roots.between(w -> open(blank, height, w) + aside, low, high);
        Closing closing = ClosingFinder.find(widened(blank, change), aside);
        if (closing.at().isEmpty() || Math.abs(closing.at().getAsDouble() - height) > SAME) {
            return none("opensAgain", "With the width changed by %s the sides meet at %s, but do not stay closed to the staple's top.", Say.fine(change), Say.mm(height));
        }
        return new WidthChange(OptionalDouble.of(change), Optional.empty());
    }

    /** The largest change towards a limit with which the blank can still be computed at a height. */
    private static double reach(Blank blank, double height, double limit) {
        double reach = limit;
        while (Math.abs(reach) > SAME && Double.isNaN(open(blank, height, reach))) {
            reach *= 0.8;
        }
        return reach;
    }

    private static double open(Blank blank, double height, double added) {
        try {
            return new Seam(widened(blank, added)).open(height);
        } catch (GeometryException refused) {
            return Double.NaN;
        }
    }

    private static WidthChange none(String rule, String format, Object... words) {
        return new WidthChange(OptionalDouble.empty(), Optional.of(new Bound(rule, String.format(Locale.ROOT, format, words))));
    }
}
