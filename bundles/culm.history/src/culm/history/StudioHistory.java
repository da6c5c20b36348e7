package culm.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jgit.api.CommitCommand;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.LogCommand;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.api.errors.JGitInternalException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

import culm.geometry.profile.Profiles;
import culm.model.files.Claims;
import culm.model.files.ModelFiles;
import culm.model.files.Recovery;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;

/**
 * The history of one studio: the studio's folder as a git repository. Files are only ever written beside and moved over ({@link SafeFile}),
 * and nothing that is not kept is overwritten. For one thread at a time.
 */
public final class StudioHistory implements AutoCloseable {
    /** First what always belongs to it, since a machine's own settings often leave out names such as *.log; then what never does. */
    private static final String IGNORED = each("!*%s\n")
            + String.join("\n", "*" + SafeFile.BACKUP, "*" + SafeFile.HALF_WRITTEN, ".*" + Claims.NAME, ".*" + Recovery.NAME, SafeFile.LOCK, ".removed/", "");
    /** Line ends are never changed, whatever a machine's settings say. */
    private static final String ATTRIBUTES = each("*%s -text\n");
    private static final int MOST_VERSIONS = 10_000;
    private final Path root;
    private final Git git;
    private final Documents documents;

    /** A line for each sort of file that a studio has. */
    private static String each(String line) {
        return Stream.of(FileKind.values()).map(kind -> line.formatted(kind.ending())).collect(Collectors.joining());
    }

    private StudioHistory(Path root, Git git, Profiles profiles) {
        this.root = root;
        this.git = git;
        this.documents = new Documents(new ModelFiles(), profiles);
    }

    /**
     * Opens a studio's history.
     *
     * @param profiles the types that are known, for the words of their numbers
     * @return empty when the folder is no repository: history is off then
     */
    public static Optional<StudioHistory> open(Path studio, Profiles profiles) throws HistoryException {
        Path root = studio.toAbsolutePath().normalize();
        if (!Files.exists(root.resolve(Constants.DOT_GIT))) {
            return Optional.empty();
        }
        try {
            Repository repository = new FileRepositoryBuilder().setGitDir(root.resolve(Constants.DOT_GIT).toFile()).setWorkTree(root.toFile()).build();
            return Optional.of(new StudioHistory(root, new Git(repository), profiles));
        } catch (IOException e) {
            throw new HistoryException("The history in " + root + " cannot be opened: " + e.getMessage() + ".", e);
        }
    }

    /** Begins a history and keeps what is there as its first version. @param who the name that stands at versions */
    public static StudioHistory begin(Path studio, Profiles profiles, String who) throws HistoryException {
        Path root = studio.toAbsolutePath().normalize();
        if (Files.exists(root.resolve(Constants.DOT_GIT))) {
            throw new HistoryException(root + " has a history already.");
        }
        try {
            Git git = Git.init().setDirectory(root.toFile()).setInitialBranch(Remote.BRANCH).call();
            settings(git, who);
            writeNew(root.resolve(Constants.DOT_GIT_IGNORE), IGNORED);
            writeNew(root.resolve(Constants.DOT_GIT_ATTRIBUTES), ATTRIBUTES);
            StudioHistory history = new StudioHistory(root, git, profiles);
            history.keep("Beginning of this studio's history");
            return history;
        } catch (GitAPIException | IOException e) {
            throw new HistoryException("A history cannot be begun in " + root + ": " + e.getMessage() + ".", e);
        }
    }

    /**
     * Joins a studio that others share: its files and its history into a new folder.
     *
     * @param address the folder or server they share it through
     * @param studio  where it shall be; not there yet, or empty
     * @param who     the name that stands at versions
     */
    public static StudioHistory join(String address, Path studio, Profiles profiles, String who, Secrets secrets) throws HistoryException {
        Path root = studio.toAbsolutePath().normalize();
        String full = Remote.checked(address);
        try (Asking asking = new Asking(full, secrets)) {
            Git git = Git.cloneRepository().setURI(full).setDirectory(root.toFile()).setRemote(Remote.NAME).setBranch(Remote.BRANCH).setNoCheckout(true)
                    .setCredentialsProvider(asking).call();
            settings(git, who);
            git.checkout().setName(Remote.BRANCH).setCreateBranch(git.getRepository().findRef("refs/heads/" + Remote.BRANCH) == null)
                    .setStartPoint("refs/remotes/" + Remote.NAME + "/" + Remote.BRANCH).setForced(true).call();
            return new StudioHistory(root, git, profiles);
        } catch (GitAPIException | IOException | JGitInternalException e) {
            throw new HistoryException("The studio cannot be had from " + address + ": " + e.getMessage() + ".", e);
        }
    }

