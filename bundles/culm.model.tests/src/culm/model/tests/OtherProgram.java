package culm.model.tests;

import culm.model.files.Claims;
import culm.model.files.ContentStamp;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** A plain Java program that saves and claims files, to be run and killed beside the tests. */
public final class OtherProgram {
    private OtherProgram() {
    }

    /** @param args what to do, the file, and a number or name */
    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[1]);
        switch (args[0]) {
            case "save" -> saveForEver(file, Long.parseLong(args[2]));
            case "count" -> count(file, Integer.parseInt(args[2]));
            case "claim" -> System.out.println(new Claims().claim(file, args[2], Instant.now())
                    .map(holder -> holder.who() + "\n" + holder.since()).orElse("claimed"));
            default -> throw new IllegalArgumentException(args[0]);
        }
    }

    /** Saves one content after the other and tells the number of each when it is saved. */
    private static void saveForEver(Path file, long seed) throws FileProblemException {
        SplittableRandom random = new SplittableRandom(seed);
        for (int number = 1;; number++) {
            SafeFile.overwrite(file, content(number, random.nextInt(300_000)));
            System.out.println(number);
        }
    }

    /** A content that tells whether it is whole. */
    static byte[] content(int number, int length) {
        String body = number + " " + "x".repeat(length);
        return (body + " " + body.hashCode()).getBytes(StandardCharsets.UTF_8);
    }

    /** The number of a content. @throws IllegalStateException when it is not whole */
    static int number(byte[] content) {
        String text = new String(content, StandardCharsets.UTF_8);
        int cut = text.lastIndexOf(' ');
        if (cut < 0 || !text.substring(cut + 1).equals(Integer.toString(text.substring(0, cut).hashCode()))) {
            throw new IllegalStateException("not whole: " + text.length() + " characters");
        }
        return Integer.parseInt(text.substring(0, text.indexOf(' ')));
    }

    /** Raises the number in a file by one, as often as asked; when another was faster, looks again. */
    private static void count(Path file, int times) throws IOException, FileProblemException {
        for (int done = 0; done < times;) {
            byte[] read = Files.readAllBytes(file);
            int number = Integer.parseInt(new String(read, StandardCharsets.UTF_8));
            try {
                SafeFile.replace(file, Integer.toString(number + 1).getBytes(StandardCharsets.UTF_8),
                        Optional.of(ContentStamp.of(read)));
                done++;
            } catch (FileProblemException e) {
                if (e.problem().kind() != FileProblem.Kind.CHANGED_ON_DISK) {
                    throw e;
                }
                System.out.println("again");
            }
        }
    }

    static List<String> claim(Path file, String who) throws Exception {
        Process process = start("claim", file, who);
        try (InputStream out = process.getInputStream()) {
            List<String> lines = new String(out.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
            process.waitFor();
            return lines;
        }
    }

    static Process start(String what, Path file, String argument) throws IOException, URISyntaxException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-cp", where(OtherProgram.class) + File.pathSeparator + where(SafeFile.class),
                OtherProgram.class.getName(), what, file.toString(), argument));
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    /** The folder or jar a class comes from, as a plain Java program can use it. */
    private static String where(Class<?> type) throws IOException, URISyntaxException {
        CodeSource source = type.getProtectionDomain().getCodeSource();
        Path path = Path.of(source.getLocation().toURI());
        if (Files.isDirectory(path) && !Files.exists(path.resolve(type.getName().replace('.', '/') + ".class"))) {
            path = path.resolve("target/classes");
        }
        return path.toString();
    }
}
