package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Manifest;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between the rooms, as the bundles' manifests ask for them. */
class ManifestsTest {

    static List<Path> shipped() throws IOException {
        return Tree.bundles().stream().filter(each -> !name(each).endsWith(".tests")).toList();
    }

    @Test
    void everyBundleHasItsPlaceInTheTable() throws IOException {
        Set<String> found = new TreeSet<>();
        shipped().forEach(each -> found.add(name(each).substring("culm.".length())));
        assertEquals(Rooms.MAY_USE.keySet(), found);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aBundleAsksOnlyForWhatItMayUse(Path bundle) throws IOException {
        Set<String> allowed = Rooms.MAY_USE.get(name(bundle).substring("culm.".length()));
        for (String required : required(bundle))
            if (required.startsWith("culm."))
                assertTrue(allowed.contains(required.substring("culm.".length())), name(bundle) + " asks for " + required);
            else if (required.startsWith("org.eclipse.swt") || required.startsWith("org.eclipse.ui") || required.startsWith("org.eclipse.jface"))
                assertEquals("culm.workbench", name(bundle), "asks for " + required);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aBundleIsNamedAsItsFolder(Path bundle) throws IOException {
        assertEquals(name(bundle), manifest(bundle, "Bundle-SymbolicName").split(";")[0]);
        assertEquals("JavaSE-17", manifest(bundle, "Bundle-RequiredExecutionEnvironment"));
    }

    private static List<String> required(Path bundle) throws IOException {
        String value = manifest(bundle, "Require-Bundle");
        return value == null ? List.of() : Arrays.stream(value.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")).map(each -> each.split(";")[0].strip()).toList();
    }

    private static String manifest(Path bundle, String header) throws IOException {
        try (InputStream in = Files.newInputStream(bundle.resolve("META-INF/MANIFEST.MF"))) {
            return new Manifest(in).getMainAttributes().getValue(header);
        }
    }

    private static String name(Path bundle) {
        return bundle.getFileName().toString();
    }
}
