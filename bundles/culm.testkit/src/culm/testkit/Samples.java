package culm.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;

/** Seeded values for a described type: its defaults, numbers near them, and anything in the ranges. The same on every run. */
final class Samples {
    private static final int NEAR = 60;
    private static final int ANYWHERE = 60;
    private static final double SHARE = 0.08;
    private final ProfileType type;
    private final SplittableRandom random = new SplittableRandom(47);

    private Samples(ProfileType type) {
        this.type = type;
    }

    /** The defaults first; values that the type itself refuses are among them. */
    static List<Values> of(ProfileType type) {
        Samples samples = new Samples(type);
        List<Values> all = new ArrayList<>(List.of(type.standard()));
        for (int i = 0; i < NEAR; i++) {
            all.add(samples.draw(false));
        }
        for (int i = 0; i < ANYWHERE; i++) {
            all.add(samples.draw(true));
        }
        return all;
    }

    private Values draw(boolean anywhere) {
        Values values = type.standard();
        for (Parameter p : type.parameters()) {
            if (!p.optional() || random.nextBoolean()) {
                double standard = p.optional() ? p.min() + random.nextDouble() * (p.max() - p.min()) : p.standard();
                values = values.with(p.id(), number(p, standard, anywhere));
            }
        }
        for (TableParameter t : type.tables()) {
            values = values.with(t.id(), rows(t, anywhere));
        }
        return values;
    }

    private double number(Parameter p, double around, boolean anywhere) {
        if (anywhere) {
            return p.min() + random.nextDouble() * (p.max() - p.min());
        }
        return Math.min(p.max(), Math.max(p.min(), around * (1 + SHARE * (2 * random.nextDouble() - 1))));
    }

    /** Places stay where they are, so that rows ascend. */
    private Table rows(TableParameter t, boolean anywhere) {
        Table rows = t.standard();
        for (int r = 0; r < rows.rows(); r++) {
            for (int c = 1; c < rows.columns(); c++) {
                rows = rows.with(r, c, number(t.columns().get(c), rows.cell(r, c), anywhere));
            }
        }
        return rows;
    }
}
