/** The free font that is shipped with Culm, for measuring and embedding. */
package culm.figures.font;
