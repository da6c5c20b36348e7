/** Drawings of the parts of a blank: the shape, the gouge, the bore. */
package culm.figures.parts;
