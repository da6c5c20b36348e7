/** The bench in the window: what its editors share. */
package culm.workbench.internal.bench;
