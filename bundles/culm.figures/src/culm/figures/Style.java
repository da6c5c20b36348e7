package culm.figures;

import java.util.Optional;

/**
 * How a path is painted: filled first, then stroked with round joins and caps.
 *
 * @param fill        colour inside, if any
 * @param fillOpacity 0 to 1
 * @param stroke      colour of the line, if any
 * @param width       width of the line, drawing units
 * @param dash        how the line is broken
 */
public record Style(Optional<Role> fill, double fillOpacity, Optional<Role> stroke, double width, Dash dash) {
    /** Width of a thin line. */
    public static final double THIN = 0.8;

    /** Only filled. */
    public static Style fill(Role role) {
        return new Style(Optional.of(role), 1, Optional.empty(), 0, Dash.SOLID);
    }

    /** Only filled, and what lies below shines through. */
    public static Style tint(Role role, double opacity) {
        return new Style(Optional.of(role), opacity, Optional.empty(), 0, Dash.SOLID);
    }

    /** Only a line. */
    public static Style line(Role role, double width) {
        return new Style(Optional.empty(), 1, Optional.of(role), width, Dash.SOLID);
    }

    /** The same with a line around it. */
    public Style edged(Role role, double lineWidth) {
        return new Style(fill, fillOpacity, Optional.of(role), lineWidth, dash);
    }

    /** The same with a broken line. */
    public Style broken(Dash how) {
        return new Style(fill, fillOpacity, stroke, width, how);
    }
}
