package culm.workbench.internal.studio;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.TextStyle;

import culm.figures.Role;
import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.look.Icons;
import culm.workbench.internal.look.Look;

/** How the studio's nodes look: designs with the sign of their verdict and the turns left. */
final class NodeLabels extends LabelProvider implements IStyledLabelProvider {
    private final Icons icons;
    private final StudioVerdicts verdicts;
    private final StyledString.Styler quiet;

    NodeLabels(Icons icons, StudioVerdicts verdicts, Look look) {
        this.icons = icons;
        this.verdicts = verdicts;
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
        StyledString text = new StyledString(getText(element));
        if (element instanceof Node.Entry file && file.entry().kind() == FileKind.DESIGN) {
            verdicts.of(file.entry().file()).filter(b -> !b.turns().isEmpty()).ifPresent(b -> text.append("  " + b.turns(), quiet));
        } else if (element instanceof Node.Held held) {
            text.append("  " + held.part().kind(), quiet);
        }
        return text;
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
