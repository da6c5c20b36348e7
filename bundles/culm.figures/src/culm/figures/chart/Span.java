package culm.figures.chart;

import culm.figures.Role;

/**
 * A shaded stretch of the x axis, such as my limits.
 *
 * @param from  lower end
 * @param to    upper end
 * @param name  written at its top; may be empty
 * @param role  colour, as a light tint
 */
public record Span(double from, double to, String name, Role role) {
}
