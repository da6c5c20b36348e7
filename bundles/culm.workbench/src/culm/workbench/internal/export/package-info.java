/** Drawings out of the window: to the clipboard, into files, onto paper. */
package culm.workbench.internal.export;
