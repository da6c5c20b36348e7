package culm.bench.batch;

import java.util.List;

/**
 * A batch split into settings.
 *
 * @param batch    what was split
 * @param settings ascending by tie length
 * @param fewest   true when fewer settings could not serve the same staples
 * @param aside    staples that are not used
 * @param doubts   readings to look at again; their staples are served all the same unless set aside
 */
public record BatchPlan(StapleBatch batch, List<Setting> settings, boolean fewest, List<SetAside> aside, List<Doubt> doubts) {
    /** Number of staples that are served. */
    public int served() {
        return settings.stream().mapToInt(s -> s.staples().size()).sum();
    }
}
