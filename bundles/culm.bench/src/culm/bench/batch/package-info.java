/** Batches of measured staples: which tie lengths each one allows, and the fewest settings that serve all. Lengths mm. */
package culm.bench.batch;
