/** The editor for a reed log. */
package culm.workbench.internal.bench.log;
