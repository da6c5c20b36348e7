/** Small controls of this workbench: number fields, signs, links. */
package culm.workbench.internal.widgets;
