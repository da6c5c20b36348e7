package culm.geometry.profile;

/** What a number measures; lengths are mm and angles radians inside the program. */
public enum Quantity {
    /** A length, mm (shown as mm or thousandths of an inch). */
    LENGTH("mm"),
    /** A share or a relative change, without a unit (0.02 is 2 %). */
    SHARE(""),
    /** A number of things, such as turns. */
    COUNT(""),
    /** A mass for a length of thread, tex (g/km). */
    TEX("tex"),
    /** A density, kg/m^3. */
    DENSITY("kg/m³");

    private final String unit;

    Quantity(String unit) {
        this.unit = unit;
    }

    /** The unit's sign, empty for pure numbers. */
    public String unit() {
        return unit;
    }
}
