package culm.history;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.treewalk.FileTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;

/** What is in the folder and belongs to the history: everything but what is ignored. */
final class WorkingFolder {
    private final Git git;

    WorkingFolder(Git git) {
        this.git = git;
    }

    Set<String> names() throws IOException {
        Set<String> names = new TreeSet<>();
        try (TreeWalk walk = new TreeWalk(git.getRepository())) {
            int folder = walk.addTree(new FileTreeIterator(git.getRepository()));
            while (walk.next()) {
                FileTreeIterator here = walk.getTree(folder, FileTreeIterator.class);
                if (here.isEntryIgnored()) {
                    continue;
                }
                if (walk.isSubtree()) {
                    walk.enterSubtree();
                } else {
                    names.add(walk.getPathString());
                }
            }
        }
        return names;
    }
}
