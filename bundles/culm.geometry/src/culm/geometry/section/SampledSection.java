package culm.geometry.section;

import java.util.Locale;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Minimum;
import culm.geometry.words.Told;

/**
 * A section known by its width at equally spaced directions, as a caliper finds it: the distance of two parallel jaws that touch the section is
 * h(psi) + h(psi + pi) = 2 h(psi).
 * <p>Between the samples the support function is the cosine polynomial through them, h = sum a_k cos 2 k psi, k = 0..n. Its perimeter 2 pi a_0 and area
 * pi a_0^2 + (pi/2) sum a_k^2 (1 - 4 k^2) are exact for that polynomial. For a smooth section the error falls geometrically with n: an oval of
 * 2.3 by 1.3 is met to 4e-5 mm with n = 8 and to 1e-8 mm with n = 16. Smallest radius by search to 1e-9.
 */
public final class SampledSection implements Section {
    private static final double FLAT = 1e-9;
    private final double[] a;

    private SampledSection(double[] support) {
        this.a = cosines(support);
        if (!(smallestRadius() > -FLAT)) {
            throw new GeometryException("", String.format(Locale.ROOT,
                    "These widths do not belong to an oval: its outline would turn inward, with a radius of %.3f mm.", smallestRadius()));
        }
    }

    /**
     * The section with these distances from the axis to the tangent.
     * @param support h at psi = i pi / (2 n), i = 0 to n (across the wide axis first, the narrow axis last), mm, positive; at least two
     * @throws GeometryException when a value is not positive or the outline would turn inward
     */
    public static SampledSection ofSupport(double... support) {
        if (support.length < 2) {
            throw new GeometryException("", "A sampled section needs at least its wide and its narrow width.");
        }
        for (double h : support) {
            if (!(h > 0 && Double.isFinite(h))) {
                throw new GeometryException("", "A width of " + Told.given(2 * h) + " " + Told.UNIT + " is not possible.");
            }
        }
        return new SampledSection(support.clone());
    }

    /** The same from full widths between parallel jaws, 2 h. */
    public static SampledSection ofWidths(double... widths) {
        double[] half = widths.clone();
        for (int i = 0; i < half.length; i++) {
            half[i] /= 2;
        }
        return ofSupport(half);
    }

    /** Another section, sampled at n + 1 directions of a quarter, n at least 1. */
    public static SampledSection of(Section section, int n) {
        double[] h = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            h[i] = section.support(i * Math.PI / (2 * n));
        }
        return ofSupport(h);
    }

    @Override
    public double support(double psi) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * Math.cos(2 * k * psi);
        }
        return sum;
    }

    @Override
    public double supportSlope(double psi) {
        double sum = 0;
        for (int k = 1; k < a.length; k++) {
            sum -= 2 * k * a[k] * Math.sin(2 * k * psi);
        }
        return sum;
    }

    @Override
    public double curvatureRadius(double psi) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += (1 - 4.0 * k * k) * a[k] * Math.cos(2 * k * psi);
        }
        return sum;
    }

    @Override
    public double perimeter() {
        return 2 * Math.PI * a[0];
    }

    @Override
    public double area() {
        double sum = 2 * a[0] * a[0];
        for (int k = 1; k < a.length; k++) {
            sum += a[k] * a[k] * (1 - 4.0 * k * k);
        }
        return sum * Math.PI / 2;
    }

    @Override
    public double smallestRadius() {
        return Minimum.between(this::curvatureRadius, 0, Math.PI / 2, 4 * a.length + 16).value();
    }

    /** Type 1 discrete cosine transform, the last term halved. */
    private static double[] cosines(double[] h) {
        int n = h.length - 1;
        double[] a = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            double sum = (h[0] + (k % 2 == 0 ? h[n] : -h[n])) / 2;
            for (int i = 1; i < n; i++) {
                sum += h[i] * Math.cos(Math.PI * i * k / n);
            }
            a[k] = sum * (k == 0 || k == n ? 1 : 2) / n;
        }
        return a;
    }
}
