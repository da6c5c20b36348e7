package culm.cli.history;

import java.io.Console;
import java.util.Optional;

import culm.cli.Terminal;
import culm.history.Secrets;

/** A server's login: from the environment, or asked for at the console without showing it. Never stored. */
record AskedSecrets(Terminal terminal) implements Secrets {
    @Override
    public Optional<Login> login(String address) {
        String user = System.getenv("CULM_USER");
        String password = System.getenv("CULM_PASSWORD");
        if (user != null && password != null) {
            return Optional.of(new Login(user, password.toCharArray()));
        }
        Console console = System.console();
        if (console == null) {
            terminal.err().println(address + " wants a name and a password; set CULM_USER and CULM_PASSWORD");
            return Optional.empty();
        }
        String name = console.readLine("Name at %s: ", address);
        char[] secret = console.readPassword("Password: ");
        return name == null || secret == null ? Optional.empty() : Optional.of(new Login(name, secret));
    }
}
