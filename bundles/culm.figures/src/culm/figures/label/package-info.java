/** Labels of marks on an axis: where they stand so that nothing overlaps. */
package culm.figures.label;
