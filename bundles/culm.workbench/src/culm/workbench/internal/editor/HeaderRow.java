package culm.workbench.internal.editor;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

import culm.blank.rules.Verdict;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;

/** Name and verdict, and the choice of the page below. */
final class HeaderRow extends Composite {
    private final HeaderStrip strip;
    private final Map<DesignEditor.Page, LinkText> links = new EnumMap<>(DesignEditor.Page.class);

    HeaderRow(Composite parent, Look look, Consumer<DesignEditor.Page> choose) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout(1 + DesignEditor.Page.values().length, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.marginRight = 12;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        strip = new HeaderStrip(this, look);
        strip.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        for (DesignEditor.Page page : DesignEditor.Page.values()) {
            LinkText link = new LinkText(this, look, page.words(), Size.BODY);
            link.setLayoutData(new GridData(SWT.END, SWT.BEGINNING, false, false));
            ((GridData) link.getLayoutData()).verticalIndent = 8;
            link.onClick(() -> choose.accept(page));
            links.put(page, link);
        }
    }

    void show(String name, Verdict verdict, boolean told) {
        strip.show(name, verdict, told);
    }

    void chosen(DesignEditor.Page page) {
        links.forEach((p, link) -> link.chosen(p == page));
        layout();
    }

    Verdict verdict() {
        return strip.verdict();
    }
}
