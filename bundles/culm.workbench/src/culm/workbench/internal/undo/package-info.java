/** Undo and redo, routed to what has the focus. */
package culm.workbench.internal.undo;
