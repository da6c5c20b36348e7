package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** What is read is written back, byte for byte. */
class RoundTripTest {
	private final ModelFiles files = new ModelFiles();

	@Test
	void aFullDesignIsWrittenAsItWasRead() throws Exception {
		String text = Samples.text("full.reed");
		Loaded<Design> loaded = files.read(Samples.bytes(text), "full.reed", Design.class);
		assertEquals(text, files.text(loaded.document()));
		assertTrue(loaded.readOnly().isEmpty());
		assertEquals(1, loaded.format());
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
