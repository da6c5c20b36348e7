/** What can be wrong with a file, as data with file, line, value and one sentence. */
package culm.model.problem;
