package culm.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;

/**
 * Colours are readable and stay apart for colour-blind people. Contrast: WCAG 2.1, 4.5 for text, 3 for graphical objects. Colour blindness:
 * matrices of Machado, Oliveira and Fernandes 2009, severity 1, on linear light (from memory; each row sums to 1, so that grey stays grey,
 * which is checked). Differences: CIE 1976 L*a*b* for D65.
 */
class PaletteTest {
    private static final double APART = 18;
    private static final double[][][] SEEN = {
            {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
            {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}},
            {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}},
            {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};

    static List<Palette> palettes() {
        return List.of(Palette.LIGHT, Palette.DARK, Palette.PRINT);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void textIsReadable(Palette palette) {
        for (Role text : List.of(Role.INK, Role.QUIET, Role.THREAD, Role.FITS, Role.DOES_NOT)) {
            for (Role ground : List.of(Role.PAPER, Role.PANEL)) {
                double contrast = palette.of(text).contrast(palette.of(ground));
                assertTrue(contrast >= 4.5, palette.name() + " " + text + " on " + ground + ": " + contrast);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void edgesStandOut(Palette palette) {
        for (Role edge : List.of(Role.BRASS_EDGE, Role.CANE_EDGE, Role.BARK, Role.CORK_EDGE)) {
            double contrast = palette.of(edge).contrast(palette.of(Role.PAPER));
            assertTrue(contrast >= 3, palette.name() + " " + edge + ": " + contrast);
        }
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void signsAndNeighbouringMaterialsStayApart(Palette palette) {
        Role[][] pairs = {{Role.FITS, Role.DOES_NOT}, {Role.THREAD, Role.DOES_NOT}, {Role.THREAD, Role.FITS}, {Role.BRASS, Role.CANE}, {Role.CANE, Role.THREAD},
                {Role.BRASS, Role.THREAD}, {Role.CORK, Role.BRASS_EDGE}, {Role.CANE, Role.BARK}, {Role.CORK, Role.THREAD}};
        for (Role[] pair : pairs) {
            for (int i = 0; i < SEEN.length; i++) {
                double apart = difference(seen(palette.of(pair[0]), SEEN[i]), seen(palette.of(pair[1]), SEEN[i]));
                assertTrue(apart >= APART, palette.name() + " " + pair[0] + " and " + pair[1] + " seen as " + i + ": " + apart);
            }
        }
    }

    @Test
    void greyStaysGrey() {
        for (double[][] matrix : SEEN) {
            for (double[] row : matrix) {
                assertEquals(1, row[0] + row[1] + row[2], 3e-6);
            }
        }
    }

    @Test
    void contrastOfBlackAndWhiteIs21() {
        assertEquals(21, Rgb.of(0x000000).contrast(Rgb.of(0xffffff)), 1e-12);
        assertEquals("#0a1b2c", Rgb.of(0x0a1b2c).hex());
    }

    private static double[] seen(Rgb colour, double[][] by) {
        double[] linear = {Rgb.linear(colour.red()), Rgb.linear(colour.green()), Rgb.linear(colour.blue())};
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            out[i] = Math.max(0, Math.min(1, by[i][0] * linear[0] + by[i][1] * linear[1] + by[i][2] * linear[2]));
        }
        return lab(out);
    }

    private static double[] lab(double[] c) {
        double x = (0.4124564 * c[0] + 0.3575761 * c[1] + 0.1804375 * c[2]) / 0.95047;
        double y = 0.2126729 * c[0] + 0.7151522 * c[1] + 0.0721750 * c[2];
        double z = (0.0193339 * c[0] + 0.1191920 * c[1] + 0.9503041 * c[2]) / 1.08883;
        return new double[] {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double difference(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }
}
