/** The short assistant for a new design. */
package culm.workbench.internal.assistant;
