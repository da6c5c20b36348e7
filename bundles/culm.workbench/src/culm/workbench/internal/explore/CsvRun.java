package culm.workbench.internal.explore;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.VariantCsv;
import culm.explore.VariantPlan;
import culm.explore.Variants;
import culm.explore.Watcher;
import culm.model.files.SafeFile;
import culm.model.text.Ids;

/** Writes variants into a file as they are made, so that any number of them needs no memory. */
final class CsvRun {
    private CsvRun() {
    }

    /** Asks for a file and runs. */
    static void ask(Shell shell, RunBar bar, Study study, List<Axis> axes, VariantPlan plan, String name) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setOverwrite(true);
        dialog.setFileName(Ids.of(name + " variants", "variants", List.of()) + ".csv");
        String file = dialog.open();
        if (file != null) {
            run(bar, study, axes, plan, Path.of(file));
        }
    }

    /** Runs. What is stopped is not written. */
    static void run(RunBar bar, Study study, List<Axis> axes, VariantPlan plan, Path file) {
        long planned = plan.rows(axes);
        bar.<Long>run("variants", watcher -> write(study, axes, plan, file, planned, watcher), (made, ended) -> {
        }, made -> made < planned ? "Stopped; nothing was written." : String.format(Locale.ROOT, "%,d variants written to %s.", made, file.getFileName()));
    }

    private static long write(Study study, List<Axis> axes, VariantPlan plan, Path file, long planned, Watcher<Long> watcher) throws IOException {
        Path part = file.resolveSibling("." + file.getFileName() + SafeFile.HALF_WRITTEN);
        try {
            long made;
            try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(part))) {
                made = Variants.run(study, axes, plan, RunJob.threads(), new VariantCsv(stream), new Counting(watcher));
            }
            if (made == planned) {
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            }
            return made;
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
