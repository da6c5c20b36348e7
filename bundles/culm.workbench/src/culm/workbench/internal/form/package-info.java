/** The form of a design, made from the described parameters. */
package culm.workbench.internal.form;
