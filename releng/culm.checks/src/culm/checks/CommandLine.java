package culm.checks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One run of the built program as a process.
 *
 * @param code what it ended with
 * @param out  what it printed
 * @param err  what it said beside
 */
record CommandLine(int code, String out, String err) {

    /** Runs {@code ./culm} with these words, in a folder, without a display; what is built is not built again. */
    static CommandLine run(Path folder, String... words) throws IOException, InterruptedException {
        return run(folder, Map.of(), words);
    }

    /** The same with some variables of the environment set. */
    static CommandLine run(Path folder, Map<String, String> environment, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Tree.ROOT.resolve("culm").toString()));
        command.addAll(List.of(words));
        Path out = Files.createTempFile("culm", ".out");
        Path err = Files.createTempFile("culm", ".err");
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("CULM_BUILD", "never");
        builder.environment().putAll(environment);
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        try {
            int code = builder.start().waitFor();
            return new CommandLine(code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }
}
