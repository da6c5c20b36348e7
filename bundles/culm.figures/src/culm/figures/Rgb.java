package culm.figures;

/** A colour in sRGB, each part 0 to 255. */
public record Rgb(int red, int green, int blue) {
    /** @throws IllegalArgumentException when a part is outside 0 to 255 */
    public Rgb {
        if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
            throw new IllegalArgumentException("not a colour: " + red + " " + green + " " + blue);
        }
    }

    /** From 0xRRGGBB. */
    public static Rgb of(int hex) {
        return new Rgb(hex >> 16 & 255, hex >> 8 & 255, hex & 255);
    }

    /** As {@code #rrggbb}. */
    public String hex() {
        return String.format("#%02x%02x%02x", red, green, blue);
    }

    /** Relative luminance, 0 to 1 (WCAG 2.1, definition of relative luminance). */
    public double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    /** Contrast ratio against another colour, 1 to 21 (WCAG 2.1). */
    public double contrast(Rgb other) {
        double a = luminance();
        double b = other.luminance();
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** One part as linear light, 0 to 1. */
    public static double linear(int part) {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
