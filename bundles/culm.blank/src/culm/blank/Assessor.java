package culm.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

import culm.geometry.GeometryException;

/** Computes every number of a blank. A number that cannot be had is left empty and its reason recorded; nothing is thrown for a bad blank. */
public final class Assessor {
    private final Blank blank;
    private final Optional<Executor> besides;
    private final List<Trouble> troubles = new ArrayList<>();

    private Assessor(Blank blank, Optional<Executor> besides) {
        this.blank = blank;
        this.besides = besides;
    }

    /** Assesses a blank. */
    public static Assessment assess(Blank blank) {
        return told(blank, true, Optional.empty());
    }

    /**
     * Assesses a blank, a part of it at the same time elsewhere; the numbers are the same.
     *
     * @param blank   the blank, with types that several threads may ask at once
     * @param besides where a part of it is computed
     */
    public static Assessment assess(Blank blank, Executor besides) {
        return told(blank, true, Optional.of(besides));
    }

    /** Only closing, turns left, openings and marks: for solvers that try many blanks. Give or take, sensitivities, thread and bore are empty. */
    public static Assessment outline(Blank blank) {
        return told(blank, false, Optional.empty());
    }

    /** Nothing computed, only the marks that are given: to prepare what does not depend on where the sides close. */
    public static Assessment given(Blank blank) {
        return bare(blank, Closing.refused("", "Not computed yet."), List.of());
    }

    private static Assessment told(Blank blank, boolean whole, Optional<Executor> besides) {
        try {
            return new Assessor(blank, besides).run(whole);
        } catch (GeometryException late) {
            return refused(blank, late);
        }
    }

    private static double caneAbove(Blank blank) {
        double above = blank.number(Inputs.TIE_LENGTH) - blank.number(Inputs.STAPLE_LENGTH);
        return Double.isFinite(above) ? above : 0;
    }

    /** A refusal that came after the closing was found, as when a plug-in's type fails for a slope: nothing computed with it is told. */
    private static Assessment refused(Blank blank, GeometryException why) {
        return bare(blank, Closing.refused(why.path(), why.told()), List.of(new Trouble("sidesCloseAt", why.path(), why.told())));
    }

    private static Assessment bare(Blank blank, Closing none, List<Trouble> troubles) {
        OptionalDouble no = OptionalDouble.empty();
        return new Assessment(blank, false, none, none, none, Optional.empty(), no, Optional.empty(), no, Optional.empty(), no, no, no,
                caneAbove(blank), new Heights(blank, no), Optional.empty(), no, List.of(), troubles);
    }

    private Assessment run(boolean whole) {
        double crooked = blank.number(Inputs.CROOKED);
        Closing[] sides = ClosingFinder.sides(blank, crooked);
        Closing left = sides[0];
        Closing right = sides[1];
        Closing judged = crooked < 0 ? right : left;
        judged.refusal().ifPresent(why -> troubles.add(new Trouble("sidesCloseAt", judged.path(), why)));
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double tie = blank.number(Inputs.TIE_LENGTH);
        double wrapTop = blank.number(Inputs.WRAP_TOP);
        double pitch = blank.number(Inputs.THREAD_PITCH);
        double end = tie - blank.number(Inputs.FOLDED_LENGTH);
        boolean laid = !judged.course().isEmpty();
        Supplier<Wound> wound = whole ? apart(() -> wound(laid)) : () -> new Wound(Optional.empty(), Optional.empty());

        OptionalDouble at = judged.at();
        List<Sensitivity> slopes = List.of();
        OptionalDouble turns = OptionalDouble.empty();
        OptionalDouble perTurn = OptionalDouble.empty();
        if (at.isPresent()) {
            double z = at.getAsDouble();
            turns = OptionalDouble.of((wrapTop - z) / pitch);
            slopes = !whole || judged.closedEverywhere() ? List.of() : new Slopes(blank, z, besides).closing();
            perTurn = slopes.stream().filter(s -> s.input().path().equals(Inputs.TIE_LENGTH) && s.closing() != 0)
                    .mapToDouble(s -> pitch / s.closing()).findFirst();
        }
        OptionalDouble openTop = judged.openAtTop();
        Optional<GiveOrTake> bands = laid && whole ? bands(at, slopes) : Optional.empty();
        OptionalDouble openWrap = laid && wrapTop <= top && wrapTop >= end
                ? value("openAtWrapTop", () -> new Seam(blank).open(wrapTop) + Math.abs(crooked)) : OptionalDouble.empty();
        if (wrapTop > top) {
            troubles.add(new Trouble("openAtWrapTop", Inputs.WRAP_TOP, "The wrap stops above the staple's top; there is nothing to measure against."));
        }
        OptionalDouble on = laid ? OptionalDouble.of(top - end) : OptionalDouble.empty();
        return new Assessment(blank, !whole, judged, left, right, bands.flatMap(GiveOrTake::closing), turns,
                bands.flatMap(GiveOrTake::turns), openTop, bands.flatMap(GiveOrTake::openAtTop), openWrap, perTurn, on, caneAbove(blank),
                new Heights(blank, at), thread(wound.get()),
                whole ? value("boreVolume", () -> boreVolume()) : OptionalDouble.empty(), slopes, List.copyOf(troubles));
    }

