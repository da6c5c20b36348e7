package culm.workbench.internal.numbers;

import java.util.List;

import culm.blank.rules.Finding;
import culm.blank.rules.Verdict;
import culm.figures.Lengths;
import culm.model.text.Numbers;

/** In what lengths are shown and typed; files always hold mm. */
public enum LengthUnit {
    /** Millimetres. */
    MM(Lengths.MM, 1000, "m", 2),
    /** Thousandths of an inch. */
    THOU(Lengths.THOU, 0, "in", 1);

    private final Lengths drawn;
    private final double farFrom;
    private final String farSign;
    private final int farDigits;

    LengthUnit(Lengths drawn, double farFrom, String farSign, int farDigits) {
        this.drawn = drawn;
        this.farFrom = farFrom;
        this.farSign = farSign;
        this.farDigits = farDigits;
    }

    /** {@return the same for drawings} */
    public Lengths drawn() {
        return drawn;
    }

    /** {@return findings with the lengths of their sentences in this unit} @param findings as rules give them */
    public List<Finding> told(List<Finding> findings) {
        return this == MM ? findings : findings.stream().map(f -> f.in(drawn)).toList();
    }

    /** {@return a verdict with its lengths in this unit} @param verdict as it is given */
    public Verdict told(Verdict verdict) {
        return this == MM ? verdict : verdict.in(drawn);
    }

    /**
     * A length that is cut from a spool, such as the thread's: in metres from one metre on, or in inches.
     *
     * @param length mm
     * @return its text
     */
    public String far(double length) {
        double shown = drawn.of(length);
        return length < farFrom ? Numbers.fixed(shown, 0) + "\u2009" + sign() : Numbers.fixed(shown / 1000, farDigits) + "\u2009" + farSign;
    }

    /** {@return what stands behind the number} */
    public String sign() {
        return drawn.sign();
    }

    /** {@return one of it in mm} */
    public double mm() {
        return drawn.mm();
    }

    /** {@return how many decimals fewer than in mm say the same} */
    int fewerDigits() {
        return drawn.fewerDigits();
    }
}
