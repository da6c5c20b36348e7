package culm.workbench.internal.bench.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.paper.Paper;
import culm.figures.pdf.PdfWriter;
import culm.figures.svg.SvgWriter;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.export.FigurePrinter;

/** Pages seen as they will be printed, on A4 or US Letter, with what is asked beside them; written as PDF or SVG, and printed. */
public abstract class PagesDialog extends Dialog {
    private static final int PDF = IDialogConstants.CLIENT_ID + 1;
    private static final int SVG = IDialogConstants.CLIENT_ID + 2;
    private static final int PRINT = IDialogConstants.CLIENT_ID + 3;
    private final Workshop workshop;
    private final String title;
    private PagePreview preview;
    private Combo paper;
    private Label place;
    private Label wrong;
    private Control back;
    private Control on;
    private int page;

    PagesDialog(Shell shell, Workshop workshop, String title) {
        super(shell);
        this.workshop = workshop;
        this.title = title;
        setShellStyle(SWT.CLOSE | SWT.RESIZE | SWT.TITLE | SWT.APPLICATION_MODAL);
    }

    /** What is asked beside the page. */
    abstract void ask(Composite area);

    /** {@return how many pages there are} */
    abstract int count();

    /** One page. */
    abstract Drawing page(int number, Paper on);

    /** {@return what files are called at first, without ending} */
    abstract String fileName();

    final Workshop workshop() {
        return workshop;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Point getInitialSize() {
        return new Point(960, 760);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        area.setLayout(new GridLayout(2, false));
        Composite left = new Composite(area, SWT.NONE);
        left.setLayout(new GridLayout(2, false));
        GridData column = new GridData(SWT.FILL, SWT.FILL, false, true);
        column.widthHint = 300;
        left.setLayoutData(column);
        ask(left);
        new Label(left, SWT.NONE).setText("paper");
        paper = new Combo(left, SWT.READ_ONLY);
        paper.setData("culm.ask", "paper");
        for (Paper each : Paper.values()) {
            paper.add(each.label());
        }
        paper.select(0);
        paper.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        paper.addListener(SWT.Selection, e -> changed());
        pages(left);
        wrong = new Label(left, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        wide.widthHint = 270;
        wrong.setLayoutData(wide);
        preview = new PagePreview(area, workshop.look());
        GridData large = new GridData(SWT.FILL, SWT.FILL, true, true);
        large.widthHint = 520;
        large.heightHint = 620;
        preview.setLayoutData(large);
        changed();
        return area;
    }

    private void pages(Composite left) {
        Composite row = new Composite(left, SWT.NONE);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        row.setLayout(layout);
        row.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
        back = button(row, "‹", -1, "The page before");
        place = new Label(row, SWT.CENTER);
        place.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        on = button(row, "›", 1, "The next page");
    }

    private Control button(Composite row, String words, int step, String help) {
        var button = new org.eclipse.swt.widgets.Button(row, SWT.PUSH);
        button.setText(words);
        button.setToolTipText(help);
        button.addListener(SWT.Selection, e -> {
            page += step;
            changed();
        });
        return button;
    }

    /** Shows the pages as they are now. */
    final void changed() {
        if (preview == null) {
            return;
        }
        int count = count();
        page = Math.max(0, Math.min(page, count - 1));
        place.setText(count == 0 ? "no page" : count == 1 ? "one page" : "page " + (page + 1) + " of " + count);
        back.setEnabled(page > 0);
        on.setEnabled(page < count - 1);
        String said = "";
        Optional<Drawing> drawn = Optional.empty();
        try {
            drawn = count == 0 ? Optional.empty() : Optional.of(page(page, paper()));
        } catch (IllegalArgumentException e) {
            said = e.getMessage();
        }
        wrong.setText(said);
        wrong.getParent().layout();
        preview.show(drawn);
        for (int id : new int[] {PDF, SVG, PRINT}) {
            if (getButton(id) != null) {
                getButton(id).setEnabled(drawn.isPresent());
            }
        }
    }

    /** Goes to a page. */
    final void go(int to) {
        page = to;
        changed();
    }

    final Paper paper() {
        return Paper.values()[Math.max(0, paper.getSelectionIndex())];
    }

    /** {@return the page that is shown} */
    public final Optional<Drawing> shown() {
        return preview.page();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, PDF, "Write PDF…", true);
        createButton(parent, SVG, "Write SVG…", false);
        createButton(parent, PRINT, "Print…", false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, false);
        changed();
    }

    @Override
    protected void buttonPressed(int id) {
        switch (id) {
            case PDF -> file("pdf").ifPresent(this::pdf);
            case SVG -> file("svg").ifPresent(this::svg);
            case PRINT -> {
                List<Drawing> all = all();
                new FigurePrinter(getShell(), workshop.look()).printPages(title, all.size(), all::get);
            }
            default -> super.buttonPressed(id);
        }
    }

    private List<Drawing> all() {
        List<Drawing> all = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            all.add(page(i, paper()));
        }
        return all;
    }

    /** Asks where to write. */
    final Optional<Path> file(String ending) {
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setOverwrite(true);
        dialog.setFileName(Ids.of(fileName(), "page", List.of()) + "." + ending);
        String file = dialog.open();
        return file == null ? Optional.empty() : Optional.of(Path.of(file.toLowerCase(java.util.Locale.ROOT).endsWith("." + ending) ? file : file + "." + ending));
    }

    /**
     * Writes all pages as one PDF.
     *
     * @param file where to
     */
    public final void pdf(Path file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            PdfWriter.write(all(), Palette.PRINT, out);
            write(file, out.toByteArray());
        } catch (IOException e) {
            MessageDialog.openError(getShell(), "It was not written", e.getMessage());
        }
    }

    /**
     * Writes each page as an SVG; several get a number.
     *
     * @param file where to
     */
    public final void svg(Path file) {
        List<Drawing> all = all();
        for (int i = 0; i < all.size(); i++) {
            String name = file.getFileName().toString();
            Path one = all.size() == 1 ? file : file.resolveSibling(name.substring(0, name.length() - 4) + "-" + (i + 1) + ".svg");
            write(one, SvgWriter.write(all.get(i), Palette.PRINT).getBytes(StandardCharsets.UTF_8));
        }
    }

    final void write(Path file, byte[] bytes) {
        try {
            SafeFile.overwrite(file, bytes);
        } catch (FileProblemException e) {
            MessageDialog.openError(getShell(), "It was not written", e.problem().message());
        }
    }
}
