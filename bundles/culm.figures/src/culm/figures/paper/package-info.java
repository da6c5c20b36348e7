/** Drawings on sheets of paper, true to scale, with a ruler to check the print. */
package culm.figures.paper;
