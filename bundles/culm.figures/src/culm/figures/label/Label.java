package culm.figures.label;

import culm.figures.Role;

/**
 * What stands at a mark.
 *
 * @param id    name of the mark
 * @param x     where the mark lies, drawing units
 * @param full  the words and the number
 * @param brief the number alone, for when there is no room
 * @param bold  set bold
 * @param role  colour
 */
public record Label(String id, double x, String full, String brief, boolean bold, Role role) {
}
