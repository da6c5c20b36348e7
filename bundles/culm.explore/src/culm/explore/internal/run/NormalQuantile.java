package culm.explore.internal.run;

import org.hipparchus.special.Erf;

/**
 * Quantiles of the standard normal distribution, a column at a time. Within |u - 1/2| &lt;= 0.425 the rational approximation of M. J. Wichura, algorithm
 * AS 241, Appl. Statist. 37 (1988) 477-484, doi:10.2307/2347330 (relative error about 1e-16; held against Hipparchus by a test); beyond, Hipparchus' inverse error function.
 */
public final class NormalQuantile {
    private static final double CENTRE = 0.425;
    private static final double SQUARE = CENTRE * CENTRE;

    private NormalQuantile() {
    }

    /** out = base + deviation * quantile(u), 0 &lt; u &lt; 1. */
    public static void fill(double[] u, double base, double deviation, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            double q = u[l] - 0.5;
            double r = SQUARE - q * q;
            double above = Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, 2509.0809287301226727, 33430.575583588128105),
                    67265.770927008700853), 45921.953931549871457), 13731.693765509461125), 1971.5909503065514427), 133.14166789178437745), 3.3871328727963666080);
            double below = Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, 5226.4952788528545610, 28729.085735721942674),
                    39307.895800092710610), 21213.794301586595867), 5394.1960214247511077), 687.18700749205790830), 42.313330701600911252), 1.0);
            out[l] = base + deviation * (q * above / below);
        }
        for (int l = 0; l < n; l++) {
            if (Math.abs(u[l] - 0.5) > CENTRE) {
                out[l] = base + deviation * at(u[l]);
            }
        }
    }

    /** One quantile; odd about u = 1/2. */
    public static double at(double u) {
        return u > 0.5 ? -at(1 - u) : Math.sqrt(2) * -Erf.erfcInv(2 * u);
    }
}
