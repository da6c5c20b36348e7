package culm.workbench.internal.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;

import culm.figures.Role;

/**
 * The editor area while nothing is open: the platform leaves its words and its buttons in the colours that they began with, so that on a change
 * between light and dark the words cannot be read and the buttons stand in a white box.
 */
final class EmptyArea {
    private EmptyArea() {
    }

    /** Gives every empty stack of tabs below a control its colours. */
    static void dress(Look look, Composite below) {
        for (Control child : below.getChildren()) {
            if (child instanceof CTabFolder folder) {
                folder(look, folder);
            }
            if (child instanceof Composite composite) {
                dress(look, composite);
            }
        }
    }

    private static void folder(Look look, CTabFolder folder) {
        if (folder.getItemCount() > 0) {
            return;
        }
        for (Control child : folder.getChildren()) {
            if (child instanceof ToolBar) {
                child.setBackground(look.colour(Role.PAPER));
            } else if (child instanceof Composite words && String.valueOf(words.getData("id")).startsWith("EditorStack.")) {
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
