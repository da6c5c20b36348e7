/** The bridge from model to blank. */
package culm.design;
