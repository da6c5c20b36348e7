/** Drawings as pixels; the only place here that uses java.awt, and no display. */
package culm.figures.png;
