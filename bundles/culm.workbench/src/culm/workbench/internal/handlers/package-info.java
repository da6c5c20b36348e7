/** What the commands of menus and keys do. */
package culm.workbench.internal.handlers;
