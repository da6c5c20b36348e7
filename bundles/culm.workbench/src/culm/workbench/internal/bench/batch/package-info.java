/** The editor for a batch of measured staples. */
package culm.workbench.internal.bench.batch;
