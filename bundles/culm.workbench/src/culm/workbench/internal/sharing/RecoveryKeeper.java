package culm.workbench.internal.sharing;

import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;

import culm.model.files.Recovery;
import culm.model.files.Recovery.Unsaved;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.widgets.NoticeBar;
import culm.workbench.internal.widgets.NoticeBar.Offer;

/** Keeps a copy of unsaved work every minute, drops it after a save, and offers what was found after a crash. */
public final class RecoveryKeeper {
    private static final int MINUTE = (int) TimeUnit.MINUTES.toMillis(1);
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);
    private final FileSession<?> session;
    private final NoticeBar notice;
    private final Consumer<FileProblemException> refused;
    private final Display display;
    private final Runnable tick = this::tick;
    private Optional<Unsaved> found = Optional.empty();
    private boolean kept;
    private boolean closed;

    /**
     * Begins, and offers what is found of an earlier run.
     *
     * @param session the file
     * @param notice where it is offered
     * @param refused told why something cannot be done
     */
    public RecoveryKeeper(FileSession<?> session, NoticeBar notice, Consumer<FileProblemException> refused) {
        this.session = session;
        this.notice = notice;
        this.refused = refused;
        this.display = notice.getDisplay();
        session.onChange(this::changed);
        if (session.readOnly().isEmpty()) {
            look();
        }
        display.timerExec(MINUTE, tick);
    }

    private void look() {
        try {
            found = Recovery.find(session.file());
        } catch (IOException e) {
            ILog.get().warn("Unsaved work on " + session.file() + " may be there and cannot be read.", e);
        }
        found.ifPresent(work -> notice.say("Work on this file was not saved before the program ended; the copy is of "
                + WHEN.format(work.written().atZone(ZoneId.systemDefault())) + ".", new Offer("restore it", this::restore), new Offer("drop it", this::forget)));
    }

    private void restore() {
        Attempt.at(() -> {
            session.become(found.orElseThrow().content(), "restore unsaved work");
            found = Optional.empty();
            kept = true; // it is still the copy of what is shown now
            notice.say("");
        }, refused);
    }

    private void forget() {
        found = Optional.empty();
        notice.say("");
        drop();
    }

    private void tick() {
        if (!closed) {
            keep();
            display.timerExec(MINUTE, tick);
        }
    }

    /** Keeps a copy now, when there is something unsaved. */
    public void keep() {
        if (!session.isDirty() || session.readOnly().isPresent()) {
            return;
        }
        try {
            if (found.isPresent()) {
                Aside.put(session.studio().root(), session.file(), found.get().content());
                found = Optional.empty();
                notice.say("The unsaved work that was found is now among the removed files of the studio.", new Offer("close", () -> notice.say("")));
            }
            Recovery.keep(session.file(), session.bytes());
            kept = true;
        } catch (FileProblemException e) {
            ILog.get().warn("No copy of unsaved work could be kept: " + e.problem().message());
        }
    }

    private void changed() {
        if (kept && !session.isDirty()) {
            drop();
        }
    }

    private void drop() {
        kept = false;
        try {
            Recovery.drop(session.file());
        } catch (IOException e) {
            ILog.get().warn("The copy of saved work on " + session.file() + " is still there.", e);
        }
    }

    /** Ends: what is not saved now is given up; what was found and not decided stays. */
    public void close() {
        closed = true;
        display.timerExec(-1, tick);
        if (kept) {
            drop();
        }
    }
}
