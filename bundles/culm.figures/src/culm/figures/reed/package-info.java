/**
 * The reed as drawings: everything that runs along it on one {@link culm.figures.Scale}, its sections, its lengths. Lengths in mm from the
 * bottom of the staple, as in an {@link culm.blank.Assessment}.
 */
package culm.figures.reed;
