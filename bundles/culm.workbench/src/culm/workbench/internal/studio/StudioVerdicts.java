package culm.workbench.internal.studio;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;

import culm.blank.Assessment;
import culm.blank.rules.Verdict;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.blank.rules.Rules;
import culm.model.problem.FileProblemException;
import culm.model.studio.StudioEntry;

/** The verdict on each design of the studio as it is saved, computed in the background one after the other. */
final class StudioVerdicts {
    private static final int MOST = 400;
    private static final String UNTOLD = "?";

    /**
     * A verdict in brief.
     *
     * @param sign how it stands; empty when it cannot be told
     * @param turns turns left in words, "open" where the sides never close, a question mark where that cannot be told
     * @param told the whole verdict, its lengths as {@link culm.geometry.words.Told} keeps them; may be empty
     */
    record Brief(Optional<Verdict.Sign> sign, String turns, String told) {
    }

    private final Bridge bridge;
    private final Rules rules;
    private final Map<Path, Brief> known = new ConcurrentHashMap<>();
    private final AtomicLong round = new AtomicLong();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "Culm verdicts of the studio");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    StudioVerdicts(Bridge bridge, Rules rules) {
        this.bridge = bridge;
        this.rules = rules;
    }

    Optional<Brief> of(Path design) {
        return Optional.ofNullable(known.get(design));
    }

    /** Computes anew; what was asked before and is not done yet is given up. @param told after all are known */
    void compute(List<StudioEntry> designs, Runnable told) {
        long mine = round.incrementAndGet();
        worker.execute(() -> {
            for (StudioEntry entry : designs.subList(0, Math.min(MOST, designs.size()))) {
                if (round.get() != mine) {
                    return;
                }
                known.put(entry.file(), brief(entry.file()));
            }
            told.run();
        });
    }

    private Brief brief(Path file) {
        try {
            DesignedBlank blank = bridge.read(file);
            Assessment assessment = blank.assess();
            Verdict verdict = Verdict.of(assessment, blank.judge(assessment, rules));
            String turns = assessment.turnsLeft().isPresent() ? culm.blank.rules.Say.tenth(assessment.turnsLeft().getAsDouble())
                    : assessment.openAtStapleTop().isPresent() ? "open" : UNTOLD;
            return new Brief(Optional.of(verdict.sign()), turns, verdict.sign().word() + ": " + verdict.told());
        } catch (FileProblemException e) {
            return new Brief(Optional.empty(), UNTOLD, "cannot be told: " + e.problem().message());
        }
    }

    void close() {
        worker.shutdownNow();
    }
}
