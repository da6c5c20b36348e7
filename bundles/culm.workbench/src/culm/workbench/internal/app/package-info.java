/** What the whole window shares, and how it starts. */
package culm.workbench.internal.app;
