/** Files of parts: staples, gouges, shapes and threads edited, chosen for designs, replaced, found twice. */
package culm.workbench.internal.parts;
