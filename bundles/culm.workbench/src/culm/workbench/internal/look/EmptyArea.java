package culm.workbench.internal.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;

/**
 * The editor area while nothing is open: the platform leaves its words in the colours that they began with, so that on a change between light and
 * dark they cannot be read.
 */
final class EmptyArea {
    private EmptyArea() {
    }

    /** Gives an empty stack of tabs its colours. */
    static void dress(Look look, CTabFolder folder) {
        for (Control child : folder.getChildren()) {
            if (child instanceof Composite words && String.valueOf(words.getData("id")).startsWith("EditorStack.")) {
                words(look, words);
            }
        }
    }

    private static void words(Look look, Composite below) {
        below.setBackground(look.colour(Role.PAPER));
        for (Control child : below.getChildren()) {
            child.setBackground(look.colour(Role.PAPER));
            if (child instanceof Label && (child.getStyle() & SWT.SEPARATOR) == 0) {
                child.setForeground(look.colour(Role.QUIET));
            }
            if (child instanceof Composite composite) {
                words(look, composite);
            }
        }
    }
}
