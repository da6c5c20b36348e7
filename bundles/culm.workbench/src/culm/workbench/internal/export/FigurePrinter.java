package culm.workbench.internal.export;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntFunction;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;

import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.paper.Paper;
import culm.figures.paper.Sheet;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.SwtFonts;
import culm.workbench.internal.paint.SwtPainter;

/** Prints a drawing through the system, true to scale, with a check ruler. */
public final class FigurePrinter {
    private static final double ENLARGEMENT = 2;
    private static final double UNITS_PER_INCH = 96;
    private final Shell shell;
    private final Look look;

    /**
     * Prints from a window.
     *
     * @param shell the window
     * @param look its look
     */
    public FigurePrinter(Shell shell, Look look) {
        this.shell = shell;
        this.look = look;
    }

    /**
     * Asks for a printer and prints.
     *
     * @param name what the sheet is called
     * @param figure the drawing
     */
    public void print(String name, Figure figure) {
        Optional<Drawing> drawing = figure.onPaper(ENLARGEMENT);
        if (drawing.isPresent()) {
            job(name, "A drawing can be written as PDF instead (File, Write a drawing).", printer -> {
                Rectangle area = printer.getBounds();
                Paper paper = nearest(area.height / unit(printer) / Drawing.UNITS_PER_MM);
                page(printer, Sheet.of(drawing.get(), name, paper));
            });
        }
    }

    /**
     * Asks for a printer and prints whole pages.
     *
     * @param name what the job is called
     * @param count how many
     * @param page makes each, as large as the paper
     */
    public void printPages(String name, int count, IntFunction<Drawing> page) {
        job(name, "It can be written as PDF instead.", printer -> {
            for (int i = 0; i < count; i++) {
                page(printer, page.apply(i));
            }
        });
    }

    private void job(String name, String instead, Consumer<Printer> pages) {
        if (Printer.getPrinterList().length == 0) {
            MessageDialog.openInformation(shell, "No printer", "This system has no printer. " + instead);
            return;
        }
        PrinterData chosen = new PrintDialog(shell).open();
        if (chosen == null) {
            return;
        }
        Printer printer = new Printer(chosen);
        try {
            if (printer.startJob(name)) {
                pages.accept(printer);
                printer.endJob();
            }
        } finally {
            printer.dispose();
        }
    }

    private static double unit(Printer printer) {
        return printer.getDPI().x / UNITS_PER_INCH;
    }

    private void page(Printer printer, Drawing sheet) {
        double unit = unit(printer);
        printer.startPage();
        GC gc = new GC(printer);
        Transform scale = new Transform(printer);
        SwtFonts fonts = new SwtFonts(printer, look.fontFolder());
        try {
            Rectangle trim = printer.computeTrim(0, 0, 0, 0);
            scale.translate(trim.x, trim.y);
            scale.scale((float) unit, (float) unit);
            gc.setTransform(scale);
            new SwtPainter(Palette.PRINT, fonts).paint(gc, sheet, 0, 0);
        } finally {
            fonts.dispose();
            scale.dispose();
            gc.dispose();
        }
        printer.endPage();
    }

    private static Paper nearest(double heightMm) {
        Paper best = Paper.values()[0];
        for (Paper paper : Paper.values()) {
            if (Math.abs(paper.height(false) / Drawing.UNITS_PER_MM - heightMm) < Math.abs(best.height(false) / Drawing.UNITS_PER_MM - heightMm)) {
                best = paper;
            }
        }
        return best;
    }
}
