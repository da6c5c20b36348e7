/** Drawings as SVG. */
package culm.figures.svg;
