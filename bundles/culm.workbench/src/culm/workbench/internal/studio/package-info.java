/** The studio: its folder as a tree, what is done with its files, and what happens to them outside. */
package culm.workbench.internal.studio;
