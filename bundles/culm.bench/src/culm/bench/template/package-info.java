/** Templates of the cane as cut, 1:1: on paper, and as DXF for a cutter; a gauge for widths. */
package culm.bench.template;
