package culm.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import culm.geometry.GeometryException;
import culm.geometry.gouge.Gouge;
import culm.geometry.gouge.GougeSection;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Rows;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.numeric.Pchip;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.PchipWidth;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.Staple;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.ThreadMeasure;
import culm.geometry.words.Told;

/** Checks every number of a blank against its description and builds the geometry of the parts; refuses with the full path. */
final class PartsCheck {
    private static final List<String> OF_STAPLE = List.of(Inputs.STAPLE_LENGTH, Inputs.WALL, Inputs.CHECK_TURNS, Inputs.CHECK_THREAD, Inputs.CHECK_LENGTH);
    private static final List<String> OF_GOUGE = List.of(Inputs.TUBE, Inputs.FOLDED_LENGTH);
    private static final List<String> OF_SHAPE = List.of(Inputs.FOLDED_LENGTH);

    private PartsCheck() {
    }

    /** Every number that is missing, out of its range or out of order, with its full path; what the types themselves refuse is not in it. */
    static List<GeometryException> problems(Blank blank) {
        return problems(blank, Optional.empty());
    }

    private static List<GeometryException> problems(Blank blank, Optional<Blank> like) {
        List<GeometryException> found = new ArrayList<>();
        Inputs.all().forEach((path, described) -> {
            double value = blank.number(path);
            if (!Double.isNaN(value) || blank.numbers().containsKey(path)) {
                described.refusal(value).ifPresent(why -> found.add(new GeometryException(path, sentence(why))));
            }
        });
        of("staple", Blank::staple, blank, like, found);
        of("gouge", Blank::gouge, blank, like, found);
        of("gougeEnd", b -> b.gougeEnd().orElse(null), blank, like, found);
        of("shape", Blank::shape, blank, like, found);
        if (blank.cut().edges() == EdgeKind.TWO_WIDTHS) {
            blank.insideWidths().ifPresentOrElse(
                    rows -> Rows.problems(MeasuredShape.TABLE, rows).forEach(p -> found.add(p.under("inside"))),
                    () -> found.add(new GeometryException("inside.places", "Edges measured by two widths need the inside widths as well.")));
        }
        return found;
    }

    /** What the other blank has too was looked at when its parts were made. */
    private static void of(String part, Function<Blank, Profile<?>> which, Blank blank, Optional<Blank> like, List<GeometryException> found) {
        Profile<?> profile = which.apply(blank);
        if (profile != null && like.filter(b -> which.apply(b) == profile).isEmpty()) {
            under(part, profile.type(), () -> profile.type().problems(profile.values())).forEach(p -> found.add(p.under(part)));
        }
    }

    /** @param like another blank whose parts are made; what is the same in both is taken from it */
    static Parts build(Blank blank, Optional<Blank> like) {
        List<GeometryException> wrong = problems(blank, like);
        if (!wrong.isEmpty()) {
            throw wrong.get(0);
        }
        Optional<Blank> staple = like.filter(b -> b.staple() == blank.staple() && same(blank, b, OF_STAPLE));
        Optional<Blank> gouge = like.filter(b -> b.gouge() == blank.gouge() && b.gougeEnd().equals(blank.gougeEnd()) && same(blank, b, OF_GOUGE));
        Optional<Blank> width = like.filter(b -> b.shape() == blank.shape() && same(blank, b, OF_SHAPE));
        return new Parts(staple.map(b -> b.parts().staple()).orElseGet(() -> staple(blank)), gouge.map(b -> b.parts().gouge()).orElseGet(() -> gouge(blank)),
                width.map(b -> b.parts().width()).orElseGet(() -> width(blank)), inside(blank), blank.number(Inputs.FOLDED_LENGTH));
    }

    private static boolean same(Blank blank, Blank other, List<String> numbers) {
        return numbers.stream().allMatch(path -> Double.compare(blank.number(path), other.number(path)) == 0);
    }

    private static Staple staple(Blank blank) {
        double length = blank.number(Inputs.STAPLE_LENGTH);
        StapleOutside outside = under("staple", blank.staple().type(), () -> blank.staple().type().outside(topMeasured(blank, length), length));
        return under("staple", blank.staple().type(), () -> new Staple(outside, blank.number(Inputs.WALL)));
    }

    private static Gouge gouge(Blank blank) {
        double radius = blank.number(Inputs.TUBE) / 2;
        GougeSection fold = under("gouge", blank.gouge().type(), () -> blank.gouge().type().section(blank.gouge().values(), radius));
        GougeSection end = blank.gougeEnd().map(e -> under("gougeEnd", e.type(), () -> e.type().section(e.values(), radius))).orElse(null);
        return new Gouge(radius, fold, end, blank.number(Inputs.FOLDED_LENGTH));
    }

    private static ShapeWidth width(Blank blank) {
        return under("shape", blank.shape().type(), () -> blank.shape().type().width(blank.shape().values(), blank.number(Inputs.FOLDED_LENGTH)));
    }

    /** A perimeter measured with thread scales the top's axes: P = sqrt((l/n)^2 - d^2) - pi d. */
    private static Values topMeasured(Blank blank, double length) {
        Values values = blank.staple().values();
        double turns = blank.number(Inputs.CHECK_TURNS);
        double thread = blank.number(Inputs.CHECK_THREAD);
        double unwound = blank.number(Inputs.CHECK_LENGTH);
        if (Double.isNaN(turns) && Double.isNaN(thread) && Double.isNaN(unwound)) {
            return values;
        }
        if (Double.isNaN(turns + thread + unwound)) {
            throw new GeometryException(Inputs.CHECK_LENGTH, "A perimeter measured with thread needs the turns, the thin thread's diameter and its unwound length.");
        }
        double measured = under("staple", blank.staple().type(), () -> ThreadMeasure.perimeter(turns, thread, unwound));
        double computed = blank.staple().type().outside(values, length).section(length).perimeter();
        double k = measured / computed;
        if (!(k > 0.7 && k < 1.4)) {
            throw new GeometryException(Inputs.CHECK_LENGTH, "The thread says the staple's top measures " + Told.length(measured, 2) + " around, its two axes say "
                    + Told.length(computed, 2) + "; one of them is wrong.");
        }
        return blank.staple().type().topScaled(values, k);
    }

    private static Optional<ShapeWidth> inside(Blank blank) {
        if (blank.cut().edges() != EdgeKind.TWO_WIDTHS) {
            return Optional.empty();
        }
        Table rows = blank.insideWidths().orElseThrow();
        return Optional.of(new PchipWidth(new Pchip(rows.column(0), rows.column(1))));
    }

    private static String sentence(String why) {
        return Character.toUpperCase(why.charAt(0)) + why.substring(1);
    }

    /** Calls a type; whatever it throws becomes a refusal that names it. */
    private static <R> R under(String part, ProfileType type, Supplier<R> build) {
        try {
            return Objects.requireNonNull(build.get(), "nothing given back");
        } catch (GeometryException e) {
            throw e.under(part);
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            throw Blame.building(part, type, e);
        }
    }
}
