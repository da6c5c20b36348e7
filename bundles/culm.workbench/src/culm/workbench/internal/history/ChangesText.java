package culm.workbench.internal.history;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;

import culm.design.compare.Difference;
import culm.figures.Role;
import culm.figures.Size;
import culm.history.FileChange;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;

/** What changed, in words of the trade, file by file. */
final class ChangesText {
    private final Look look;
    private final Units units;
    private final StyledText text;
    private Runnable again = () -> { };

    ChangesText(Composite parent, Look look, Units units) {
        this.look = look;
        this.units = units;
        text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        text.setFont(look.font(Size.BODY, SWT.NORMAL));
        text.setLineSpacing(3);
        text.setMargins(4, 4, 4, 4);
        look.dress(text, Role.PAPER, Role.INK);
        units.onChange(text, () -> again.run());
    }

    StyledText control() {
        return text;
    }

    /** Shows a heading and changes. @param note what was said of the version; may be empty */
    void show(String heading, String note, List<FileChange> changes) {
        again = () -> show(heading, note, changes);
        StringBuilder all = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        bold(all, styles, heading);
        all.append('\n');
        if (!note.isEmpty()) {
            all.append(note).append('\n');
        }
        for (FileChange change : changes) {
            all.append('\n');
            bold(all, styles, change.name().isEmpty() ? change.file() : change.name());
            all.append(switch (change.kind()) {
                case ADDED -> " is new";
                case REMOVED -> " is gone";
                case CHANGED -> change.differences().isEmpty() ? " changed" : "";
            }).append('\n');
            for (Difference in : change.differences()) {
                Difference d = in.in(units.now().drawn());
                all.append("    ").append(d.label()).append(":  ").append(said(d.before())).append(" \u2192 ").append(said(d.yours())).append('\n');
            }
        }
        text.setText(all.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
    }

    void clear() {
        again = () -> { };
        text.setText("");
    }

    private void bold(StringBuilder all, List<StyleRange> styles, String words) {
        StyleRange style = new StyleRange();
        style.start = all.length();
        style.length = words.length();
        style.font = look.font(Size.BODY, SWT.BOLD);
        styles.add(style);
        all.append(words);
    }

    private static String said(String value) {
        return value.isEmpty() ? "none" : value.replaceAll("\\s+", " ");
    }
}
