/** What went wrong with a blank: which inputs would explain it, and how far each would have to be off. */
package culm.bench.wrong;
