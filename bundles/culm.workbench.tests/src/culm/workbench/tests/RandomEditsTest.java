package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.Test;

import culm.blank.Input;
import culm.model.How;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignSession;

/** Many edits in any order with undo and redo among them: the design is always what the steps that hold say, and nothing is logged. */
class RandomEditsTest extends StudioTest {
    private static final int EDITS = Boolean.getBoolean("culm.long") ? 10_000 : 1_000;
    private static final long SEED = 20260311;
    private static final int AT_ONCE = 20;

    @Test
    void theDesignIsWhatTheStepsSay() throws Exception {
        List<IStatus> logged = new ArrayList<>();
        ILogListener listener = (status, plugin) -> {
            if (status.getSeverity() >= IStatus.WARNING) {
                logged.add(status);
            }
        };
        Platform.addLogListener(listener);
        try {
            DesignEditor editor = open("trial-12.reed");
            SplittableRandom random = new SplittableRandom(SEED);
            List<String> texts = new ArrayList<>(List.of(ui(() -> session(editor).text())));
            int[] now = { 0 };
            for (int done = 0; done < EDITS; done += AT_ONCE) {
                ui(() -> {
                    for (int i = 0; i < AT_ONCE; i++) {
                        step(session(editor), random, texts, now);
                    }
                });
            }
            shown(editor);
            while (now[0] > 0) {
                ui(() -> session(editor).undo());
                now[0]--;
                assertEquals(texts.get(now[0]), ui(() -> session(editor).text()));
            }
        } finally {
            Platform.removeLogListener(listener);
        }
        assertEquals(List.of(), logged);
    }

    private static void step(DesignSession session, SplittableRandom random, List<String> texts, int[] now) throws FileProblemException {
        int what = random.nextInt(10);
        if (what < 2 && now[0] > 0) {
            session.undo();
            now[0]--;
        } else if (what < 4 && now[0] + 1 < texts.size()) {
            session.redo();
            now[0]++;
        } else {
            edit(session, random, what);
            while (texts.size() > now[0] + 1) {
                texts.remove(texts.size() - 1);
            }
            texts.add(session.text());
            now[0]++;
        }
        assertEquals(texts.get(now[0]), session.text());
    }

    private static void edit(DesignSession session, SplittableRandom random, int what) throws FileProblemException {
        List<Input> inputs = session.blank().orElseThrow().blank().inputs().stream().filter(i -> !i.path().startsWith("fit.")).toList();
        Input input = inputs.get(random.nextInt(inputs.size()));
        double near = input.value() + random.nextDouble(-0.5, 0.5) * Math.max(0.1, Math.abs(input.value()) * 0.05);
        double value = Math.rint(Math.max(input.parameter().min(), Math.min(input.parameter().max(), near)) * 1000) / 1000;
        boolean cell = input.path().indexOf('[') >= 0;
        if (what == 4 && !cell) {
            session.change(e -> e.setHow(input.path(), random.nextBoolean() ? How.MEASURED : How.ASSUMED), "");
        } else if (what == 5) {
            session.changeAll(List.of(e -> e.setValue(input.path(), value), e -> e.set("", "notes", "step " + random.nextInt(1000))), "two at once");
        } else {
            session.change(e -> e.setValue(input.path(), value), "");
        }
    }
}
