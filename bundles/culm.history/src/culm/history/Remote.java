package culm.history;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteConfig;
import org.eclipse.jgit.transport.URIish;

/** The folder or server that a studio is shared through. */
final class Remote {
    static final String NAME = "shared";
    static final String BRANCH = "studio";

    private Remote() {
    }

    static Optional<String> address(StoredConfig config) {
        return Optional.ofNullable(config.getString("remote", NAME, "url"));
    }

    /** Notes the address; a folder that is empty or not there becomes a repository that others can share. */
    static void set(Git git, String given) throws HistoryException {
        String address = checked(given);
        try {
            URIish uri = new URIish(address);
            if (!uri.isRemote()) {
                prepare(Path.of(address));
            }
            StoredConfig config = git.getRepository().getConfig();
            RemoteConfig remote = new RemoteConfig(config, NAME);
            new ArrayList<>(remote.getURIs()).forEach(remote::removeURI);
            remote.addURI(uri);
            remote.setFetchRefSpecs(List.of(new RefSpec("+refs/heads/*:refs/remotes/" + NAME + "/*")));
            remote.update(config);
            config.save();
        } catch (URISyntaxException | IOException | GitAPIException e) {
            throw new HistoryException("The studio cannot be shared through " + address + ": " + e.getMessage() + ".", e);
        }
    }

    /** The address, a folder's in full. @throws HistoryException when it holds a password, which would be stored, or is no address */
    static String checked(String address) throws HistoryException {
        try {
            URIish uri = new URIish(address);
            if (uri.getPass() != null) {
                throw new HistoryException("An address must not hold a password; leave it out and give it when you are asked.");
            }
            return uri.isRemote() ? address : Path.of(address).toAbsolutePath().normalize().toString();
        } catch (URISyntaxException | InvalidPathException e) {
            throw new HistoryException("\"" + address + "\" is no address of a folder or server.", e);
        }
    }

    private static void prepare(Path folder) throws IOException, GitAPIException, HistoryException {
        Files.createDirectories(folder);
        boolean empty;
        try (Stream<Path> held = Files.list(folder)) {
            empty = held.findAny().isEmpty();
        }
        if (empty) {
            Git.init().setBare(true).setDirectory(folder.toFile()).setInitialBranch(BRANCH).call().close();
        } else if (!Files.exists(folder.resolve("HEAD")) && !Files.exists(folder.resolve(".git"))) {
            throw new HistoryException(folder + " is neither empty nor a shared studio; choose another folder.");
        }
    }
}
