/** Variants, sensitivities, tolerance runs, best choice. */
package culm.explore;
