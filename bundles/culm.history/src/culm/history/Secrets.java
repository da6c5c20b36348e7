package culm.history;

import java.util.Optional;

/** Asks for what a server wants to know; nothing of it is stored. */
public interface Secrets {
    /** Asks nobody: a server that wants a password refuses. */
    Secrets NONE = address -> Optional.empty();

    /**
     * A name and a password.
     *
     * @param user     name on the server
     * @param password wiped once it was used
     */
    record Login(String user, char[] password) {
    }

    /** The login for an address; empty to give up. */
    Optional<Login> login(String address);
}
