package culm.blank.chance;

/**
 * Uniform numbers that depend on nothing but the seed, the number of the draw and the number of the input: any thread may make any of them, in any
 * order, and adding an input leaves the others as they were. The mixing function is the finalizer of SplitMix64 (Steele, Lea, Flood: Fast splittable
 * pseudorandom number generators, OOPSLA 2014, doi:10.1145/2660193.2660195), applied to a counter.
 *
 * @param seed any number
 */
public record Draws(long seed) {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long OTHER = 0xD1B54A32D192ED03L;

    /** A number between 0 and 1, neither of them included. @param draw from 0; @param input from 0 */
    public double uniform(long draw, int input) {
        long mixed = mix(mix(seed + GOLDEN * (draw + 1)) + OTHER * (input + 1));
        return ((mixed >>> 12) + 0.5) * 0x1.0p-52;
    }

    private static long mix(long z) {
        long a = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ a >>> 27) * 0x94D049BB133111EBL;
        return b ^ b >>> 31;
    }
}
