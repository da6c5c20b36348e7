package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Band;
import culm.blank.ThreadPath;
import culm.geometry.profile.Quantity;
import culm.model.text.Numbers;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** The results in words, in the order in which they matter at the bench. */
final class ResultLines {
    private static final double MM3_PER_CM3 = 1000;

    /**
     * One result.
     *
     * @param words what it is
     * @param value its number and unit
     * @param weak whether it only explains the line above
     */
    record Line(String words, String value, boolean weak) {
    }

    private final List<Line> lines = new ArrayList<>();
    private final NumberForm along;
    private final NumberForm across;

    private ResultLines(LengthUnit unit) {
        along = new NumberForm(Quantity.LENGTH, unit, 1);
        across = new NumberForm(Quantity.LENGTH, unit, 2);
    }

    static List<Line> of(Assessment a, LengthUnit unit) {
        ResultLines made = new ResultLines(unit);
        made.closing(a);
        made.lengths(a);
        made.thread(a);
        return List.copyOf(made.lines);
    }

    private void closing(Assessment a) {
        take("sides close at", a.sidesCloseAt(), a.closeBand(), along);
        if (a.turnsLeft().isPresent()) {
            lines.add(new Line("turns left", number(a.turnsLeft().getAsDouble(), 1), false));
            a.turnsBand().ifPresent(b -> lines.add(new Line("", "± " + number(b.half(), 1), true)));
        }
        a.openAtStapleTop().ifPresent(open -> lines.add(new Line(open <= 0 ? "pinched at staple top" : "open at staple top",
                across.computed(Math.abs(open)), false)));
        a.tieLengthPerTurn().ifPresent(t -> lines.add(new Line("tie, for one turn", along.computed(t), false)));
    }

    private void take(String words, OptionalDouble value, Optional<Band> band, NumberForm form) {
        if (value.isPresent()) {
            lines.add(new Line(words, form.computed(value.getAsDouble()), false));
            band.ifPresent(b -> lines.add(new Line("", "± " + form.computed(b.half()), true)));
        }
    }

    private void lengths(Assessment a) {
        a.caneOnStaple().ifPresent(c -> lines.add(new Line("cane on the staple", along.computed(c), false)));
        lines.add(new Line("cane above it", along.computed(a.caneAboveStaple()), false));
        a.boreVolume().ifPresent(v -> lines.add(new Line("bore", number(v / MM3_PER_CM3, 3) + "\u2009cm³", false)));
    }

    private void thread(Assessment a) {
        Optional<ThreadPath> path = a.thread();
        path.ifPresent(t -> {
            lines.add(new Line("thread", number(t.turnsUp(), 0) + " up, " + number(t.turnsDown(), 0) + " down", false));
            lines.add(new Line("", along.unit().far(t.length()) + " and tails", true));
        });
    }

    private static String number(double value, int decimals) {
        return Numbers.fixed(value, decimals).replace('-', '\u2212');
    }
}
