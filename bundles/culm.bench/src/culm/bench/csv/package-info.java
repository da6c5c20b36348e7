/** Tables as CSV: point or comma, every bad row named and the rest read, no cell that a spreadsheet would run. */
package culm.bench.csv;
