package culm.bench.csv;

/** How numbers and cells are told apart. */
public enum CsvStyle {
    /** 47.05 and commas between cells. */
    POINT(',', '.'),
    /** 47,05 and semicolons between cells, as spreadsheets write where the comma is the decimal sign. */
    COMMA(';', ',');

    private final char between;
    private final char decimal;

    CsvStyle(char between, char decimal) {
        this.between = between;
        this.decimal = decimal;
    }

    char between() {
        return between;
    }

    /** A number with its point or comma. */
    String number(String withPoint) {
        return withPoint.replace('.', decimal);
    }
}
