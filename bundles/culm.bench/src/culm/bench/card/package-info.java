/** Bench cards: one page in the order of the work, with large numbers, a 1:1 strip and a ruler to check the print. */
package culm.bench.card;
