package culm.workbench.internal.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.Consumer;

import culm.model.problem.FileProblemException;
import culm.workbench.internal.widgets.NoticeBar;
import culm.workbench.internal.widgets.NoticeBar.Offer;

/** Notices that the file of a design has changed outside: takes it over when nothing is edited here, otherwise asks. */
final class DiskGuard {
    private final DesignSession session;
    private final NoticeBar notice;
    private final Consumer<FileProblemException> refused;

    DiskGuard(DesignSession session, NoticeBar notice, Consumer<FileProblemException> refused) {
        this.session = session;
        this.notice = notice;
        this.refused = refused;
    }

    /** Files of the studio changed; none given means any may have. */
    void changed(Set<Path> files) {
        if (files.isEmpty() || files.contains(session.file())) {
            check();
        }
        if (files.isEmpty() || files.stream().anyMatch(f -> !f.equals(session.file()))) {
            session.refresh(); // a linked part or my limits may be another now
        }
    }

    /** Looks at the file. */
    void check() {
        attempt(() -> {
            if (!session.changedOnDisk()) {
                if (!notice.sentence().isEmpty()) {
                    notice.say("");
                }
            } else if (!Files.exists(session.file())) {
                notice.say("This file is no longer in the studio. What is shown here can be saved again.",
                        new Offer("keep it", () -> attempt(() -> {
                            session.keepMine();
                            notice.say("");
                        })));
            } else if (session.isDirty()) {
                notice.say("This file was changed outside while it is edited here. Nothing is overwritten.",
                        new Offer("take theirs", this::takeTheirs), new Offer("keep mine", this::keepMine));
            } else {
                session.reload();
            }
        });
    }

    private void takeTheirs() {
        attempt(() -> {
            session.reload();
            notice.say("");
        });
    }

    private void keepMine() {
        attempt(() -> {
            session.keepMine();
            notice.say("");
        });
    }

    private interface Work {
        void run() throws FileProblemException;
    }

    private void attempt(Work work) {
        try {
            work.run();
        } catch (FileProblemException e) {
            refused.accept(e);
        }
    }
}
