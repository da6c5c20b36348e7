/** A table of cells that is filled by keyboard, caliper and paste. */
package culm.workbench.internal.bench.grid;
