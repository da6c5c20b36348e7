package culm.measure;

import java.nio.file.Path;
import java.util.SplittableRandom;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

import culm.model.problem.FileProblemException;
import culm.workbench.internal.StudioAdvisor;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignSession;

/**
 * Edits a design in the real window and says how long it takes until everything is computed and painted again: edits of different inputs, then two
 * drags. In the first each step comes as soon as the one before is painted; as the toolkit paints at most once in a frame, none can take less than that
 * on average. In the second a step comes when the toolkit may paint again. Arguments: the studio's folder, the design's name in it, how many edits.
 */
public final class EditSpeed implements IApplication {
    private static final int WARM_UP = 300;
    private static final long FRAME = 16_700_000;
    private static final String[] INPUTS = { "tie.length", "tie.wrapTop", "staple.length", "gouge.middle", "tie.finished" };
    private static final double[] AROUND = { 72, 46.3, 47, 0.6, 70 };
    private static final double[] SPREAD = { 1.5, 0.4, 0.3, 0.02, 0.5 };
    private final SplittableRandom random = new SplittableRandom(7);
    private long painted;

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Path studio = Path.of(arguments[0]);
        int edits = Integer.parseInt(arguments[2]);
        Display display = PlatformUI.createDisplay();
        try {
            PlatformUI.createAndRunWorkbench(display, new StudioAdvisor() {
                @Override
                public void postStartup() {
                    super.postStartup();
                    display.asyncExec(() -> measure(display, studio.resolve(arguments[1]), edits));
                }
            });
            return EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    private void measure(Display display, Path design, int edits) {
        try {
            IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
            DesignEditor editor = (DesignEditor) page.openEditor(new FileInput(design), DesignEditor.ID);
            DesignSession session = editor.getAdapter(DesignSession.class);
            until(display, () -> !session.pending() && ReedSeen.in(display));
            Canvas reed = ReedSeen.canvas(display).orElseThrow();
            reed.addListener(SWT.Paint, e -> painted = System.nanoTime()); // after its own
            edits(display, session, edits);
            drag(display, session, edits, "a step of a drag", () -> { });
            drag(display, session, edits, "a step that waits for no frame", () -> free(display));
            page.closeAllEditors(false);
        } catch (PartInitException | FileProblemException e) {
            throw new IllegalStateException(e);
        } finally {
            PlatformUI.getWorkbench().close();
        }
    }

    private void edits(Display display, DesignSession session, int edits) throws FileProblemException {
        Times times = new Times(edits);
        for (int i = -WARM_UP; i < edits; i++) {
            int at = random.nextInt(INPUTS.length);
            double to = Math.rint((AROUND[at] + random.nextDouble(-SPREAD[at], SPREAD[at])) * 1000) / 1000;
            times.begin();
            session.change(e -> e.setValue(INPUTS[at], to), "");
            shown(display, session, times);
            times.end(i);
        }
        times.say("an edit");
    }

    private void drag(Display display, DesignSession session, int steps, String what, Runnable between) throws FileProblemException {
        Times times = new Times(steps);
        for (int i = 0; i < steps; i++) {
            between.run();
            double to = 70.5 + (i * 37 % 300) / 100.0; // never the same twice in a row
            times.begin();
            session.gesture().preview("tie.length", to, "fold");
            shown(display, session, times);
            times.end(i);
        }
        session.gesture().settle();
        times.say(what);
    }

    /** Until the toolkit may paint again; awake, as while a pointer moves. */
    private void free(Display display) {
        long from = painted + FRAME;
        while (System.nanoTime() < from) {
            display.readAndDispatch();
        }
    }

    private void shown(Display display, DesignSession session, Times times) {
        until(display, () -> !session.pending());
        times.computed();
        long from = System.nanoTime();
        until(display, () -> painted >= from);
    }

    private static void until(Display display, java.util.function.BooleanSupplier done) {
        while (!done.getAsBoolean()) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
    }

    @Override
    public void stop() {
        // It ends by itself.
    }
}
