/** Light and dark: which one is shown, its colours and fonts. */
package culm.workbench.internal.look;
