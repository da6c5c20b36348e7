package culm.figures;

import java.math.BigDecimal;

import culm.geometry.words.LengthText;
import culm.geometry.words.Told;

/**
 * In what a drawing writes its lengths; what is drawn stays in mm. Numbers have no more digits than a caliper in that unit.
 *
 * @param sign        what stands behind a length, such as {@code mm}
 * @param mm          one of it, mm, above 0
 * @param fewerDigits how many decimals fewer than in mm say the same
 * @param areaSign    what stands behind an area
 * @param areaMm2     one of that, mm², above 0
 * @param areaDigits  decimals of an area
 */
public record Lengths(String sign, double mm, int fewerDigits, String areaSign, double areaMm2, int areaDigits) implements LengthText {
    /** Millimetres. */
    public static final Lengths MM = new Lengths("mm", 1, 0, "mm\u00b2", 1, 1);
    /** Thousandths of an inch; areas in square inches, since they would have five digits before the point. */
    public static final Lengths THOU = new Lengths("thou", 0.0254, 1, "in\u00b2", 645.16, 4);

    /** @throws IllegalArgumentException when a unit has no size */
    public Lengths {
        if (!(mm > 0 && areaMm2 > 0)) {
            throw new IllegalArgumentException("a unit needs a size: " + sign);
        }
    }

    /** A length in this unit. @param length mm */
    public double of(double length) {
        return length / mm;
    }

    /** An area in this unit. @param area mm² */
    public double ofArea(double area) {
        return area / areaMm2;
    }

    /** A computed length without its unit. @param digits decimals that it has in mm */
    public String fixed(double length, int digits) {
        return Numbers.fixed(of(length), Math.max(0, digits - fewerDigits));
    }

    /** A computed length with its unit. @param digits decimals that it has in mm */
    public String text(double length, int digits) {
        return fixed(length, digits) + " " + sign;
    }

    /** A length in a sentence, without its unit. */
    @Override
    public String number(double length, int digits) {
        return digits != AS_GIVEN ? fixed(length, digits) : fewerDigits == 0 ? BigDecimal.valueOf(length).stripTrailingZeros().toPlainString() : fixed(length, 2).replaceFirst("\\.0$", "");
    }

    /** A sentence with its lengths in this unit. @param sentence as {@link Told} writes it */
    public String told(String sentence) {
        return fewerDigits == 0 ? Told.mm(sentence) : Told.in(sentence, this);
    }

    /** A length as it was given, without its unit: in mm two decimals where the second is not zero, else {@code digits} as {@link #fixed} takes them. */
    public String given(double length, int digits) {
        return fewerDigits == 0 ? Numbers.given(length) : fixed(length, digits);
    }

    /** A length without its unit, where it is given by the way: at most one decimal in mm. */
    public String brief(double length) {
        double parts = fewerDigits == 0 ? 10 : 1;
        return Numbers.plain(Math.round(of(length) * parts) / parts);
    }

    /** An area with its unit. @param area mm² */
    public String area(double area) {
        return Numbers.fixed(ofArea(area), areaDigits) + " " + areaSign;
    }

    /** Round numbers of this unit along an axis in mm; their values are in this unit, {@link #toMm} says where they lie. */
    public Ticks ticks(double from, double to, double most) {
        return Ticks.within(of(from), of(to), most);
    }

    /** A number in this unit as a length in mm. */
    public double toMm(double shown) {
        return shown * mm;
    }
}
