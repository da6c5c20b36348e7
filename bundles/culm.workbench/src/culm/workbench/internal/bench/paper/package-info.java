/** Cards and templates: seen as the page they will be, written and printed. */
package culm.workbench.internal.bench.paper;
