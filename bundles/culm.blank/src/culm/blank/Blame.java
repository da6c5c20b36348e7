package culm.blank;

import java.util.Locale;
import java.util.function.DoubleSupplier;

import culm.geometry.GeometryException;
import culm.geometry.guard.Failure;
import culm.geometry.profile.ProfileType;
import culm.geometry.section.Section;
import culm.geometry.words.Told;

/**
 * Finds out whose fault it is when the seam cannot be computed: each part is asked alone, and the first that throws or gives no number is named. Only
 * called after something went wrong.
 */
final class Blame {
    private static final int ASKED = 16;

    private Blame() {
    }

    /** The refusal that names the type at fault. @param thrown what was thrown; null when a result was no number */
    static GeometryException of(Blank blank, Parts parts, double z, double s, RuntimeException thrown) {
        try {
            Section section = parts.staple().outside(z);
            for (int i = 0; i <= ASKED; i++) {
                double psi = Math.PI / 2 * i / ASKED;
                number(() -> section.curvatureRadius(psi));
            }
            number(section::perimeter);
        } catch (RuntimeException e) {
            return said("staple", blank.staple().type(), "the outside", z, e);
        }
        try {
            for (int i = 0; i <= ASKED; i++) {
                double phi = Math.PI / 2 * i / ASKED;
                number(() -> parts.gouge().at(s).thickness(phi));
            }
            number(() -> parts.gouge().at(s).integral(1));
        } catch (RuntimeException e) {
            return said("gouge", blank.gouge().type(), "the thickness", z, e);
        }
        try {
            number(() -> parts.width().at(s));
        } catch (RuntimeException e) {
            return said("shape", blank.shape().type(), "the width", z, e);
        }
        return new GeometryException("", String.format(Locale.ROOT, "The sides cannot be computed at %s%s.", Told.length(z, 1),
                thrown == null ? "" : ": " + Failure.words(thrown)));
    }

    /** The refusal of a type that failed while the part was built. */
    static GeometryException building(String part, ProfileType type, Throwable thrown) {
        return new GeometryException(part, "The " + part + " type \"" + type.name() + "\" failed: " + Failure.words(thrown) + ".");
    }

    private static GeometryException said(String part, ProfileType type, String what, double z, RuntimeException e) {
        if (e instanceof GeometryException refused) {
            return refused.under(part);
        }
        return new GeometryException(part, String.format(Locale.ROOT, "The %s type \"%s\" %s for %s at %s.", part, type.name(),
                e instanceof NoNumber ? "gives no number" : "failed (" + Failure.words(e) + ")", what, Told.length(z, 1)));
    }

    private static void number(DoubleSupplier asked) {
        double value = asked.getAsDouble();
        if (!Double.isFinite(value)) {
            throw new NoNumber();
        }
    }

    private static final class NoNumber extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
