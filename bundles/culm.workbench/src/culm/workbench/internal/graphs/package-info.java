/** More graphs: shape, bore, gouge; each also as a table, a picture, a file. */
package culm.workbench.internal.graphs;