    private static void settings(Git git, String who) throws IOException {
        StoredConfig config = git.getRepository().getConfig();
        config.setBoolean("core", null, "autocrlf", false);
        config.setBoolean("commit", null, "gpgsign", false);
        config.setString("user", null, "name", who);
        config.save();
    }

    private static void writeNew(Path file, String text) throws IOException {
        if (!Files.exists(file)) {
            Files.writeString(file, text);
        }
    }

    /** The folder of the studio. */
    public Path root() {
        return root;
    }

    /** All versions, the newest first. */
    public List<Version> versions() throws HistoryException {
        return log(null);
    }

    /** The versions in which one file changed, the newest first. */
    public List<Version> versions(Path file) throws HistoryException {
        return log(name(file));
    }

    private List<Version> log(String file) throws HistoryException {
        return done("The history cannot be read", () -> {
            List<Version> all = new ArrayList<>();
            if (head() != null) {
                LogCommand log = git.log().setMaxCount(MOST_VERSIONS);
                for (RevCommit commit : (file == null ? log : log.addPath(file)).call()) {
                    all.add(version(commit));
                }
            }
            return all;
        });
    }

    /** The version of this name, or whose name begins so. */
    public Version version(String id) throws HistoryException {
        return done("The history cannot be read", () -> version(commit(id)));
    }

    /** What is in the folder and not in the newest version. */
    public List<FileChange> unkept() throws HistoryException {
        return done("What changed cannot be told", () -> changes(Trees.files(git.getRepository(), head()), null));
    }

    /** What changed from one version to a later one. */
    public List<FileChange> changes(Version from, Version to) throws HistoryException {
        return done("What changed cannot be told", () -> changes(Trees.files(git.getRepository(), commit(from.id())), Trees.files(git.getRepository(), commit(to.id()))));
    }

    /** What changed from a version to what is in the folder now. */
    public List<FileChange> changesSince(Version from) throws HistoryException {
        return done("What changed cannot be told", () -> changes(Trees.files(git.getRepository(), commit(from.id())), null));
    }

    /**
     * Keeps what is in the folder as a new version.
     *
     * @param note what is said about it; empty: what changed, in words of the trade
     * @return empty when nothing changed
     */
    public Optional<Version> keep(String note) throws HistoryException {
        return done("A version cannot be kept", () -> {
            List<FileChange> changes = changes(Trees.files(git.getRepository(), head()), null);
            if (changes.isEmpty()) {
                return Optional.empty();
            }
            git.add().addFilepattern(".").call();
            git.add().addFilepattern(".").setUpdate(true).call();
            return Optional.of(version(note(note.isBlank() ? Messages.of(changes) : note).call()));
        });
    }

    /** A file as it was in a version; empty when it was not there. */
    public Optional<byte[]> content(Version version, Path file) throws HistoryException {
        return done("The version cannot be read", () -> {
            ObjectId id = Trees.files(git.getRepository(), commit(version.id())).get(name(file));
            return Optional.ofNullable(Trees.bytes(git.getRepository(), id));
        });
    }

    /**
     * Goes back to a version: writes its files over those in the folder. What is there now is kept as a version first, so nothing is lost.
     *
     * @param files the files to go back with; empty: all of them, and files that the version does not have are removed
     */
    public void back(Version version, List<Path> files) throws HistoryException {
        done("The studio cannot go back to that version", () -> {
            keep("");
            Map<String, ObjectId> then = Trees.files(git.getRepository(), commit(version.id()));
            Set<String> names = new LinkedHashSet<>();
            files.forEach(file -> names.add(name(file)));
            if (files.isEmpty()) {
                names.addAll(then.keySet());
                names.addAll(Trees.files(git.getRepository(), head()).keySet());
            }
            for (String each : names) {
                write(each, Trees.bytes(git.getRepository(), then.get(each)));
            }
            keep(Version.backTo(version));
            return null;
        });
    }

