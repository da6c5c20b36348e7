package culm.history;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import org.eclipse.jgit.transport.PushResult;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteRefUpdate;

import culm.design.compare.Choice;
import culm.design.compare.Difference;

/** Sending and receiving. */
final class Exchange {
    private final StudioHistory history;
    private final Git git;
    private final Secrets secrets;

    Exchange(StudioHistory history, Secrets secrets) {
        this.history = history;
        this.git = history.git();
        this.secrets = secrets;
    }

    void send() throws HistoryException {
        String address = address();
        StudioHistory.done("Nothing could be sent to " + address, () -> {
            String branch = git.getRepository().getBranch();
            try (Asking asking = new Asking(address, secrets)) {
                for (PushResult result : git.push().setRemote(Remote.NAME).setRefSpecs(new RefSpec("refs/heads/" + branch + ":refs/heads/" + Remote.BRANCH))
                        .setCredentialsProvider(asking).call()) {
                    for (RemoteRefUpdate update : result.getRemoteUpdates()) {
                        refuse(update, address);
                    }
                }
            }
            return null;
        });
    }

    private static void refuse(RemoteRefUpdate update, String address) throws HistoryException {
        switch (update.getStatus()) {
            case OK, UP_TO_DATE -> {
            }
            case REJECTED_NONFASTFORWARD, REJECTED_REMOTE_CHANGED -> throw new HistoryException("Others sent something to " + address + " since you received last; receive it first.");
            default -> throw new HistoryException(address + " did not take it: " + update.getStatus() + (update.getMessage() == null ? "" : " " + update.getMessage()) + ".");
        }
    }

    Received receive(Choices choices) throws HistoryException {
        String address = address();
        return StudioHistory.done("Nothing could be received from " + address, () -> {
            try (Asking asking = new Asking(address, secrets)) {
                git.fetch().setRemote(Remote.NAME).setCredentialsProvider(asking).call();
            }
            Ref ref = git.getRepository().findRef("refs/remotes/" + Remote.NAME + "/" + Remote.BRANCH);
            RevCommit mine = history.head();
            if (ref == null || mine == null) {
                return nothingNew();
            }
            RevCommit theirs = history.parsed(ref.getObjectId());
            RevCommit common = common(mine, theirs);
            return theirs.equals(common) ? nothingNew() : together(mine, theirs, common, choices);
        });
    }

    private static Received nothingNew() {
        return new Received(Received.Outcome.NOTHING_NEW, List.of(), List.of());
    }

    private RevCommit common(RevCommit mine, RevCommit theirs) throws IOException {
        try (RevWalk walk = new RevWalk(git.getRepository())) {
            walk.setRevFilter(RevFilter.MERGE_BASE);
            walk.markStart(walk.parseCommit(mine));
            walk.markStart(walk.parseCommit(theirs));
            RevCommit found = walk.next();
            return found == null ? null : history.parsed(found);
        }
    }

    private Received together(RevCommit mine, RevCommit theirs, RevCommit common, Choices choices) throws IOException, GitAPIException, HistoryException {
        Map<String, ObjectId> before = Trees.files(git.getRepository(), common);
        Map<String, ObjectId> yours = Trees.files(git.getRepository(), mine);
        Map<String, ObjectId> others = Trees.files(git.getRepository(), theirs);
        TreeSet<String> names = new TreeSet<>(yours.keySet());
        names.addAll(others.keySet());
        Map<String, byte[]> results = new LinkedHashMap<>();
        List<Meeting> meetings = new ArrayList<>();
        boolean open = false;
        for (String name : names) {
            ObjectId b = before.get(name);
            ObjectId y = yours.get(name);
            ObjectId t = others.get(name);
            if (Objects.equals(y, t) || Objects.equals(b, t)) {
                continue;
            }
            if (Objects.equals(b, y)) {
                results.put(name, bytes(t));
                continue;
            }
            Meeting meeting = new Meeting(name, y == null || t == null ? Optional.empty() : history.documents().compare(name, bytes(b), bytes(y), bytes(t)), y != null, t != null);
            meetings.add(meeting);
            open |= meeting.conflicts().stream().anyMatch(c -> choices.of(name, c.path()) == null);
            results.put(name, merged(meeting, choices, bytes(b), bytes(y), bytes(t)));
        }
        if (open) {
            return new Received(Received.Outcome.CHOICE_NEEDED, List.of(), List.copyOf(meetings));
        }
        return takenOver(mine, theirs, results, yours, meetings);
    }

    private byte[] merged(Meeting meeting, Choices choices, byte[] before, byte[] yours, byte[] theirs) {
        if (meeting.comparison().isEmpty()) {
            Choice whole = choices.of(meeting.file(), "");
            return whole == Choice.THEIRS ? theirs : whole == Choice.BEFORE ? before : yours;
        }
        Map<String, Choice> chosen = new HashMap<>(choices.of(meeting.file()));
        for (Difference conflict : meeting.conflicts()) {
            Choice choice = choices.of(meeting.file(), conflict.path());
            if (choice != null) {
                chosen.put(conflict.path(), choice);
            }
        }
        return history.documents().bytes(meeting.comparison().get().merged(chosen));
    }

    private Received takenOver(RevCommit mine, RevCommit theirs, Map<String, byte[]> results, Map<String, ObjectId> yours, List<Meeting> meetings)
            throws IOException, GitAPIException, HistoryException {
        Repository repository = git.getRepository();
        for (Map.Entry<String, byte[]> result : results.entrySet()) {
            if (!Arrays.equals(history.read(result.getKey()), bytes(yours.get(result.getKey())))) {
                throw new HistoryException(result.getKey() + " was changed while this was going on; nothing more was taken over. Receive again.");
            }
            history.write(result.getKey(), result.getValue());
        }
        List<FileChange> changes = history.changes(yours, null);
        git.add().addFilepattern(".").call();
        git.add().addFilepattern(".").setUpdate(true).call();
        boolean ahead = mine.equals(common(mine, theirs));
        if (ahead && Trees.files(repository, theirs).equals(indexed())) {
            git.merge().include(theirs).setFastForward(org.eclipse.jgit.api.MergeCommand.FastForwardMode.FF_ONLY).call();
        } else {
            repository.writeMergeHeads(List.of(theirs));
            history.note("Put together with what " + theirs.getAuthorIdent().getName() + " sent\n\n" + (changes.isEmpty() ? "" : Messages.of(changes))).call();
        }
        return new Received(Received.Outcome.TAKEN_OVER, changes, List.copyOf(meetings));
    }

    private Map<String, ObjectId> indexed() throws IOException {
        Map<String, ObjectId> all = new java.util.TreeMap<>();
        var index = git.getRepository().readDirCache();
        for (int i = 0; i < index.getEntryCount(); i++) {
            all.put(index.getEntry(i).getPathString(), index.getEntry(i).getObjectId());
        }
        return all;
    }

    private byte[] bytes(ObjectId id) throws IOException {
        return Trees.bytes(git.getRepository(), id);
    }

    private String address() throws HistoryException {
        return history.sharedThrough().orElseThrow(() -> new HistoryException("The studio is not shared; say first through which folder or server."));
    }
}
