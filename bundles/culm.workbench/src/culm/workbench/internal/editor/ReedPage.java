package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;

import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.design.DesignedBlank;
import culm.figures.TextMeasure;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.numbers.Units;

/** The reed, its findings below, the section and the numbers beside it. */
final class ReedPage extends Composite {
    static final int SIDE = 236;
    private static final int FINDINGS_LEAST = 90;
    private final ReedCanvas reed;
    private final SectionCanvas section;
    private final NumbersPanel numbers;
    private final FindingsList findings;
    private final Units units;
    private final TextMeasure measure;
    private List<Finding> found = List.of();

    ReedPage(Composite parent, Workshop workshop, DesignSession session, PointerHeight pointer, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        workshop.look().clear(this);
        reed = new ReedCanvas(this, workshop.look(), workshop.units(), pointer);
        new HandleMover(reed, session, pointer, workshop.units(), refused);
        findings = new FindingsList(this, workshop.look());
        section = new SectionCanvas(this, workshop.look(), workshop.units(), pointer);
        numbers = new NumbersPanel(this, workshop.look(), workshop.units());
        setLayout(new Columns());
        units = workshop.units();
        measure = workshop.look().measure();
        units.onChange(this, () -> layOut(findings.show(units.now().told(found), units.now())));
    }

    void show(Shown now) {
        Limits limits = now.blank().map(DesignedBlank::limits).orElse(Limits.STANDARD);
        boolean ahead = now.laidOut() != LaidOut.NOTHING;
        reed.show(now.reed(), limits, now.findings(), now.laidOut());
        if (ahead) {
            reed.paintBesides(); // it takes longest
        }
        section.show(now.reed(), now.laidOut());
        numbers.show(now.assessment());
        if (ahead) {
            paintBesides();
        }
        found = now.findings();
        boolean others = findings.show(units.now().told(found), units.now());
        layOut(others);
        paintBesides();
    }

    /** Not again what has its size already. */
    private void paintBesides() {
        reed.paintBesides();
        section.paintBesides();
        numbers.paintBesides();
    }

    /** {@return what another blank needs to be laid out as this one is} */
    LaidOut.Wanted next() {
        return new LaidOut.Wanted(reed.next(), Optional.of(section.next()), measure);
    }

    /** The findings first, so that the reed is laid out once, for the room that they leave; again only when it needs another height than before. */
    private void layOut(boolean others) {
        if (others) {
            layout();
        }
        if (reed.heightChanged()) {
            layout();
        }
    }

    ReedCanvas reed() {
        return reed;
    }

    SectionCanvas section() {
        return section;
    }

    FindingsList findings() {
        return findings;
    }

    NumbersPanel numbers() {
        return numbers;
    }

    /** A little more room than the findings need now stays theirs: while something is dragged, all would jump, and be laid out twice, at each word more or less. */
    private int steady(int wanted, Point now) {
        return now.y >= wanted && now.y - wanted < ReedCanvas.SPARE ? now.y : wanted;
    }

    /** The findings take what they need, the drawings what is left; where both cannot have what they need, the findings scroll. */
    private final class Columns extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            return new Point(wHint == SWT.DEFAULT ? 800 : wHint, hHint == SWT.DEFAULT ? 600 : hHint);
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle area = getClientArea();
            if (area.isEmpty()) {
                return;
            }
            int middle = Math.max(200, area.width - SIDE);
            int wanted = steady(findings.computeSize(middle, SWT.DEFAULT).y, findings.getSize());
            int most = Math.max(Math.min(FINDINGS_LEAST, area.height / 2), area.height - reed.leastHeight(middle));
            int above = Math.min(area.height - Math.min(wanted, most), reed.mostHeight(middle));
            reed.setBounds(area.x, area.y, middle, Math.max(1, above));
            findings.setBounds(area.x, area.y + above, middle, Math.max(1, area.height - above));
            int high = Math.min(section.computeSize(SIDE, SWT.DEFAULT).y, area.height / 2);
            section.setBounds(area.x + middle, area.y, area.width - middle, high);
            numbers.setBounds(area.x + middle, area.y + high, area.width - middle, Math.max(1, area.height - high));
        }
    }
}
