package culm.model.files;

import culm.model.xml.XmlNode;
import java.util.List;
import java.util.TreeMap;

/** The format versions that can be read: the current one, and those from which a chain of steps leads to it. */
public final class Formats {
    /** The format this program writes. */
    public static final int CURRENT = 1;

    private final int current;
    private final TreeMap<Integer, Migration> steps = new TreeMap<>();

    /** The formats of this program. */
    public Formats() {
        this(CURRENT, List.of());
    }

    /**
     * Formats with steps of one's own.
     *
     * @param current the version to write
     * @param steps one step for each older version that can be read
     * @throws IllegalArgumentException when two steps begin at one version, or the chain has a gap
     */
    public Formats(int current, List<? extends Migration> steps) {
        this.current = current;
        for (Migration step : steps) {
            if (this.steps.put(step.from(), step) != null) {
                throw new IllegalArgumentException("two steps from format " + step.from());
            }
        }
        for (int version = oldest(); version < current; version++) {
            if (!this.steps.containsKey(version)) {
                throw new IllegalArgumentException("no step from format " + version);
            }
        }
    }

    /** {@return the version that is written} */
    public int current() {
        return current;
    }

    /** {@return the oldest version that can be read} */
    public int oldest() {
        return steps.isEmpty() ? current : steps.firstKey();
    }

    /**
     * Brings a tree to the current format.
     *
     * @param root the root element
     * @param version its version, from {@link #oldest()} on; newer ones are left alone
     */
    void migrate(XmlNode root, int version) {
        for (int step = version; step < current; step++) {
            steps.get(step).apply(root);
        }
    }
}
