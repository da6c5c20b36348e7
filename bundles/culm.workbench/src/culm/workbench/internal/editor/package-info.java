/** The editor for a design: verdict, drawings, numbers, findings, form. */
package culm.workbench.internal.editor;
