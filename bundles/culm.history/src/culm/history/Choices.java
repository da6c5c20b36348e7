package culm.history;

import java.util.Map;

import culm.design.compare.Choice;

/**
 * What was chosen where both changed something.
 *
 * @param byFile for each file the choices by path; the empty path stands for the file as a whole
 * @param rest   for every conflict without a choice of its own; null leaves it open
 */
public record Choices(Map<String, Map<String, Choice>> byFile, Choice rest) {
    /** Nothing chosen. */
    public static final Choices NONE = new Choices(Map.of(), null);

    /** The same for every conflict. */
    public static Choices all(Choice rest) {
        return new Choices(Map.of(), rest);
    }

    /** The choice for a conflict; null when it is open. */
    Choice of(String file, String path) {
        return byFile.getOrDefault(file, Map.of()).getOrDefault(path, rest);
    }

    /** What is chosen for one file's paths. */
    Map<String, Choice> of(String file) {
        return byFile.getOrDefault(file, Map.of());
    }
}
