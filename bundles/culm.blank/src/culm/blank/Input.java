package culm.blank;

import culm.geometry.profile.Parameter;

/**
 * One number of a blank as it stands: its path, its description, its value, and how well it is known.
 *
 * @param path      such as {@code tie.length} or {@code shape.places[3].width}
 * @param parameter its description
 * @param value     in the parameter's unit
 * @param tolerance give or take, measured or assumed
 */
public record Input(String path, Parameter parameter, double value, Tolerance tolerance) {
}
