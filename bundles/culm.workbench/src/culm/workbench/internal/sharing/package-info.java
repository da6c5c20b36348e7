/** Files that more than one person works with: who has one open, unsaved work kept, versions put together. */
package culm.workbench.internal.sharing;
