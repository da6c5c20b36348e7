package culm.workbench.internal.sharing;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;

import culm.model.files.Claims.Holder;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.widgets.NoticeBar;
import culm.workbench.internal.widgets.NoticeBar.Offer;

/**
 * Says to others that a file is open here. When somebody else has it open, it is only looked at, who and since when is said, and it can be
 * changed all the same: the two versions are then put together when the second one saves.
 */
public final class ClaimGuard {
    private final FileSession<?> session;
    private final NoticeBar notice;
    private final Consumer<FileProblemException> refused;
    private boolean claimed;
    private boolean waived;

    /**
     * Claims a file as long as it is open.
     *
     * @param session the file
     * @param notice where it is said
     * @param refused told why something cannot be done
     */
    public ClaimGuard(FileSession<?> session, NoticeBar notice, Consumer<FileProblemException> refused) {
        this.session = session;
        this.notice = notice;
        this.refused = refused;
        check();
    }

    /** Tries again, since the other may have closed it. */
    public void check() {
        if (claimed || waived || session.newer().isPresent()) {
            return;
        }
        boolean waited = session.readOnly().isPresent();
        try {
            Optional<Holder> other = session.workshop().claims().claim(session.file(), session.workshop().who(), Instant.now());
            claimed = other.isEmpty();
            if (other.isPresent()) {
                session.lookOnly(Optional.of(problem(other.get())));
                notice.say(sentence(other.get()) + ", so it is only looked at here.", new Offer("change it all the same", this::waive),
                        new Offer("try again", this::check));
                return;
            }
        } catch (IOException e) {
            ILog.get().info("Others are not told that " + session.file() + " is open here: " + e.getMessage());
            waived = true;
        }
        if (waited) {
            letGo();
        }
    }

    private void letGo() {
        session.lookOnly(Optional.empty());
        notice.say("");
        Attempt.at(() -> {
            if (session.changedOnDisk() && !session.isDirty()) {
                session.reload();
            }
        }, refused);
    }

    private void waive() {
        waived = true;
        letGo();
    }

    private FileProblem problem(Holder holder) {
        return new FileProblem(Kind.NOT_ACCESSIBLE, session.shownName(), 0, "", sentence(holder) + "; it is only looked at here");
    }

    /** {@return who has it open and since when, the beginning of a sentence} */
    static String sentence(Holder holder) {
        String who = holder.who().isBlank() ? "Somebody else" : holder.who();
        String since = since(holder.since());
        return who + (since.isEmpty() ? " has this file open" : " has had this file open" + since);
    }

    private static String since(String given) {
        try {
            ZonedDateTime then = Instant.parse(given).atZone(ZoneId.systemDefault());
            String form = then.toLocalDate().equals(LocalDate.now()) ? "HH:mm" : "d MMMM, HH:mm";
            return " since " + DateTimeFormatter.ofPattern(form, Locale.ENGLISH).format(then);
        } catch (DateTimeParseException e) {
            return ""; // not written by this program; who it is can be said all the same
        }
    }

    /** Lets others have it. */
    public void close() {
        if (!claimed) {
            return;
        }
        try {
            session.workshop().claims().release(session.file());
        } catch (IOException e) {
            ILog.get().warn(session.file() + " may still count as open here.", e);
        }
    }
}