    private Optional<GiveOrTake> bands(OptionalDouble at, List<Sensitivity> slopes) {
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double uncertainty = Math.sqrt(slopes.stream().mapToDouble(s -> s.contribution() * s.contribution()).sum());
        try {
            return Optional.of(GiveOrTake.of(blank, at.isPresent() ? top - at.getAsDouble() : Double.NaN, uncertainty, besides));
        } catch (GeometryException e) {
            troubles.add(new Trouble("sidesCloseBand", e.path(), e.told()));
            return Optional.empty();
        }
    }

    /** The thread's way, or why there is none. */
    private record Wound(Optional<ThreadPath> path, Optional<Trouble> trouble) {
        static Wound not(String path, String why) {
            return new Wound(Optional.empty(), Optional.of(new Trouble("thread", path, why)));
        }
    }

    private <R> Supplier<R> apart(Supplier<R> work) {
        return besides.<Supplier<R>>map(where -> CompletableFuture.supplyAsync(work, where)::join).orElse(work);
    }

    private Optional<ThreadPath> thread(Wound wound) {
        wound.trouble().ifPresent(troubles::add);
        return wound.path();
    }

    private Wound wound(boolean laid) {
        double bottom = Heights.wrapBottom(blank);
        double top = blank.number(Inputs.WRAP_TOP);
        if (Double.isNaN(bottom)) {
            return Wound.not(Inputs.WRAP_BOTTOM, "Without a cork, the bottom of the wrap has to be given to tell the thread's length.");
        }
        if (!laid || top > blank.number(Inputs.STAPLE_LENGTH) || bottom >= top) {
            return Wound.not(Inputs.WRAP_TOP, bottom >= top ? "The bottom of the wrap is not below its top."
                    : "The thread's length cannot be told before cane, wrap and staple go together.");
        }
        try {
            return new Wound(Optional.of(ThreadPath.along(new Seam(blank), bottom, top, blank.number(Inputs.THREAD_DIAMETER), blank.number(Inputs.THREAD_PITCH),
                    blank.number(Inputs.START_TURNS))), Optional.empty());
        } catch (GeometryException e) {
            return Wound.not(e.path(), e.told());
        }
    }

    private double boreVolume() {
        try {
            return blank.parts().staple().boreVolume();
        } catch (GeometryException e) {
            throw e.path().contains(".") ? e : e.under("staple");
        }
    }

    private OptionalDouble value(String result, DoubleSupplier compute) {
        try {
            double value = compute.getAsDouble();
            if (Double.isFinite(value)) {
                return OptionalDouble.of(value);
            }
            troubles.add(new Trouble(result, "", "There is no number for it."));
        } catch (GeometryException e) {
            troubles.add(new Trouble(result, e.path(), e.told()));
        } catch (RuntimeException e) {
            GeometryException named = Blame.building("staple", blank.staple().type(), e);
            troubles.add(new Trouble(result, named.path(), named.told()));
        }
        return OptionalDouble.empty();
    }
}
