/** Paints the drawings of {@code culm.figures} with SWT. */
package culm.workbench.internal.paint;
