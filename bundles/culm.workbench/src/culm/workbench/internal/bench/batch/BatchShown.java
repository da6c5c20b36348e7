package culm.workbench.internal.bench.batch;

import java.util.List;
import java.util.Optional;

import culm.bench.batch.BatchPlan;
import culm.bench.batch.BatchPlanner;
import culm.bench.batch.Doubt;
import culm.bench.batch.Doubts;
import culm.bench.batch.Setting;
import culm.bench.batch.StapleBatch;
import culm.blank.rules.Severity;
import culm.design.DesignedBlank;
import culm.figures.Lengths;
import culm.geometry.GeometryException;

/**
 * What comes of a batch.
 *
 * @param design the design it is for; empty when there is none
 * @param plan its settings; empty when they cannot be told
 * @param doubts readings to look at again
 * @param why why there are no settings, its lengths as {@link culm.geometry.words.Told} keeps them; empty when there are
 */
record BatchShown(Optional<DesignedBlank> design, Optional<BatchPlan> plan, List<Doubt> doubts, String why) {
    static final BatchShown NOTHING = new BatchShown(Optional.empty(), Optional.empty(), List.of(), "");

    static BatchShown of(StapleBatch batch, Optional<DesignedBlank> design, String why) {
        List<Doubt> doubts = Doubts.in(batch);
        if (design.isEmpty() || batch.staples().isEmpty()) {
            return new BatchShown(design, Optional.empty(), doubts, design.isEmpty() ? why : "Type the first staple: its length, Enter, its top wide, Enter, narrow, Enter.");
        }
        try {
            return new BatchShown(design, Optional.of(new BatchPlanner(design.get().limits(), batch.by().step(), batch.by().margin()).plan(design.get().blank(), batch)), doubts, "");
        } catch (GeometryException e) {
            return new BatchShown(design, Optional.empty(), doubts, e.told());
        }
    }

    /** The answer in one sentence. @param unit in what lengths are written */
    String sentence(Lengths unit) {
        if (plan.isEmpty()) {
            return unit.told(why);
        }
        BatchPlan p = plan.get();
        if (p.served() == 0) {
            int all = p.batch().staples().size();
            return (all == 1 ? "This staple cannot" : "None of the " + all + " staples can") + " be used with this design; below stands why.";
        }
        String ties = p.settings().stream().limit(4).map(s -> unit.fixed(s.tie(), 1)).collect(java.util.stream.Collectors.joining(", ")).replaceFirst(", ([^,]*)$", p.settings().size() <= 4 ? " and $1" : ", $1");
        return p.served() + " of " + p.batch().staples().size() + (p.batch().staples().size() == 1 ? " staple in " : " staples in ") + p.settings().size() + (p.settings().size() == 1 ? " setting: tie at " : " settings: tie at ") + ties
                + (p.settings().size() > 4 ? ", …" : "") + " " + unit.sign() + (p.fewest() ? "" : "; perhaps fewer would do") + again();
    }

    /** Which staples to read again; of many only how many. */
    private String again() {
        List<String> labels = doubts.stream().map(d -> d.staple().label()).distinct().toList();
        return switch (labels.size()) {
            case 0 -> "";
            case 1 -> "; look again at staple " + labels.get(0);
            case 2 -> "; look again at staples " + labels.get(0) + " and " + labels.get(1);
            default -> "; look again at readings of " + labels.size() + " staples";
        };
    }

    /** Its sign: in doubt while readings are, or while the give or take reaches beyond the limits. */
    Optional<Severity> sign() {
        if (plan.isEmpty()) {
            return Optional.empty();
        }
        BatchPlan p = plan.get();
        if (p.served() == 0) {
            return Optional.of(Severity.ERROR);
        }
        return Optional.of(!p.aside().isEmpty() || !doubts.isEmpty() || p.settings().stream().anyMatch(this::mayNotFit) ? Severity.WARNING : Severity.FINE);
    }

    /** Whether a staple of a setting may end outside the limits, give or take. */
    boolean mayNotFit(Setting setting) {
        double fewest = design.orElseThrow().limits().get(culm.blank.Limits.TURNS_FEWEST);
        double most = design.orElseThrow().limits().get(culm.blank.Limits.TURNS_MOST);
        double half = Double.isNaN(setting.giveOrTake()) ? 0 : setting.giveOrTake();
        return setting.fewestTurns() - half < fewest || setting.mostTurns() + half > most;
    }
}
