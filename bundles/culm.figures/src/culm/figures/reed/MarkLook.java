package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Mark;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.label.Label;

/** How the marks look: colour, weight and words; computed ones with one decimal, given ones as given. */
final class MarkLook {
    /** The marks in the order in which they matter; what comes last is left out first where there is no room. */
    private static final List<Mark> ORDER = List.of(Mark.SIDES_CLOSE, Mark.WRAP_TOP, Mark.STAPLE_TOP, Mark.FOLD, Mark.FINISHED, Mark.CANE_END,
            Mark.CORK_TOP, Mark.WRAP_BOTTOM);
    private final Reed reed;
    private final Limits limits;
    private final Lengths unit;

    MarkLook(Reed reed, Limits limits, Lengths unit) {
        this.reed = reed;
        this.limits = limits;
        this.unit = unit;
    }

    /** In what the marks' heights are written. */
    Lengths unit() {
        return unit;
    }

    /** Whether the turns left are within the limits. */
    boolean fits() {
        OptionalDouble turns = reed.assessment().turnsLeft();
        return turns.isPresent() && turns.getAsDouble() >= limits.get(Limits.TURNS_FEWEST) && turns.getAsDouble() <= limits.get(Limits.TURNS_MOST);
    }

    /** Whether the whole give or take of the turns left is within the limits too. */
    boolean surely() {
        return fits() && reed.assessment().turnsBand().filter(b -> !b.open() && b.low() >= limits.get(Limits.TURNS_FEWEST)
                && b.high() <= limits.get(Limits.TURNS_MOST)).isPresent();
    }

    /** The colour of where the sides close; only what surely fits is green. */
    Role closing() {
        return surely() ? Role.FITS : fits() ? Role.INK : Role.DOES_NOT;
    }

    Role role(Mark mark) {
        return switch (mark) {
            case SIDES_CLOSE -> closing();
            case WRAP_TOP -> reed.wrapTop() > reed.stapleTop() ? Role.DOES_NOT : Role.THREAD;
            case WRAP_BOTTOM -> Role.THREAD;
            default -> Role.INK;
        };
    }

    static boolean bold(Mark mark) {
        return mark == Mark.SIDES_CLOSE || mark == Mark.WRAP_TOP || mark == Mark.FOLD;
    }

    /** Whether it can be moved by itself. */
    static boolean movable(Mark mark) {
        return !mark.path().isEmpty();
    }

    /** The number of a mark at a height, without its unit. */
    String number(Mark mark, double z) {
        return movable(mark) ? unit.given(z, 1) : unit.fixed(z, 1);
    }

    /** Labels of the marks that a scale shows, the most important ones first. */
    List<Label> labels(Scale scale) {
        List<Label> labels = new ArrayList<>();
        for (Mark mark : shown(scale)) {
            double z = reed.mark(mark).getAsDouble();
            labels.add(new Label(mark.id(), scale.x(z), mark.label() + " " + number(mark, z), number(mark, z), bold(mark), role(mark)));
        }
        return labels;
    }

    /** The marks that a scale shows. The bottom of the wrap is not repeated where it is the cork's top. */
    List<Mark> shown(Scale scale) {
        List<Mark> shown = new ArrayList<>();
        for (Mark mark : ORDER) {
            boolean twice = mark == Mark.WRAP_BOTTOM && Double.isNaN(reed.number(Inputs.WRAP_BOTTOM));
            if (!twice && reed.mark(mark).isPresent() && scale.shows(reed.mark(mark).getAsDouble())) {
                shown.add(mark);
            }
        }
        return shown;
    }
}
