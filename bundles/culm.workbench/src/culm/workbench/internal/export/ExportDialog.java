package culm.workbench.internal.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.figures.Drawing;
import culm.figures.font.ShippedFont;
import culm.figures.paper.Paper;
import culm.figures.reed.LengthStack;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.editor.Shown;
import culm.workbench.internal.export.FigureFile.Format;
import culm.workbench.internal.graphs.Figure;

/** Asks which drawing to write, how large and in what format. */
public final class ExportDialog extends Dialog {
    /** The arrow takes more room than the list asks for, points. */
    private static final int WIDER = 24;
    private static final double[] SCALES = { 1, 2, 3, 4 };
    private final String name;
    private final List<Figure> figures;
    private final Shown shown;
    private final Workshop workshop;
    private Combo what;
    private Combo scale;
    private Combo format;
    private Combo paper;

    /**
     * The dialog for a design.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param name the design's name
     * @param figures its drawings, the likeliest first
     * @param session the design
     */
    public ExportDialog(Shell shell, Workshop workshop, String name, List<Figure> figures, DesignSession session) {
        super(shell);
        this.workshop = workshop;
        this.name = name;
        this.figures = figures;
        this.shown = session.shown();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Write a drawing");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 12;
        area.setLayout(layout);
        List<String> titles = new java.util.ArrayList<>(figures.stream().map(Figure::title).toList());
        titles.add("Length stack");
        what = combo(area, "drawing", titles);
        scale = combo(area, "scale", List.of("1 : 1", "2 : 1", "3 : 1", "4 : 1"));
        scale.select(1);
        format = combo(area, "format", List.of("PDF, on paper with a check ruler", "SVG", "PNG, 300 dots to the inch"));
        paper = combo(area, "paper", List.of(Paper.values()).stream().map(Paper::label).toList());
        format.addListener(SWT.Selection, e -> paper.setEnabled(chosenFormat() == Format.PDF));
        return area;
    }

    private static Combo combo(Composite parent, String words, List<String> items) {
        new Label(parent, SWT.NONE).setText(words);
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(items.toArray(String[]::new));
        combo.select(0);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + WIDER;
        combo.setLayoutData(wide);
        return combo;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Write…", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    private Format chosenFormat() {
        return switch (format.getSelectionIndex()) {
            case 0 -> Format.PDF;
            case 1 -> Format.SVG;
            default -> Format.PNG;
        };
    }

    private Optional<Drawing> drawing() {
        double enlargement = SCALES[scale.getSelectionIndex()];
        if (what.getSelectionIndex() < figures.size()) {
            return figures.get(what.getSelectionIndex()).onPaper(enlargement);
        }
        return shown.reed().map(r -> LengthStack.draw(r, shown.blank().get().limits(), enlargement, ShippedFont.load(), workshop.units().now().drawn()));
    }

    @Override
    protected void okPressed() {
        Optional<Drawing> drawing = drawing();
        if (drawing.isEmpty()) {
            MessageDialog.openInformation(getShell(), "Nothing to draw", "This design cannot be drawn; its findings say why.");
            return;
        }
        Format chosen = chosenFormat();
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setOverwrite(true);
        dialog.setFileName(Ids.of(name + " " + what.getText(), "drawing", List.of()) + "." + chosen.ending());
        String file = dialog.open();
        if (file == null) {
            return;
        }
        try {
            FigureFile.write(Path.of(file), FigureFile.bytes(drawing.get(), name, chosen, Paper.values()[paper.getSelectionIndex()]));
            super.okPressed();
        } catch (IOException | IllegalArgumentException e) {
            MessageDialog.openError(getShell(), "It was not written", e.getMessage());
        } catch (FileProblemException e) {
            MessageDialog.openError(getShell(), "It was not written", e.problem().message());
        }
    }
}
