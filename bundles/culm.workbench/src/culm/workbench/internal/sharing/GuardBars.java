package culm.workbench.internal.sharing;

import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Listener;

import culm.figures.Role;
import culm.model.Document;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.plugins.PlugInsDialog;
import culm.workbench.internal.widgets.NoticeBar;

/**
 * What an editor says about its file, one line each and none when there is nothing: changed outside, open elsewhere, unsaved work found,
 * only to be looked at, something in it that is not known here.
 */
public final class GuardBars extends Composite {
    private final FileSession<?> session;
    private final DiskGuard disk;
    private final ClaimGuard claim;
    private final RecoveryKeeper recovery;
    private final NoticeBar kind;
    private final Supplier<String> missing;
    private final Supplier<String> trouble;
    private Document looked;
    private String unknown = "";

    /**
     * The lines of a file; they guard it as long as they live.
     *
     * @param parent where they go, a grid
     * @param session the file
     * @param missing what is missing to compute it, in words; empty when nothing is
     * @param refused told why something cannot be done
     */
    public GuardBars(Composite parent, FileSession<?> session, Supplier<String> missing, Consumer<FileProblemException> refused) {
        this(parent, session, missing, () -> "", refused);
    }

    /**
     * The same for a file that may be unusable for other reasons, too.
     *
     * @param parent where they go, a grid
     * @param session the file
     * @param missing what is missing to compute it, in words; empty when nothing is
     * @param trouble why it cannot be told at all; empty when it can
     * @param refused told why something cannot be done
     */
    public GuardBars(Composite parent, FileSession<?> session, Supplier<String> missing, Supplier<String> trouble, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.session = session;
        this.missing = missing;
        this.trouble = trouble;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        setLayout(layout);
        session.workshop().look().dress(this, Role.PAPER, Role.INK);
        disk = new DiskGuard(session, bar(Role.DOES_NOT), refused);
        claim = new ClaimGuard(session, bar(Role.DOES_NOT), refused);
        recovery = new RecoveryKeeper(session, bar(Role.INK), refused);
        kind = bar(Role.QUIET);
        Runnable end = session.workshop().studio().onChange(disk::changed);
        Listener active = e -> {
            if (!isDisposed()) {
                disk.check();
                claim.check();
            }
        };
        parent.getShell().addListener(SWT.Activate, active);
        addListener(SWT.Dispose, e -> {
            end.run();
            recovery.close();
            claim.close();
            if (!parent.getShell().isDisposed()) {
                parent.getShell().removeListener(SWT.Activate, active);
            }
        });
        session.onChange(this::describe);
        describe();
    }

    private NoticeBar bar(Role ink) {
        NoticeBar bar = new NoticeBar(this, session.workshop().look(), ink);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        wide.exclude = true;
        bar.setLayoutData(wide);
        return bar;
    }

    private void describe() {
        if (isDisposed()) {
            return;
        }
        String newer = session.newer().map(p -> "Only to be looked at: " + p.sentence() + ".").orElse("");
        String absent = missing.get();
        String sentence = Stream.of(newer, trouble.get(), absent, unknown()).filter(s -> !s.isEmpty()).collect(Collectors.joining(" ")).replace("..", ".");
        if (absent.isEmpty()) {
            kind.say(sentence);
        } else {
            kind.say(sentence, new NoticeBar.Offer("plug-ins\u2026", () -> new PlugInsDialog(getShell(), session.workshop()).open()));
        }
    }

    /** Looked for once in each document, since it may be large. */
    private String unknown() {
        if (looked != session.document()) {
            looked = session.document();
            unknown = MissingNotice.unknown(looked);
        }
        return unknown;
    }

    /** {@return whether the file was saved; versions are put together first where that is needed} */
    public boolean save() {
        return disk.save();
    }

    /** Keeps a copy of unsaved work now, as is done every minute. */
    public void keepCopy() {
        recovery.keep();
    }
}
