/** The menus of the window. */
package culm.workbench.internal.menus;
