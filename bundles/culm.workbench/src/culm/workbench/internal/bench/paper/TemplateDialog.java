package culm.workbench.internal.bench.paper;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.bench.template.Template;
import culm.bench.template.TemplateDxf;
import culm.bench.template.TemplateSheet;
import culm.design.DesignedBlank;
import culm.figures.Drawing;
import culm.figures.paper.Paper;
import culm.geometry.GeometryException;
import culm.workbench.internal.app.Workshop;

/** The outline of the cane as cut, 1:1, with the width gauge; also as DXF R12. */
public final class TemplateDialog extends PagesDialog {
    private static final int DXF = IDialogConstants.CLIENT_ID + 4;
    private final String name;
    private final Optional<Template> template;
    private final String why;

    /**
     * The dialog for a design.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param design the design
     */
    public TemplateDialog(Shell shell, Workshop workshop, DesignedBlank design) {
        super(shell, workshop, "Templates");
        this.name = design.name();
        Optional<Template> made = Optional.empty();
        String reason = "";
        try {
            made = Optional.of(Template.of(design.blank()));
        } catch (GeometryException e) {
            reason = "This cane cannot be cut: " + workshop.units().now().drawn().told(e.told());
        }
        template = made;
        why = reason;
    }

    @Override
    void ask(Composite area) {
        Label said = new Label(area, SWT.WRAP);
        said.setText(why.isEmpty() ? "The outline of the cane as cut, 1 : 1: flat, with both blades, for paper that is bent around the cane; folded, with one blade, as a "
                + "caliper measures. Below them the widths and a gauge: lay the cane across, move it until both edges touch, read the width.\n\n"
                + "Print at 100 % and measure the line of 100 mm first.\n\nDXF R12: one unit is 1 mm; layers FLAT, FOLDED, FOLD, TEXT." : why);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        wide.widthHint = 270;
        said.setLayoutData(wide);
    }

    @Override
    int count() {
        return template.isPresent() ? 1 : 0;
    }

    @Override
    Drawing page(int number, Paper on) {
        return TemplateSheet.draw(template.orElseThrow(), name, on);
    }

    @Override
    String fileName() {
        return "template " + name;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, DXF, "Write DXF…", false).setEnabled(template.isPresent());
        super.createButtonsForButtonBar(parent);
    }

    /**
     * Writes the outlines as DXF R12.
     *
     * @param file where to
     */
    public void dxf(Path file) {
        write(file, TemplateDxf.write(template.orElseThrow(), name).getBytes(StandardCharsets.US_ASCII));
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == DXF) {
            file("dxf").ifPresent(this::dxf);
        } else {
            super.buttonPressed(id);
        }
    }
}
