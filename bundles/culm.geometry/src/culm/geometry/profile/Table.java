package culm.geometry.profile;

import java.util.Arrays;
import java.util.List;

/** Immutable rows of numbers, every row as long as the others. */
public final class Table {
    private final double[][] cells;

    private Table(double[][] cells) {
        this.cells = cells;
    }

    /** @param rows one array a row, all of the same length; copied */
    public static Table of(double[]... rows) {
        double[][] copy = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            copy[i] = rows[i].clone();
            if (copy[i].length != copy[0].length) {
                throw new IllegalArgumentException("row " + (i + 1) + " has another number of columns");
            }
        }
        return new Table(copy);
    }

    /** The same from lists. */
    public static Table of(List<double[]> rows) {
        return of(rows.toArray(double[][]::new));
    }

    /** Number of rows. */
    public int rows() {
        return cells.length;
    }

    /** Number of columns; 0 without rows. */
    public int columns() {
        return cells.length == 0 ? 0 : cells[0].length;
    }

    /** One cell, row and column from 0. */
    public double cell(int row, int column) {
        return cells[row][column];
    }

    /** One column from top to bottom. */
    public double[] column(int column) {
        return Arrays.stream(cells).mapToDouble(row -> row[column]).toArray();
    }

    /** The same table with one cell changed. */
    public Table with(int row, int column, double value) {
        double[][] copy = cells.clone();
        copy[row] = copy[row].clone();
        copy[row][column] = value;
        return new Table(copy);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Table table && Arrays.deepEquals(cells, table.cells);
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(cells);
    }

    @Override
    public String toString() {
        return Arrays.deepToString(cells);
    }
}
