package culm.workbench.tests;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import culm.model.files.Claims;

/** Another program that has a file open until it is told to go. */
final class HoldsFile implements AutoCloseable {
    private final Process process;

    /** Starts it, and waits until it has the file. */
    HoldsFile(Path file, String who) throws IOException, URISyntaxException {
        String path = where(Claims.class) + java.io.File.pathSeparator + where(HoldsFile.class);
        process = new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", path, HoldsFile.class.getName(),
                file.toString(), who)).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        process.inputReader().readLine();
    }

    private static String where(Class<?> type) throws URISyntaxException {
        Path path = Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
        boolean project = Files.isDirectory(path) && !Files.exists(path.resolve(type.getName().replace('.', '/') + ".class"));
        return (project ? path.resolve("target/classes") : path).toString();
    }

    /**
     * The other program.
     *
     * @param arguments the file, and who has it open
     */
    public static void main(String[] arguments) throws IOException {
        try (Claims claims = new Claims()) {
            System.out.println(claims.claim(Path.of(arguments[0]), arguments[1], Instant.now()).isEmpty());
            System.in.read();
        }
    }

    @Override
    public void close() throws InterruptedException, IOException {
        process.getOutputStream().close();
        process.waitFor();
    }
}
