package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.Document;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.ModelPackage;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.text.Located;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read is written back, byte for byte. */
class RoundTripTest {
    private final ModelFiles files = new ModelFiles();

    @ParameterizedTest
    @ValueSource(strings = {"full.reed", "full.parts", "full.batch", "full.log"})
    void aFileIsWrittenAsItWasRead(String name) throws Exception {
        String text = Samples.text(name);
        Loaded<Document> loaded = files.read(Samples.bytes(text), name, Document.class);
        assertEquals(text, files.text(loaded.document()));
        assertTrue(loaded.readOnly().isEmpty());
        assertEquals(1, loaded.format());
    }

    @Test
    void everyFeatureOfTheModelStandsInASample() throws Exception {
        Set<String> missing = new TreeSet<>();
        Set<String> seen = new HashSet<>();
        for (String name : new String[] {"full.reed", "full.parts", "full.batch", "full.log"}) {
            Document document = files.read(Samples.bytes(Samples.text(name)), name, Document.class).document();
            document.eAllContents().forEachRemaining(object -> note(object, seen));
            note(document, seen);
        }
        for (EClassifier classifier : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass type && !type.isAbstract() && !type.getName().startsWith("Stray")) {
                for (EStructuralFeature feature : type.getEStructuralFeatures()) {
                    String name = feature.getEContainingClass().getName() + "." + feature.getName();
                    if (!feature.isTransient() && !seen.contains(name)) {
                        missing.add(name);
                    }
                }
            }
        }
        assertEquals(new TreeSet<>(), missing);
    }

    private static void note(EObject object, Set<String> seen) {
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            if (object.eIsSet(feature)) {
                seen.add(feature.getEContainingClass().getName() + "." + feature.getName());
            }
        }
    }

    @Test
    void linesAreKnownAfterReadingAndAfterWriting() throws Exception {
        String text = Samples.text("full.reed");
        Design design = files.read(Samples.bytes(text), "full.reed", Design.class).document();
        int line = 1 + (int) text.substring(0, text.indexOf("<slipped")).chars().filter(c -> c == '\n').count();
        assertEquals(line, Located.lineOf(design.getTie().getSlipped()));
        design.setName(null);
        files.text(design);
        assertEquals(line - 1, Located.lineOf(design.getTie().getSlipped()));
    }

    @Test
    void whatWasReadIsInTheModel() throws Exception {
        Design design = files.read(Samples.bytes(Samples.text("full.reed")), "full.reed", Design.class).document();
        assertEquals("class-72", design.getId());
        assertEquals("Two lines,\nthe second with \"quotes\" and a < sign.", design.getNotes());
        assertEquals(47, design.getStaple().getLength().getValue());
        assertEquals(0.1, design.getStaple().getLength().getTolerance());
        assertEquals(How.MEASURED, design.getStaple().getLength().getHow());
        assertFalse(design.getStaple().getWall().isSetTolerance());
        assertEquals("class.parts#gouge-60", design.getGouge().getLink());
        assertEquals(6.95, design.getShape().getProfile().getTables().get(0).getRows().get(1).getCells().get("width")
                .getAsDouble());
        assertEquals(-0.2, design.getTie().getSlipped().getValue());
        assertTrue(design.getFit().isInUse());
    }

    @Test
    void whatIsNotSetIsNotWritten() {
        Design design = ModelFactory.eINSTANCE.createDesign();
        assertEquals("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<reed format=\"1\"/>\n", files.text(design));
        design.setTie(ModelFactory.eINSTANCE.createTie());
        design.getTie().setLength(ModelFactory.eINSTANCE.createQuantity());
        design.getTie().getLength().setValue(0);
        assertEquals("""
                <?xml version="1.0" encoding="UTF-8"?>
                <reed format="1">
                  <tie>
                    <length value="0"/>
                  </tie>
                </reed>
                """, files.text(design));
    }

    @Test
    void aCopyHasTheSameText() throws Exception {
        Design design = files.read(Samples.bytes(Samples.text("full.reed")), "full.reed", Design.class).document();
        assertEquals(files.text(design), files.text(EcoreUtil.copy(design)));
    }
}
