/** Sentences that hold lengths: told in mm, or in what a window shows. */
package culm.geometry.words;
