/** Drawings as data, SVG, PDF and PNG. */
package culm.figures;
