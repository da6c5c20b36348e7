package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.design.DesignedBlank;
import culm.model.Document;
import culm.model.ModelPackage;
import culm.model.files.Loaded;
import culm.model.studio.FileKind;

/** The page on file formats: its examples are files of a studio, and it names everything that a file may hold. */
class FormatsPageTest {
    private static final Pattern EXAMPLE = Pattern.compile("File `([^`]+)`:\\s*```xml\\n(.*?)```", Pattern.DOTALL);
    private static final Set<String> ASIDE = Set.of("strays", "strayAttributes", "format", "node", "anchor", "anchorName", "trailing", "id", "link", "name", "notes");

    @TempDir
    private Path folder;
    private String page;
    private final Map<String, String> examples = new LinkedHashMap<>();

    @BeforeEach
    void readThePage() throws Exception {
        page = Files.readString(Path.of(System.getProperty("culm.examples")).resolve("../docs/file-formats.md").normalize());
        for (Matcher m = EXAMPLE.matcher(page); m.find();) {
            examples.put(m.group(1), m.group(2));
            Files.writeString(folder.resolve(m.group(1)), m.group(2));
        }
        assertEquals(5, examples.size());
    }

    @Test
    void everyExampleIsReadAndWrittenAsItStands() throws Exception {
        for (Map.Entry<String, String> example : examples.entrySet()) {
            FileKind kind = FileKind.of(Path.of(example.getKey())).orElseThrow();
            Loaded<? extends Document> loaded = Studios.FILES.read(example.getValue().getBytes(StandardCharsets.UTF_8), example.getKey(), kind.type());
            assertEquals(example.getValue(), Studios.FILES.text(loaded.document()), example.getKey());
            assertEquals(0, loaded.document().getStrays().size(), example.getKey());
        }
    }

    @Test
    void theDesignIsComputedWithItsPartsAndLimits() throws Exception {
        DesignedBlank designed = Studios.BRIDGE.read(folder.resolve("trial.reed"));
        Assessment assessment = designed.assess();
        assertTrue(assessment.turnsLeft().isPresent(), assessment.troubles().toString());
        assertEquals(0.35, designed.limits().get(Limits.PINCHED_MOST));
    }

    /** Nothing that a file may hold is left out: each name of the model stands on the page. */
    @Test
    void everythingIsNamed() {
        Set<String> missing = new TreeSet<>();
        for (EClassifier classifier : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EEnum words) {
                words.getELiterals().stream().map(l -> l.getLiteral()).filter(word -> !named(word)).forEach(missing::add);
            } else if (classifier instanceof EClass type) {
                type.getEStructuralFeatures().stream().filter(f -> !ASIDE.contains(f.getName()) && !f.isTransient()).map(FormatsPageTest::textName)
                        .filter(name -> !named(name)).forEach(missing::add);
            }
        }
        assertEquals(Set.of(), missing);
        assertEquals(Set.of(), new TreeSet<>(Limits.all().keySet().stream().filter(name -> !named(name)).toList()));
    }

    private boolean named(String word) {
        return page.contains("`" + word + "`") || page.contains("`" + word + "#") || page.contains("name=\"" + word + "\"");
    }

    /** The name in files: as the model says, else the feature's own. */
    private static String textName(EStructuralFeature feature) {
        var annotation = feature.getEAnnotation("http:///org/eclipse/emf/ecore/util/ExtendedMetaData");
        String given = annotation == null ? null : annotation.getDetails().get("name");
        if (given != null) {
            return given;
        }
        boolean listOfParts = feature instanceof EReference reference && reference.isMany() && reference.getEReferenceType() == ModelPackage.Literals.PART;
        return listOfParts ? "staple" : feature.getName().equals("cells") ? "row" : feature.getName();
    }
}
