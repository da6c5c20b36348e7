/** Which plug-in brings what, and what became of it. */
package culm.workbench.internal.plugins;
