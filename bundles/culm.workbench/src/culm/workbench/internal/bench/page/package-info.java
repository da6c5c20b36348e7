/** Pages that scroll: notes with links, and drawings. */
package culm.workbench.internal.bench.page;
