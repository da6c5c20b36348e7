/** Drawings as PDF, true to scale. */
package culm.figures.pdf;
