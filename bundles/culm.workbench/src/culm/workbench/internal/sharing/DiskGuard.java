package culm.workbench.internal.sharing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.Consumer;

import culm.model.problem.FileProblemException;
import culm.workbench.internal.widgets.NoticeBar;
import culm.workbench.internal.widgets.NoticeBar.Offer;

/** Notices that a file has changed outside: takes it over when nothing is edited here, otherwise asks. */
public final class DiskGuard {
    private final FileSession<?> session;
    private final NoticeBar notice;
    private final Consumer<FileProblemException> refused;

    /**
     * Guards a file that is edited.
     *
     * @param session the file
     * @param notice where it is said
     * @param refused told why something cannot be done
     */
    public DiskGuard(FileSession<?> session, NoticeBar notice, Consumer<FileProblemException> refused) {
        this.session = session;
        this.notice = notice;
        this.refused = refused;
        session.onBaseMoved(() -> session.workshop().look().later(() -> {
            if (!notice.isDisposed()) {
                check();
            }
        }));
    }

    /**
     * Files of the studio changed.
     *
     * @param files which; none given means any may have
     */
    public void changed(Set<Path> files) {
        if (files.isEmpty() || files.contains(session.file())) {
            check();
        }
        if (files.isEmpty() || files.stream().anyMatch(f -> !f.equals(session.file()))) {
            session.refresh(); // a linked part or my limits may be another now
        }
    }

    /** Looks at the file. What is wrong with it stands above what is shown: a dialog would come again each time the window is active again. */
    public void check() {
        try {
            look();
        } catch (FileProblemException e) {
            notice.say(e.problem().message() + ". What is shown here is as it was before.", new Offer("read it again", this::check));
        }
    }

    private void look() throws FileProblemException {
        if (!session.changedOnDisk()) {
            notice.say("");
        } else if (!Files.exists(session.file())) {
            notice.say("This file is no longer in the studio. What is shown here can be saved again.",
                    new Offer("keep it", () -> attempt(this::keepMine)));
        } else if (session.isDirty()) {
            notice.say("This file was changed outside while it is edited here. Nothing is overwritten.",
                    new Offer("compare\u2026", this::compare), new Offer("take theirs", () -> attempt(this::takeTheirs)),
                    new Offer("keep mine", () -> attempt(this::keepMine)));
        } else {
            session.reload();
            notice.say("");
        }
    }

    /**
     * Saves; when others changed the file meanwhile, both versions are put together first.
     *
     * @return whether it was saved
     */
    public boolean save() {
        boolean[] saved = new boolean[1];
        attempt(() -> {
            if (session.changedOnDisk() && Files.exists(session.file()) && session.readOnly().isEmpty() && !putTogether()) {
                return;
            }
            session.save();
            notice.say("");
            saved[0] = true;
        });
        return saved[0];
    }

    private void compare() {
        attempt(this::putTogether);
    }

    private boolean putTogether() throws FileProblemException {
        FileSession<?>.Meeting meeting = session.meet();
        CompareDialog dialog = CompareDialog.ofFile(notice.getShell(), session.workshop(), session.shownName(), meeting.comparison());
        if (dialog.open() != org.eclipse.jface.window.Window.OK) {
            return false;
        }
        meeting.take(meeting.comparison().merged(dialog.choices(session.shownName())));
        check();
        return true;
    }

    private void takeTheirs() throws FileProblemException {
        session.takeTheirs();
        notice.say("");
    }

    private void keepMine() throws FileProblemException {
        session.keepMine();
        notice.say("");
    }

    private void attempt(Attempt attempt) {
        Attempt.at(attempt, refused);
    }
}
