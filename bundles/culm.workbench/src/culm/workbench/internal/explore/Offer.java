package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.blank.Blank;
import culm.blank.Input;
import culm.explore.Varied;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** What of a design may be varied: a number, or a part of the studio. */
sealed interface Offer {
    /** A path, {@link Varied#WIDTH}, or a kind of part. */
    String id();

    /** The bench's words. */
    String words();

    /** A number of the design. @param input its description; empty for all widths at once */
    record Number(String id, String words, Optional<Input> input) implements Offer {
        /** How it is shown and typed. */
        NumberForm form(LengthUnit unit) {
            return input.map(i -> NumberForm.of(i.parameter().quantity(), unit, i.tolerance().plusMinus()))
                    .orElseGet(() -> new NumberForm(culm.geometry.profile.Quantity.LENGTH, unit, 2));
        }

        /** Values to begin with. */
        String values(LengthUnit unit) {
            return input.map(i -> ValuesText.around(i, form(unit))).orElseGet(() -> ValuesText.range(form(unit), -0.2, 0.2, 0.05));
        }
    }

    /** Parts of the studio. @param id staple, gouge, shape or thread */
    record Parts(String id, String words) implements Offer {
    }

    /** The kinds of parts. */
    List<Parts> PARTS = List.of(new Parts("staple", "staples of the studio"), new Parts("gouge", "gouges of the studio"), new Parts("shape", "shapes of the studio"),
            new Parts("thread", "threads of the studio"));

    /** Everything a blank offers: the lengths of the tie first, then the rest in the order of the form, then parts. */
    static List<Offer> of(Blank blank) {
        List<Offer> all = new ArrayList<>();
        List<Input> inputs = blank.inputs().stream().filter(i -> !i.path().startsWith("fit.")).toList();
        inputs.stream().filter(i -> i.path().startsWith("tie.")).forEach(i -> all.add(number(blank, i)));
        all.add(new Number(Varied.WIDTH, Varied.label(blank, Varied.WIDTH), Optional.empty()));
        inputs.stream().filter(i -> !i.path().startsWith("tie.")).forEach(i -> all.add(number(blank, i)));
        all.addAll(PARTS);
        return all;
    }

    private static Offer number(Blank blank, Input input) {
        return new Number(input.path(), Varied.label(blank, input.path()), Optional.of(input));
    }
}
