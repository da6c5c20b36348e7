/** My limits: what a studio asks of a blank. */
package culm.workbench.internal.limits;
