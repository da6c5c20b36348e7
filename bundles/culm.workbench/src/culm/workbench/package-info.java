/** Editors, views, perspective, theme. */
package culm.workbench;
