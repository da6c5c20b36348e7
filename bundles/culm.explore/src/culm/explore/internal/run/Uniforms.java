package culm.explore.internal.run;

/**
 * Numbers between 0 and 1 that depend on (seed, name, number of the draw) alone, so any thread may make any part of them and an input more or less
 * leaves the others as they were: mix(mix(seed ^ hash(name)) + draw * gamma) with the finalizer and the gamma of SplitMix64 (Steele, Lea, Flood, OOPSLA
 * 2014, doi:10.1145/2660193.2660195); 52 bits, in the middle of their cell, so that 0 and 1 never occur.
 */
public final class Uniforms {
    private static final long GAMMA = 0x9E3779B97F4A7C15L;
    private static final double CELL = 0x1.0p-52;
    private final long stream;

    public Uniforms(long seed, String name) {
        stream = mix(seed ^ hash(name));
    }

    /** Draws {@code first} to {@code first + n - 1}. @param bits room for n numbers */
    public void fill(long first, long[] bits, double[] u, int n) {
        mixed(stream + first * GAMMA, bits, n);
        for (int l = 0; l < n; l++) {
            u[l] = (bits[l] + 0.5) * CELL;
        }
    }

    private static void mixed(long start, long[] bits, int n) {
        for (int l = 0; l < n; l++) {
            long x = start + l * GAMMA;
            x = (x ^ x >>> 30) * 0xBF58476D1CE4E5B9L;
            x = (x ^ x >>> 27) * 0x94D049BB133111EBL;
            bits[l] = (x ^ x >>> 31) >>> 12;
        }
    }

    private static long mix(long x) {
        long y = (x ^ x >>> 30) * 0xBF58476D1CE4E5B9L;
        y = (y ^ y >>> 27) * 0x94D049BB133111EBL;
        return y ^ y >>> 31;
    }

    /** FNV-1a, 64 bits: the same on every machine. */
    private static long hash(String text) {
        long h = 0xcbf29ce484222325L;
        for (int i = 0; i < text.length(); i++) {
            h = (h ^ text.charAt(i)) * 0x100000001b3L;
        }
        return h;
    }
}
