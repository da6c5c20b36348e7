/** Two designs side by side. */
package culm.workbench.internal.pair;
