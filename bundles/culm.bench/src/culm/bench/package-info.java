/** Cards, batches, records, exports and imports. */
package culm.bench;
