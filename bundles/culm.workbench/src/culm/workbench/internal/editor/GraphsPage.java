package culm.workbench.internal.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;

import culm.blank.Assessment;
import culm.figures.Role;
import culm.workbench.internal.graphs.AlongCanvas;
import culm.workbench.internal.graphs.GougeCanvas;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;

/** More graphs: those along the reed on the axis of the reed page, section and gouge beside them. */
final class GraphsPage extends Composite {
    private final AlongCanvas along;
    private final SectionCanvas section;
    private final GougeCanvas gouge;

    GraphsPage(Composite parent, Look look, Units units, PointerHeight pointer) {
        super(parent, SWT.NONE);
        look.dress(this, Role.PAPER, Role.INK);
        along = new AlongCanvas(this, look, units, pointer);
        section = new SectionCanvas(this, look, units, pointer);
        gouge = new GougeCanvas(this, look, units);
        setLayout(new Columns());
    }

    void show(Shown now) {
        along.show(now.reed());
        section.show(now.reed(), LaidOut.NOTHING);
        gouge.show(now.assessment().map(Assessment::blank));
    }

    AlongCanvas along() {
        return along;
    }

    GougeCanvas gouge() {
        return gouge;
    }

    private final class Columns extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            return new Point(wHint == SWT.DEFAULT ? 800 : wHint, hHint == SWT.DEFAULT ? 600 : hHint);
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle area = getClientArea();
            int middle = Math.max(200, area.width - ReedPage.SIDE);
            along.setBounds(area.x, area.y, middle, area.height);
            int high = Math.min(section.computeSize(ReedPage.SIDE, SWT.DEFAULT).y, area.height / 2);
            section.setBounds(area.x + middle, area.y, area.width - middle, high);
            gouge.setBounds(area.x + middle, area.y + high, area.width - middle, Math.max(1, area.height - high));
        }
    }
}
