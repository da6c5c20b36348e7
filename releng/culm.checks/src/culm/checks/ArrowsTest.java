package culm.checks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/** The arrows between the rooms, as the compiled classes keep them. */
@TestInstance(Lifecycle.PER_CLASS)
class ArrowsTest {

    private static final String[] WINDOWS = { "org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui..", "org.eclipse.e4.ui.." };

    private JavaClasses shipped;
    private JavaClasses everything;

    @BeforeAll
    void read() throws IOException {
        List<Path> bundles = Tree.bundles();
        List<Path> classes = bundles.stream().map(each -> each.resolve("target/classes")).toList();
        ClassFileImporter importer = new ClassFileImporter();
        shipped = importer.importPaths(classes.stream().filter(each -> !each.getParent().getParent().toString().endsWith(".tests")).toList());
        everything = importer.importPaths(Stream.concat(classes.stream(), bundles.stream().map(each -> each.resolve("target/test-classes"))).toList());
        for (String room : Rooms.MAY_USE.keySet())
            assertFalse(shipped.stream().noneMatch(each -> room(each.getPackageName()).equals(room)), "nothing compiled in room " + room);
    }

    static Stream<String> rooms() {
        return Rooms.MAY_USE.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomUsesOnlyWhatItMay(String room) {
        String[] closed = rooms().filter(each -> !each.equals(room) && !Rooms.MAY_USE.get(room).contains(each)).map(ArrowsTest::packages)
                .toArray(String[]::new);
        noClasses().that().resideInAPackage(packages(room)).should().dependOnClassesThat().resideInAnyPackage(closed).allowEmptyShould(true)
                .check(shipped);
    }

    @Test
    void theCoreIsPlainJava() {
        noClasses().that().resideInAnyPackage(Rooms.PLAIN.stream().map(ArrowsTest::packages).toArray(String[]::new)).should().dependOnClassesThat()
                .resideInAnyPackage("org.eclipse..", "org.osgi..", "java.awt..", "javax.swing..").check(shipped);
    }

    @Test
    void onlyTheWorkbenchSeesWindows() {
        noClasses().that().resideOutsideOfPackage("culm.workbench..").should().dependOnClassesThat().resideInAnyPackage(WINDOWS).check(shipped);
    }

    @Test
    void rulesAndReportsNeverSeeTheModellingFramework() {
        noClasses().that().resideInAnyPackage("culm.geometry..", "culm.blank..", "culm.explore..", "culm.figures..", "culm.extensions..").should()
                .dependOnClassesThat().resideInAPackage("org.eclipse.emf..").check(shipped);
    }

    @Test
    void nothingIsPrintedPastTheTerminal() {
        noClasses().should().accessField(System.class, "out").orShould().accessField(System.class, "err").orShould()
                .callMethod(Throwable.class, "printStackTrace").check(shipped);
    }

    @Test
    void nothingWaitsForTheClock() {
        noClasses().should().callMethod(Thread.class, "sleep", long.class).check(everything);
    }

    @Test
    void noTestIsLeftOut() {
        noClasses().should().dependOnClassesThat().haveFullyQualifiedName("org.junit.jupiter.api.Disabled").check(everything);
    }

    @Test
    void nothingSharedChanges() {
        fields().that().areDeclaredInClassesThat().resideOutsideOfPackage("culm.model..").and().areStatic().and().doNotHaveModifier(JavaModifier.SYNTHETIC)
                .should().beFinal().check(shipped);
    }

    private static String packages(String room) {
        return "culm." + room + "..";
    }

    private static String room(String name) {
        String[] parts = name.split("\\.");
        return parts.length > 1 ? parts[1] : "";
    }
}
