/** Charts: points and lines, counts, bars; axes with units, round ticks, legends. */
package culm.figures.chart;
