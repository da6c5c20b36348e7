package culm.design.compare;

import org.eclipse.emf.ecore.EObject;

import culm.blank.Inputs;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Quantity;
import culm.geometry.words.Told;
import culm.model.Part;
import culm.model.text.Numbers;

/** Numbers with their units. Lengths stand as {@link Told} writes them, so that a text can be written in another unit when it is shown. */
final class Measures {
    private static final double PERCENT = 100;
    private static final double ROUND = 1e9;

    private Measures() {
    }

    /** A number without its unit. @param measures what it is; null when that is not known */
    static String number(Quantity measures, double value) {
        if (measures == Quantity.LENGTH) {
            return Told.given(value, Numbers.format(value));
        }
        return Numbers.format(measures == Quantity.SHARE ? Math.rint(value * PERCENT * ROUND) / ROUND : value);
    }

    /** What stands behind a number, with the space before it; empty for none. */
    static String unit(Quantity measures, double value) {
        if (measures == null) {
            return "";
        }
        return switch (measures) {
            case LENGTH -> " " + Told.UNIT;
            case SHARE -> " %";
            case COUNT -> Math.abs(value) == 1 ? " turn" : " turns";
            default -> " " + measures.unit();
        };
    }

    /** A number with its unit. */
    static String of(Quantity measures, double value) {
        return number(measures, value) + unit(measures, value);
    }

    /** What a feature of an element measures. What the inputs do not hold is a length, or turns where it says so. */
    static Quantity of(EObject owner, String feature) {
        Parameter input = input(owner, feature);
        return input != null ? input.quantity() : feature.startsWith("turns") ? Quantity.COUNT : Quantity.LENGTH;
    }

    /** The input that a feature of an element is; null for none. */
    static Parameter input(EObject owner, String feature) {
        String part = owner instanceof Part p ? Names.apart(p.eClass().getName().replace("Part", "")) : owner.eContainingFeature() == null ? "" : owner.eContainingFeature().getName();
        return Inputs.all().get(part + "." + feature);
    }
}