    /** The folder or server that the studio is shared through. */
    public Optional<String> sharedThrough() {
        return Remote.address(git.getRepository().getConfig());
    }

    /** Shares the studio through a folder or server; it is noted without any password. A folder that is not there is made. */
    public void share(String address) throws HistoryException {
        Remote.set(git, address);
    }

    /** Sends every kept version. @throws HistoryException also when the others sent something first, which has to be received before */
    public void send(Secrets secrets) throws HistoryException {
        keep("");
        new Exchange(this, secrets).send();
    }

    /**
     * Receives what others sent, and puts it together with what is here. What is not kept yet is kept first.
     *
     * @param choices for what both changed; with an open choice nothing is taken over
     */
    public Received receive(Secrets secrets, Choices choices) throws HistoryException {
        keep("");
        return new Exchange(this, secrets).receive(choices);
    }

    @Override
    public void close() {
        git.getRepository().close();
        git.close();
    }

    Git git() {
        return git;
    }

    Documents documents() {
        return documents;
    }

    /** @return the newest version; null before the first */
    RevCommit head() throws IOException {
        ObjectId id = git.getRepository().resolve(Constants.HEAD);
        return id == null ? null : parsed(id);
    }

    RevCommit parsed(ObjectId id) throws IOException {
        try (RevWalk walk = new RevWalk(git.getRepository())) {
            return walk.parseCommit(id);
        }
    }

    /** Changes between files of the repository. @param to null: what is in the folder */
    List<FileChange> changes(Map<String, ObjectId> from, Map<String, ObjectId> to) throws IOException, GitAPIException {
        Set<String> names = new LinkedHashSet<>(from.keySet());
        names.addAll(to == null ? new WorkingFolder(git).names() : to.keySet());
        List<FileChange> all = new ArrayList<>();
        for (String name : names) {
            byte[] before = Trees.bytes(git.getRepository(), from.get(name));
            byte[] now = to == null ? read(name) : Trees.bytes(git.getRepository(), to.get(name));
            if (!java.util.Arrays.equals(before, now)) {
                all.add(documents.change(name, before, now));
            }
        }
        return all;
    }

    /** What the folder holds under a name; null for no file. */
    byte[] read(String name) throws IOException {
        Path file = root.resolve(name);
        return Files.isRegularFile(file) ? Files.readAllBytes(file) : null;
    }

    /** Writes or, for null, removes a file of the folder. */
    void write(String name, byte[] content) throws IOException, HistoryException {
        Path file = root.resolve(name);
        if (!file.normalize().startsWith(root)) {
            throw new HistoryException("The history has a file outside the studio: " + name + ".");
        }
        if (content == null) {
            Files.deleteIfExists(file);
            return;
        }
        Files.createDirectories(file.getParent());
        try {
            SafeFile.overwrite(file, content);
        } catch (FileProblemException e) {
            throw new HistoryException(e.problem().message(), e);
        }
    }

    CommitCommand note(String note) {
        PersonIdent who = new PersonIdent(Objects.requireNonNullElse(git.getRepository().getConfig().getString("user", null, "name"), "someone"), "");
        return git.commit().setMessage(note).setAuthor(who).setCommitter(who).setSign(false).setNoVerify(true);
    }

    private RevCommit commit(String id) throws IOException, HistoryException {
        ObjectId found = git.getRepository().resolve(id + "^{commit}");
        if (found == null) {
            throw new HistoryException("There is no version \"" + id + "\".");
        }
        return parsed(found);
    }

    private String name(Path file) {
        return root.relativize(file.toAbsolutePath().normalize()).toString().replace(root.getFileSystem().getSeparator(), "/");
    }

    private static Version version(RevCommit commit) {
        return new Version(commit.name(), commit.getAuthorIdent().getName(), commit.getAuthorIdent().getWhenAsInstant(), commit.getFullMessage().strip());
    }

    /** Work on the repository; what it throws becomes one sentence. */
    static <R> R done(String failed, Work<R> work) throws HistoryException {
        try {
            return work.run();
        } catch (IOException | GitAPIException | JGitInternalException e) {
            throw new HistoryException(failed + ": " + e.getMessage() + ".", e);
        }
    }

    /** Work that may fail in the ways that git does. */
    @FunctionalInterface
    interface Work<R> {
        R run() throws IOException, GitAPIException, HistoryException;
    }
}
