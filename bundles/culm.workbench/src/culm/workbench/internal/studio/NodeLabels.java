package culm.workbench.internal.studio;

import java.util.function.IntSupplier;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.IToolTipProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.TextStyle;

import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.look.Icons;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;

/** How the studio's nodes look: designs with the sign of their verdict and the turns left. */
final class NodeLabels extends LabelProvider implements IStyledLabelProvider, IToolTipProvider {
    /** What the tree takes of a line before its words: twice the indent at the top, and the icon. */
    private static final int BEFORE = 44;
    private static final int INDENT = 18;
    private final Look look;
    private final IntSupplier width;
    private final Icons icons;
    private final StudioVerdicts verdicts;
    private final Units units;
    private final StyledString.Styler quiet;

    /** @param width the width that a line has, points */
    NodeLabels(Icons icons, StudioVerdicts verdicts, Look look, Units units, IntSupplier width) {
        this.look = look;
        this.width = width;
        this.icons = icons;
        this.verdicts = verdicts;
        this.units = units;
        this.quiet = new StyledString.Styler() {
            @Override
            public void applyStyles(TextStyle style) {
                style.foreground = look.colour(Role.QUIET);
            }
        };
    }

    @Override
    public String getText(Object element) {
        return ((Node) element).words();
    }

    @Override
    public StyledString getStyledText(Object element) {
        double room = width.getAsInt() - BEFORE - INDENT * depth((Node) element);
        // Where there is no room for both, the arrow before the name of a design that uses a part says enough.
        boolean whole = look.measure().width(getText(element), Size.BODY, false) <= room;
        String full = element instanceof Node.Use use && !whole ? use.design().title() : getText(element);
        String words = Clip.middle(full, look.measure(), Size.BODY, Math.max(60, room));
        StyledString text = new StyledString(words);
        if (element instanceof Node.Held held && words.equals(getText(element))
                && look.measure().width(words + "  " + held.part().kind(), Size.BODY, false) <= room) {
            text.append("  " + held.part().kind(), quiet);
        }
        return text;
    }

    private static int depth(Node node) {
        return node instanceof Node.Group ? 0 : node instanceof Node.Entry ? 1 : node instanceof Node.Held ? 2 : 3;
    }

    /** What stands at the right of a node: the turns left of a design. */
    String beside(Object element) {
        return element instanceof Node.Entry file && file.entry().kind() == FileKind.DESIGN
                ? verdicts.of(file.entry().file()).map(StudioVerdicts.Brief::turns).orElse("") : "";
    }

    @Override
    public String getToolTipText(Object element) {
        if (element instanceof Node.Held held) {
            return getText(element) + "\n" + held.part().kind() + " of " + held.file().title();
        }
        if (!(element instanceof Node.Entry file)) {
            return getText(element);
        }
        String more = file.entry().problem().map(p -> p.message()).or(() -> verdicts.of(file.entry().file()).map(b -> units.now().drawn().told(b.told()))).orElse("");
        return getText(element) + (more.isEmpty() ? "" : "\n" + more);
    }

    @Override
    public Image getImage(Object element) {
        return icons.get(icon((Node) element));
    }

    private String icon(Node node) {
        if (node instanceof Node.Group group) {
            return icon(group.kind());
        }
        if (node instanceof Node.Held held) {
            return held.part().kind();
        }
        if (node instanceof Node.Use) {
            return "use";
        }
        StudioEntry entry = ((Node.Entry) node).entry();
        if (entry.problem().isPresent()) {
            return "broken";
        }
        if (entry.kind() != FileKind.DESIGN) {
            return icon(entry.kind());
        }
        return verdicts.of(entry.file()).map(b -> b.sign().map(NodeLabels::sign).orElse("broken")).orElse("design");
    }

    private static String sign(culm.blank.rules.Verdict.Sign sign) {
        return switch (sign) {
            case FITS -> "fits";
            case MAY_FIT -> "mayfit";
            case DOES_NOT -> "doesnot";
        };
    }

    private static String icon(FileKind kind) {
        return switch (kind) {
            case DESIGN -> "design";
            case PARTS -> "parts";
            case BATCH -> "batch";
            case LOG -> "log";
            case LIMITS -> "limits";
        };
    }
}
