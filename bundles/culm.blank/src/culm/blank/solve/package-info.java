/** Solving: which tie lengths, wraps, widths and staples give what is wanted; "no" comes with the rule that says it. */
package culm.blank.solve;
