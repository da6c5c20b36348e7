package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.action.Action;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;

import culm.workbench.internal.Application;
import culm.workbench.internal.LoadedClasses;

/** What one run has loaded is loaded beforehand in the next, and what is not there any more is passed over. */
class LoadedClassesTest {
    @TempDir
    Path folder;

    private final String jar = FrameworkUtil.getBundle(Action.class).getLocation().replaceFirst(".*[:/]", "");
    private Path log;
    private Path list;

    @BeforeEach
    void choose() {
        log = folder.resolve("log");
        list = folder.resolve("list");
    }

    @Test
    void whatAProgramLoadedIsFoundInItsJarsAgain() throws Exception {
        Files.write(log, List.of(line("org.eclipse.jface.action.IAction"), "java.lang.Object source: jrt:/java.base", line(Application.class.getName()),
                line(Action.class.getName()), "culm.Hidden/0x0000 source: culm.Shown", line("org.eclipse.jface.Gone"), line(Action.class.getName()),
                "culm.Lost source: file:/nowhere/lost.jar"));
        assertEquals(4, new LoadedClasses().remember(log, list));
        assertEquals(List.of(jar + " " + Application.class.getName(), jar + " " + Action.class.getName(), jar + " org.eclipse.jface.Gone", "lost.jar culm.Lost"),
                Files.readAllLines(list), "each once, from the program's beginning on");
        assertEquals(1, new LoadedClasses().load(list), "the others are not there");
    }

    @Test
    void aSpoiltListIsPassedOver() throws Exception {
        Files.write(list, List.of("", "no", jar + "  ", "a b c"));
        assertEquals(0, new LoadedClasses().load(list));
        assertThrows(IOException.class, () -> new LoadedClasses().load(folder.resolve("none")));
    }

    private String line(String name) {
        return name + " source: file:/somewhere/plugins/" + jar;
    }
}
