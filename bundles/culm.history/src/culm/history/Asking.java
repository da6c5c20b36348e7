package culm.history;

import java.util.Arrays;
import java.util.Optional;

import org.eclipse.jgit.transport.CredentialItem;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.URIish;

import culm.history.Secrets.Login;

/** Hands a login to the transport once it is asked for, and wipes it at the end. Everything else a server asks is declined. */
final class Asking extends CredentialsProvider implements AutoCloseable {
    private final String address;
    private final Secrets secrets;
    private Login login;

    Asking(String address, Secrets secrets) {
        this.address = address;
        this.secrets = secrets;
    }

    @Override
    public boolean isInteractive() {
        return false;
    }

    @Override
    public boolean supports(CredentialItem... items) {
        return Arrays.stream(items).allMatch(item -> item instanceof CredentialItem.Username || item instanceof CredentialItem.Password);
    }

    @Override
    public boolean get(URIish uri, CredentialItem... items) {
        if (!supports(items)) {
            return false;
        }
        if (login == null) {
            Optional<Login> given = secrets.login(address);
            if (given.isEmpty()) {
                return false;
            }
            login = given.get();
        }
        for (CredentialItem item : items) {
            if (item instanceof CredentialItem.Username user) {
                user.setValue(login.user());
            } else if (item instanceof CredentialItem.Password password) {
                password.setValueNoCopy(login.password().clone());
            }
        }
        return true;
    }

    @Override
    public void close() {
        if (login != null) {
            Arrays.fill(login.password(), '\0');
        }
    }
}
