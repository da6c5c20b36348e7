/** Designs, parts, batches and records. */
package culm.model;
