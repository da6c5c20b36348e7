/** A studio: a folder of designs, parts files, batches and logs, and the links between them. */
package culm.model.studio;
