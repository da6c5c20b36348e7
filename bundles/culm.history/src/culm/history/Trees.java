package culm.history;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.treewalk.TreeWalk;

/** The files of a version. */
final class Trees {
    private Trees() {
    }

    /** Each file's content by its name, as the repository calls it. */
    static Map<String, ObjectId> files(Repository repository, RevCommit commit) throws IOException {
        Map<String, ObjectId> files = new TreeMap<>();
        if (commit == null) {
            return files;
        }
        try (TreeWalk walk = new TreeWalk(repository)) {
            walk.addTree(commit.getTree());
            walk.setRecursive(true);
            while (walk.next()) {
                files.put(walk.getPathString(), walk.getObjectId(0));
            }
        }
        return files;
    }

    /** A file's bytes; null for no file. */
    static byte[] bytes(Repository repository, ObjectId content) throws IOException {
        return content == null ? null : repository.open(content).getBytes();
    }
}
