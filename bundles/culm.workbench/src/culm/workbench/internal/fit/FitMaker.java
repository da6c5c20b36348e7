package culm.workbench.internal.fit;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Fit;
import culm.design.DesignedBlank;
import culm.geometry.GeometryException;
import culm.model.Design;
import culm.model.FitData;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.ModelPackage;
import culm.model.Part;
import culm.model.Quantity;
import culm.model.Setup;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;

/** Fits the one length to a blank that was tied with a design's parts. */
public final class FitMaker {
    /**
     * What was seen.
     *
     * @param blank which blank
     * @param seenOn when; may be null
     * @param tieLength its tie length, mm
     * @param wrapTop its top of the wrap, mm
     * @param turnsLeft turns left when the sides closed
     * @param readingError give or take of that count
     */
    public record Seen(String blank, LocalDate seenOn, double tieLength, double wrapTop, double turnsLeft, double readingError) {
    }

    /**
     * A fit and what it is worth.
     *
     * @param data as it goes into the design
     * @param delta the fitted length, mm
     * @param bandBefore give or take of the design's turns left without it; NaN when there is none
     * @param bandAfter the same with it
     */
    public record Made(FitData data, double delta, double bandBefore, double bandAfter) {
    }

    private final Workshop workshop;
    private final DesignSession session;

    /**
     * Fits for a design.
     *
     * @param workshop what the window works with
     * @param session the design
     */
    public FitMaker(Workshop workshop, DesignSession session) {
        this.workshop = workshop;
        this.session = session;
    }

    /**
     * Fits.
     *
     * @param seen what was seen
     * @return the fit
     * @throws GeometryException when the model cannot meet what was seen; says why
     * @throws FileProblemException when a linked part cannot be found
     */
    public Made make(Seen seen) throws FileProblemException {
        Design worked = setup(seen);
        Blank tied = blank(worked);
        Fit fit = Fit.to(tied, seen.turnsLeft(), seen.readingError());
        FitData data = ModelFactory.eINSTANCE.createFitData();
        data.setInUse(true);
        data.setBlank(seen.blank().isBlank() ? null : seen.blank().strip());
        data.setSeenOn(seen.seenOn());
        data.setDelta(quantity(fit.delta(), null));
        Quantity turns = quantity(seen.turnsLeft(), How.MEASURED);
        turns.setTolerance(seen.readingError());
        data.setTurnsLeft(turns);
        data.setWorked(ModelFactory.eINSTANCE.createWorked());
        copySetup(worked, data.getWorked());
        Blank now = session.blank().map(DesignedBlank::blank).orElse(tied);
        double before = band(now.edit().fit(null).build());
        double after = band(now.edit().fit(fit).build());
        return new Made(data, fit.delta(), before, after);
    }

    private static double band(Blank blank) {
        Assessment a = Assessor.assess(blank);
        return a.turnsBand().map(b -> b.half()).orElse(Double.NaN);
    }

    /** The design's parts as they are now, copied so that a later change of a parts file does not change what was seen. */
    private Design setup(Seen seen) throws FileProblemException {
        Design copy = ModelFactory.eINSTANCE.createDesign();
        copySetup(session.design(), copy);
        for (EReference reference : ModelPackage.Literals.SETUP.getEReferences()) {
            if (copy.eGet(reference) instanceof Part part && part.getLink() != null) {
                Part found = session.studio().resolve(session.file(), session.studio().shown(session.file()), part).part();
                copy.eSet(reference, EcoreUtil.copy(found));
            }
        }
        if (copy.getTie() == null) {
            copy.setTie(ModelFactory.eINSTANCE.createTie());
        }
        copy.getTie().setLength(changed(copy.getTie().getLength(), seen.tieLength()));
        copy.getTie().setWrapTop(changed(copy.getTie().getWrapTop(), seen.wrapTop()));
        return copy;
    }

    private static void copySetup(Setup from, Setup to) {
        for (EStructuralFeature feature : ModelPackage.Literals.SETUP.getEStructuralFeatures()) {
            if (!from.eIsSet(feature)) {
                continue;
            }
            Object value = from.eGet(feature);
            to.eSet(feature, value instanceof org.eclipse.emf.ecore.EObject object ? EcoreUtil.copy(object) : value);
        }
    }

    private static Quantity changed(Quantity old, double value) {
        Quantity quantity = old == null ? quantity(value, How.MEASURED) : EcoreUtil.copy(old);
        quantity.setValue(value);
        return quantity;
    }

    private static Quantity quantity(double value, How how) {
        Quantity quantity = ModelFactory.eINSTANCE.createQuantity();
        quantity.setValue(value);
        if (how != null) {
            quantity.setHow(how);
        }
        return quantity;
    }

    private Blank blank(Design design) throws FileProblemException {
        return workshop.bridge().of(design, session.file(), session.studio().shown(session.file()), session.studio()).blank();
    }
}
