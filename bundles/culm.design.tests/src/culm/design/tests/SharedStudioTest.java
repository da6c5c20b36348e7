package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.Blank;
import culm.design.compare.Choice;
import culm.design.compare.OpenedFile;
import culm.geometry.profile.Profiles;
import culm.model.Design;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;

/** Two people, or two programs, with one file open: nothing of either is lost. */
class SharedStudioTest {
    private static final int EACH = Boolean.getBoolean("culm.long") ? 400 : 100;

    @TempDir
    private Path folder;

    private Path file() throws Exception {
        return Files.copy(Studios.file("trial-12.reed"), folder.resolve("shared.reed"));
    }

    private OpenedFile<Design> open(Path file) throws Exception {
        return OpenedFile.open(Studios.FILES, file, Design.class, Studios.BRIDGE.profiles());
    }

    @Test
    void whatOthersDidIsFoundBeforeASaveAndPutTogether() throws Exception {
        Path file = file();
        OpenedFile<Design> mine = open(file);
        OpenedFile<Design> theirs = open(file);
        theirs.document().getTie().getLength().setValue(71.5);
        theirs.document().setNotes("tied shorter");
        theirs.save();
        assertTrue(mine.changedOnDisk());
        assertFalse(theirs.changedOnDisk());
        mine.document().getTie().getLength().setValue(72.5);
        mine.document().getTie().getWrapTop().setValue(46);
        assertEquals(Kind.CHANGED_ON_DISK, assertThrows(FileProblemException.class, mine::save).problem().kind());
        OpenedFile<Design>.Meeting meeting = mine.meet();
        assertEquals(List.of("tie length"), meeting.comparison().conflicts().stream().map(d -> d.label()).toList());
        OpenedFile<Design> merged = meeting.save(meeting.comparison().merged(Map.of("tie.length", Choice.THEIRS)));
        assertEquals(71.5, merged.document().getTie().getLength().getValue());
        assertEquals(46, merged.document().getTie().getWrapTop().getValue());
        assertEquals("tied shorter", merged.document().getNotes());
        merged.save();
    }

    @Test
    void twoProgramsOnOneDesignLoseNoUpdate() throws Exception {
        Path file = file();
        Process one = start(file, "wrapTop");
        Process two = start(file, "finished");
        String said = text(one) + text(two);
        assertEquals(0, one.waitFor(), said);
        assertEquals(0, two.waitFor(), said);
        Design design = open(file).document();
        Design before = Studios.design("trial-12.reed");
        assertEquals(before.getTie().getWrapTop().getValue() + EACH, design.getTie().getWrapTop().getValue(), 1e-6);
        assertEquals(before.getTie().getFinished().getValue() + EACH, design.getTie().getFinished().getValue(), 1e-6);
        assertTrue(said.contains("met"), "they did meet");
    }

    private static String text(Process process) throws Exception {
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** A plain Java program that adds 1 to a length of the tie, again and again, and puts versions together when it meets the other. */
    private static Process start(Path file, String feature) throws Exception {
        Set<String> where = new LinkedHashSet<>();
        for (Class<?> type : List.of(SharedStudioTest.class, OpenedFile.class, Design.class, Blank.class, Profiles.class, EObject.class, EList.class, FastMath.class,
                ChangeDescription.class, ChangeCommand.class)) {
            where.add(where(type));
        }
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-cp",
                String.join(File.pathSeparator, where), Adding.class.getName(), file.toString(), feature, Integer.toString(EACH)));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    private static String where(Class<?> type) throws Exception {
        CodeSource source = type.getProtectionDomain().getCodeSource();
        Path path = Path.of(source.getLocation().toURI());
        if (Files.isDirectory(path) && !Files.exists(path.resolve(type.getName().replace('.', '/') + ".class"))) {
            path = path.resolve("target/classes");
        }
        return path.toString();
    }

    /** Runs as a process of its own. */
    static final class Adding {
        private Adding() {
        }

        public static void main(String[] args) throws Exception {
            Path file = Path.of(args[0]);
            Profiles profiles = Profiles.load();
            OpenedFile<Design> opened = OpenedFile.open(Studios.FILES, file, Design.class, profiles);
            for (int i = 0; i < Integer.parseInt(args[2]); i++) {
                var tie = opened.document().getTie();
                var length = args[1].equals("wrapTop") ? tie.getWrapTop() : tie.getFinished();
                length.setValue(length.getValue() + 1);
                opened = saved(opened, file, profiles);
            }
        }

        private static OpenedFile<Design> saved(OpenedFile<Design> opened, Path file, Profiles profiles) throws FileProblemException {
            try {
                opened.save();
                return opened;
            } catch (FileProblemException e) {
                requireMeeting(e);
            }
            while (true) {
                try {
                    OpenedFile<Design>.Meeting meeting = opened.meet();
                    if (!meeting.comparison().conflicts().isEmpty()) {
                        throw new IllegalStateException(meeting.comparison().conflicts().toString());
                    }
                    System.out.println("met");
                    return meeting.save(meeting.comparison().merged(Map.of()));
                } catch (FileProblemException e) {
                    requireMeeting(e);
                }
            }
        }

        private static void requireMeeting(FileProblemException e) throws FileProblemException {
            if (e.problem().kind() != Kind.CHANGED_ON_DISK) {
                throw e;
            }
        }
    }
}
