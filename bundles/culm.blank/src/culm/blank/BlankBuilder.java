package culm.blank;

import java.util.HashMap;
import java.util.Map;

import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Table;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;

/** Collects what a {@link Blank} says. */
public final class BlankBuilder {
    Profile<StapleType> staple;
    Profile<GougeType> gouge;
    Profile<GougeType> gougeEnd;
    Profile<ShapeType> shape;
    Table insideWidths;
    Cut cut = Cut.STANDARD;
    final Map<String, Double> numbers = new HashMap<>();
    final Map<String, Tolerance> tolerances = new HashMap<>();
    Fit fit;
    Blank relative;

    /** The three profiles every blank needs. */
    public BlankBuilder(Profile<StapleType> staple, Profile<GougeType> gouge, Profile<ShapeType> shape) {
        this.staple = staple;
        this.gouge = gouge;
        this.shape = shape;
    }

    BlankBuilder(Blank from) {
        this(from.staple(), from.gouge(), from.shape());
        gougeEnd = from.gougeEnd().orElse(null);
        insideWidths = from.insideWidths().orElse(null);
        cut = from.cut();
        numbers.putAll(from.numbers());
        tolerances.putAll(from.tolerances());
        fit = from.fit().orElse(null);
        relative = from.made().orElse(null);
    }

    /** Puts another staple in. */
    public BlankBuilder staple(Profile<StapleType> profile) {
        staple = profile;
        return this;
    }

    /** Puts another gouge in: at the fold, or all along when there is no second one. */
    public BlankBuilder gouge(Profile<GougeType> profile) {
        gouge = profile;
        return this;
    }

    /** @param profile the gouge at the end of the cane; null when it is the same all along */
    public BlankBuilder gougeEnd(Profile<GougeType> profile) {
        gougeEnd = profile;
        return this;
    }

    /** Puts another shape in. */
    public BlankBuilder shape(Profile<ShapeType> profile) {
        shape = profile;
        return this;
    }

    /** @param rows (distance from the fold, inside width); null for none */
    public BlankBuilder insideWidths(Table rows) {
        insideWidths = rows;
        return this;
    }

    /** Says how the cane was cut and measured. */
    public BlankBuilder cut(Cut how) {
        cut = how;
        return this;
    }

    /** Uses the length fitted to a blank that worked. @param worked null for none */
    public BlankBuilder fit(Fit worked) {
        fit = worked;
        if (worked == null) {
            numbers.remove(Inputs.DELTA);
        } else {
            numbers.put(Inputs.DELTA, worked.delta());
        }
        return this;
    }

    /** Gives the number at a path. @throws IllegalArgumentException when the path is not known for these profiles */
    public BlankBuilder set(String path, double value) {
        Paths.set(this, path, value);
        return this;
    }

    /** Takes an optional number away. */
    public BlankBuilder clear(String path) {
        numbers.remove(path);
        return this;
    }

    /** Says how well the input at a path is known. */
    public BlankBuilder tolerance(String path, double plusMinus, boolean measured) {
        tolerances.put(path, new Tolerance(plusMinus, measured));
        return this;
    }

    /** The blank as described so far; nothing is checked yet. */
    public Blank build() {
        return new Blank(this);
    }
}
