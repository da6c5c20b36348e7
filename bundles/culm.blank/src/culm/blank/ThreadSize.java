package culm.blank;

/** Thread by its numbers. */
public final class ThreadSize {
    private ThreadSize() {
    }

    /**
     * Diameter of a thread from its mass: d = sqrt(4 T / (pi rho phi)), mm. Use it only where the tex is known; a measured diameter (turns laid side by
     * side) is better.
     *
     * @param tex     T, mass of a length, g/km, positive
     * @param density rho of the fibre, kg/m^3, positive (nylon about 1140, from memory)
     * @param packing phi, share of the thread's section that is fibre, 0 &lt; phi &lt;= 1 (0.75 is a guess)
     * @throws IllegalArgumentException when a number is out of its range
     */
    public static double diameter(double tex, double density, double packing) {
        if (!(tex > 0 && density > 0 && packing > 0 && packing <= 1 && Double.isFinite(tex) && Double.isFinite(density))) {
            throw new IllegalArgumentException("a thread of " + tex + " tex, " + density + " kg/m³ and a share of " + packing + " fibre is not possible");
        }
        return 1000 * Math.sqrt(4e-6 * tex / (Math.PI * density * packing));
    }

    /** Length of a helix around a cylinder, n sqrt((pi D)^2 + p^2). @param diameter D of the thread's middle line, mm; @param pitch p, mm */
    public static double helix(double diameter, double turns, double pitch) {
        return turns * Math.hypot(Math.PI * diameter, pitch);
    }
}
