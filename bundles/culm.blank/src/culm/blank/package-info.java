/** A blank and its assessment. */
package culm.blank;
