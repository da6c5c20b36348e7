package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.blank.Blank;
import culm.blank.WidthInputs;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.explore.Varied;
import culm.model.Design;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;

/**
 * Something that was found by exploring: other parts and other numbers for a design.
 *
 * @param parts the parts, by kind
 * @param numbers the numbers, by path; {@link Varied#WIDTH} is added to every width
 * @param words what it is, a few words
 * @param of the design that was asked about
 */
record Picked(Map<String, Link> parts, Map<String, Double> numbers, String words, Blank of) {
    private static final long SEED = 1;
    private static final double ROUND = 1e4;

    /** A copy of the design with these parts and numbers. @throws FileProblemException when that cannot be made, or the design is not the one that was asked about any more */
    Design in(Workshop workshop, DesignSession session) throws FileProblemException {
        if (session.blank().filter(now -> now.blank().equals(of)).isEmpty()) { // it is told by how it differs
            throw new FileProblemException(new FileProblem(Kind.BAD_VALUE, session.shownName(), 0, "", "the design has changed since this was found; run it again and choose again"));
        }
        Design copy = EcoreUtil.copy(session.design());
        String shown = session.studio().shown(session.file());
        Edits edits = Edits.of(copy, PartResolver.in(session.studio(), session.file(), shown), new SplittableRandom(SEED));
        parts.forEach((kind, link) -> edits.link(kind, link).execute());
        for (Map.Entry<String, Double> number : new TreeMap<>(numbers).entrySet()) {
            double value = Math.rint(number.getValue() * ROUND) / ROUND;
            if (!number.getKey().equals(Varied.WIDTH)) {
                edits.tryValue(number.getKey(), value).execute();
            } else if (value != 0) {
                widen(edits, workshop.bridge().draft(copy, session.file(), shown, session.studio()).blank(), value, shown);
            }
        }
        return copy;
    }

    private static void widen(Edits edits, Blank blank, double added, String shown) throws FileProblemException {
        List<String> widths = new ArrayList<>(WidthInputs.of(blank));
        if (widths.isEmpty()) {
            throw new FileProblemException(new FileProblem(Kind.BAD_VALUE, shown, 0, Varied.WIDTH, "this kind of shape has no widths that could all be changed by " + added + " mm"));
        }
        for (String path : widths) {
            edits.tryValue(path, Math.rint((blank.value(path).orElseThrow() + added) * ROUND) / ROUND).execute();
        }
    }
}
