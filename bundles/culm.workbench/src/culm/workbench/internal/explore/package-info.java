/** Exploring a design in the window: variants, what matters, how many will work, the best choice. */
package culm.workbench.internal.explore;
