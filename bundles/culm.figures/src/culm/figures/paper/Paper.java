package culm.figures.paper;

import culm.figures.Drawing;

/** Sheets of paper, upright. */
public enum Paper {
    /** ISO 216. */
    A4("A4", 210, 297),
    /** 8.5 by 11 inches. */
    LETTER("US Letter", 215.9, 279.4);

    /** Room left free at each side, mm; printers need some of it. */
    public static final double MARGIN_MM = 12;
    private final String label;
    private final double widthMm;
    private final double heightMm;

    Paper(String label, double widthMm, double heightMm) {
        this.label = label;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** The words on screen. */
    public String label() {
        return label;
    }

    /** Width in drawing units. @param wide true for the sheet turned on its side */
    public double width(boolean wide) {
        return (wide ? heightMm : widthMm) * Drawing.UNITS_PER_MM;
    }

    /** Height in drawing units. */
    public double height(boolean wide) {
        return (wide ? widthMm : heightMm) * Drawing.UNITS_PER_MM;
    }

    /** Width between the margins in drawing units. */
    public double room(boolean wide) {
        return width(wide) - 2 * MARGIN_MM * Drawing.UNITS_PER_MM;
    }
}
