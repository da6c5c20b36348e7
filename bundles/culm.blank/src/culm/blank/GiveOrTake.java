package culm.blank;

import java.util.Map;

/**
 * The 95 % give or take of a closing, first order: u^2 is the sum of (slope times u_x)^2 with u_x = t / sqrt 3, and the band is 1.96 u
 * (JCGM 100:2008, 5.1.2).
 * <p>With a fit, what the fitted length has absorbed does not count again: an input that is the same in the blank that worked moves the
 * model there and the fitted length against it; an input that was changed counts with its own give or take and with the old one's;
 * the reading counts with its error.
 */
final class GiveOrTake {
    /** Two-sided 95 % point of the normal distribution. */
    static final double COVERAGE = 1.959963984540054;

    private GiveOrTake() {
    }

    /** Half-width of the band of G at z, mm. */
    static double opening(Blank blank, double z) {
        Map<String, Double> here = new Slopes(blank, z).inputs();
        double square = blank.fit().map(fit -> fitted(blank, fit, here)).orElseGet(() -> plain(blank, here));
        return COVERAGE * Math.sqrt(square);
    }

    private static double plain(Blank blank, Map<String, Double> here) {
        double sum = 0;
        for (Map.Entry<String, Double> slope : here.entrySet()) {
            sum += square(slope.getValue() * blank.tolerance(slope.getKey()).standardUncertainty());
        }
        return sum;
    }

    /** G = 2 (M - m0 - delta), and delta = G0 / 2 of the blank that worked, at the height that was seen: dG/d delta = -2, hence minus its slopes. */
    private static double fitted(Blank blank, Fit fit, Map<String, Double> here) {
        Blank worked = fit.worked();
        double seen = Fit.seen(worked, fit.turnsLeft());
        Slopes then = new Slopes(worked, seen);
        Map<String, Double> before = then.inputs();
        double perHeight = then.along();
        double pitch = worked.number(Inputs.THREAD_PITCH);
        double sum = square(perHeight * pitch * fit.readingError() / Math.sqrt(3));
        for (Map.Entry<String, Double> slope : here.entrySet()) {
            String path = slope.getKey();
            double now = slope.getValue() * blank.tolerance(path).standardUncertainty();
            Double old = before.remove(path);
            if (old == null) {
                sum += square(now);
                continue;
            }
            double absorbed = old * worked.tolerance(path).standardUncertainty();
            sum += same(blank, worked, path) ? square(now - absorbed) : square(now) + square(absorbed);
        }
        for (Map.Entry<String, Double> gone : before.entrySet()) {
            sum += square(gone.getValue() * worked.tolerance(gone.getKey()).standardUncertainty());
        }
        return sum;
    }

    private static boolean same(Blank blank, Blank worked, String path) {
        return blank.value(path).equals(worked.value(path)) && profile(blank, path).equals(profile(worked, path));
    }

    private static String profile(Blank blank, String path) {
        return switch (path.substring(0, path.indexOf('.'))) {
            case "staple" -> blank.staple().type().id();
            case "gouge" -> blank.gouge().type().id();
            case "gougeEnd" -> blank.gougeEnd().map(e -> e.type().id()).orElse("");
            case "shape" -> blank.shape().type().id();
            default -> "";
        };
    }

    private static double square(double x) {
        return x * x;
    }
}
