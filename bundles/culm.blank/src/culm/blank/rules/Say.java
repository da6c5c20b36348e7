package culm.blank.rules;

import java.util.Locale;

import culm.geometry.words.Told;

/** Numbers in sentences: no more digits than a caliper has, always with a point. */
public final class Say {
    private Say() {
    }

    /** A length along the reed, one decimal, with its unit. */
    public static String mm(double value) {
        return tenth(value) + " mm";
    }

    /** A length across the reed (gap, thickness, width), two decimals, with its unit. */
    public static String fine(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return (text.equals("-0.00") ? "0.00" : text) + " mm";
    }

    /** The same as {@link #mm}, as findings hold it: a window writes it in the unit that is chosen. */
    public static String along(double value) {
        return Told.length(value, 1);
    }

    /** The same as {@link #fine}, as findings hold it: a window writes it in the unit that is chosen. */
    public static String across(double value) {
        return Told.length(value, 2);
    }

    /** A number of turns, one decimal. */
    public static String turns(double value) {
        String text = tenth(value);
        return text + (text.equals("1.0") ? " turn" : " turns");
    }

    /** One decimal, never "-0.0". */
    public static String tenth(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.equals("-0.0") ? "0.0" : text;
    }

    /** A limit as it was given, without needless zeros. */
    public static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    /** One decimal as a number, as a remedy is told at the bench. */
    public static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
