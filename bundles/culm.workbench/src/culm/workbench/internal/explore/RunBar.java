package culm.workbench.internal.explore;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

import culm.blank.Blank;
import culm.design.DesignedBlank;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** Starts and stops one run at a time, and says how far it is. */
public final class RunBar extends Composite {
    private static final int PARTS = 1000;
    private final Look look;
    private final Button run;
    private final Button stop;
    private final ProgressBar progress;
    private final Label status;
    private RunJob<?> job;
    private Runnable start = () -> {
    };

    RunBar(Composite parent, Look look) {
        super(parent, SWT.NONE);
        this.look = look;
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        run = button("Run");
        run.addListener(SWT.Selection, e -> start.run());
        stop = button("Stop");
        stop.setEnabled(false);
        stop.addListener(SWT.Selection, e -> stop());
        progress = new ProgressBar(this, SWT.SMOOTH);
        progress.setMaximum(PARTS);
        GridData bar = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        bar.widthHint = 90;
        bar.exclude = true;
        progress.setLayoutData(bar);
        progress.setVisible(false);
        status = new Label(this, SWT.WRAP);
        status.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(status, Role.PAPER, Role.QUIET);
        status.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        addListener(SWT.Dispose, e -> stop());
    }

    private Button button(String words) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(words);
        button.setFont(look.font(Size.BODY, SWT.NORMAL));
        return button;
    }

    /** What the button starts. */
    void onRun(Runnable todo) {
        start = todo;
    }

    /**
     * Asks something of a design, or says why that cannot be done.
     *
     * @param design the design; empty when it cannot be told
     * @param question asks it; its {@link IllegalArgumentException} is said
     */
    void ask(Optional<DesignedBlank> design, Consumer<DesignedBlank> question) {
        if (design.isEmpty()) {
            say("The design cannot be told; its findings say why.", true);
            return;
        }
        try {
            question.accept(design.get());
        } catch (IllegalArgumentException e) {
            say(e.getMessage(), true);
        }
    }

    /** Says when a design is no longer what was asked about. @param asked empty when nothing was found yet @return whether it said so */
    boolean compare(Optional<Blank> asked, Blank now) {
        boolean other = !running() && asked.isPresent() && !asked.get().equals(now);
        if (other) {
            say("The design has changed since.", false);
        }
        return other;
    }

    /** Says that something else is asked now than what was found for. */
    void outdated() {
        if (!running()) {
            say("What varies has changed since: Run asks anew.", false);
        }
    }

    /** Takes what is found. */
    interface Taker<R> {
        /** @param result what was found; so far, unless ended */
        void take(R result, boolean ended);
    }

    /** What is found, and how it is said when it has ended. */
    interface Said<R> {
        String of(R result);
    }

    /**
     * Runs something; what ran before is stopped and no longer heard.
     *
     * @param what what is counted, such as blanks
     * @param work the run
     * @param taker takes results, on the display's thread
     * @param said says how it ended
     */
    <R> void run(String what, RunJob.Work<R> work, Taker<R> taker, Said<R> said) {
        stop();
        say("", false);
        progress.setSelection(0);
        busy(true);
        RunJob<R>[] own = newArray();
        own[0] = new RunJob<>(what, look.display(), work, new RunJob.Listener<>() {
            @Override
            public void progress(long done, long all) {
                if (job == own[0] && !isDisposed()) {
                    progress.setSelection((int) (PARTS * done / Math.max(1, all)));
                    say(String.format(Locale.ROOT, "%,d of %,d %s", done, all, what), false);
                }
            }

            @Override
            public void soFar(R result) {
                if (job == own[0] && !isDisposed()) {
                    taker.take(result, false);
                }
            }

            @Override
            public void ended(R result, String problem) {
                if (job == own[0] && !isDisposed()) {
                    job = null;
                    busy(false);
                    say(result == null ? problem : said.of(result), result == null);
                    if (result != null) {
                        taker.take(result, true);
                    }
                }
            }
        });
        job = own[0];
        job.schedule();
    }

    @SuppressWarnings("unchecked")
    private static <R> RunJob<R>[] newArray() {
        return new RunJob[1];
    }

    /** {@return whether something runs} */
    public boolean running() {
        return job != null;
    }

    private void busy(boolean now) {
        stop.setEnabled(now);
        progress.setVisible(now);
        ((GridData) progress.getLayoutData()).exclude = !now;
        layout();
    }

    /** Stops; what was found so far stays. */
    public void stop() {
        if (job != null) {
            job.cancel();
        }
    }

    /** {@return what is said of the run} */
    public String said() {
        return status.getText();
    }

    /** Says something. @param wrong whether it is why it cannot be done */
    void say(String sentence, boolean wrong) {
        status.setText(sentence);
        status.setToolTipText(sentence);
        if (status.computeSize(Math.max(1, status.getSize().x), SWT.DEFAULT).y != status.getSize().y) {
            status.requestLayout(); // it needs another number of lines
        }
        status.setForeground(look.colour(wrong ? Role.DOES_NOT : Role.QUIET));
    }
}
