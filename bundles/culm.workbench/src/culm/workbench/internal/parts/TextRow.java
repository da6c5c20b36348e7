package culm.workbench.internal.parts;

import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.undo.TypedText;
import culm.workbench.internal.undo.UndoTarget;

/** Words about something: a line or a few, taken over when the field is left or Enter is pressed; Escape gives them back. */
final class TextRow {
    private final TextFrame frame;
    private final StyledText text;
    private final TypedText typing;
    private final Predicate<String> enter;
    private String shown = "";

    /** @param enter takes a text that differs from what was shown; says whether it could be used */
    TextRow(Composite parent, Look look, String words, int lines, Predicate<String> enter) {
        this.enter = enter;
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        label.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(label, Role.PAPER, Role.QUIET);
        label.setLayoutData(new GridData(SWT.BEGINNING, lines > 1 ? SWT.BEGINNING : SWT.CENTER, false, false));
        frame = new TextFrame(parent, look, lines);
        text = frame.text();
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 120;
        frame.setLayoutData(wide);
        text.setData("culm.text", words);
        typing = new TypedText(text::setText);
        text.setData(UndoTarget.KEY, typing);
        text.addListener(SWT.Modify, e -> typing.typed(text.getText()));
        text.addListener(SWT.FocusOut, e -> takeOver());
        text.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_RETURN && lines == 1) {
                takeOver();
                e.doit = false;
            } else if (e.detail == SWT.TRAVERSE_ESCAPE && !text.getText().equals(shown)) {
                put(shown);
                e.doit = false;
            } else if (e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                e.doit = true;
            }
        });
    }

    private void takeOver() {
        String typed = text.getText().strip();
        if (text.getEditable() && !typed.equals(shown.strip())) {
            if (!enter.test(typed)) {
                put(shown);
            }
        }
    }

    /** Shows words, unless the user is just typing others. */
    void show(String now) {
        if (!now.equals(shown)) {
            shown = now;
            put(now);
        } else if (!text.isFocusControl() && !text.getText().equals(now)) {
            put(now);
        }
    }

    /** Lets them be looked at only, as plain text, or edited again. */
    void lock(boolean now) {
        frame.lock(now);
    }

    private void put(String now) {
        text.setText(now);
        typing.reset(now);
    }

    /** Shows how it is written while there is nothing. */
    void hint(String now) {
        frame.hint(now);
    }

    StyledText control() {
        return text;
    }
}
