package culm.workbench.internal.numbers;

/** In what lengths are shown and typed; files always hold mm. */
public enum LengthUnit {
    /** Millimetres. */
    MM("mm", 1, 0),
    /** Thousandths of an inch. */
    THOU("thou", 0.0254, 1);

    private final String sign;
    private final double mm;
    private final int fewerDigits;

    LengthUnit(String sign, double mm, int fewerDigits) {
        this.sign = sign;
        this.mm = mm;
        this.fewerDigits = fewerDigits;
    }

    /** {@return what stands behind the number} */
    public String sign() {
        return sign;
    }

    /** {@return one of it in mm} */
    public double mm() {
        return mm;
    }

    /** {@return how many decimals fewer than in mm say the same} */
    int fewerDigits() {
        return fewerDigits;
    }
}
