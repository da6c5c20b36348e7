package culm.explore;

import java.io.IOException;
import java.util.List;

import culm.blank.rules.Rule;
import culm.explore.internal.run.Pipeline;
import culm.explore.internal.run.VariantWorker;

/** Makes, closes and judges variants of a blank, on several threads, and hands them on in order; never holds more than a few thousand rows. */
public final class Variants {
    private static final int PIECE = 4096;

    private Variants() {
    }

    /**
     * Runs a plan.
     * @param study base, limits and rules; what varies in it is not used
     * @return how many rows were made: fewer than planned when cancelled
     * @throws IOException              from the sink
     * @throws IllegalArgumentException when an axis does not go with the base or with a part
     */
    public static long run(Study study, List<Axis> axes, VariantPlan plan, int threads, VariantSink sink, Watcher<Void> watcher) throws IOException {
        long rows = plan.rows(axes);
        VariantWorker first = new VariantWorker(study, axes, plan);
        first.check();
        List<Rule> rules = first.rules();
        sink.begin(new VariantHead(List.copyOf(axes), rules.stream().map(Rule::id).toList(), rules.stream().map(Rule::name).toList(), rows));
        Pipeline<VariantWorker, VariantBlock> pipeline = new Pipeline<>(threads, () -> new VariantWorker(study, axes, plan));
        long pieces = (rows + PIECE - 1) / PIECE;
        long[] made = {0};
        pipeline.run(pieces, (worker, piece) -> worker.rows(piece * PIECE, (int) Math.min(PIECE, rows - piece * PIECE)), block -> {
            sink.rows(block);
            made[0] = block.first() + block.rows();
            watcher.progress(made[0], rows, () -> null);
        }, watcher::cancelled);
        return made[0];
    }
}
