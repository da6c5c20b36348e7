/** Starting from a blank that works. */
package culm.workbench.internal.fit;
