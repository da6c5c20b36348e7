package culm.workbench.internal.studio;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.parts.PartsEditor;
import culm.workbench.internal.undo.TypedText;
import culm.workbench.internal.undo.UndoTarget;
import culm.workbench.internal.widgets.Focus;

/** The studio's folder as a tree, with a search above it. */
public final class StudioView extends ViewPart {
    /** The view's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.studio";
    private static final int VERDICTS_AFTER = 250;
    private static final int MOST_OPENED = 200;
    private final StudioTree tree = new StudioTree();
    private Workshop workshop;
    private StudioVerdicts verdicts;
    private Text search;
    private TreeViewer viewer;

    @Override
    public void createPartControl(Composite parent) {
        workshop = Workshop.of(getSite());
        verdicts = new StudioVerdicts(workshop.bridge(), workshop.rules());
        Composite all = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 4;
        all.setLayout(layout);
        workshop.look().dress(all, Role.PAPER, Role.INK);
        search(all);
        Composite columns = new Composite(all, SWT.NONE);
        columns.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        viewer = new TreeViewer(columns, SWT.SINGLE | SWT.V_SCROLL | SWT.FULL_SELECTION);
        viewer.getTree().setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(viewer.getTree(), Role.PAPER, Role.INK);
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(tree);
        columns(columns);
        viewer.addFilter(new Searched());
        viewer.addOpenListener(e -> open(((IStructuredSelection) e.getSelection()).getFirstElement()));
        viewer.setInput(this);
        viewer.getTree().addListener(SWT.MenuDetect, e -> menu());
        getSite().setSelectionProvider(viewer);
        Runnable end = workshop.studio().onChange(changed -> changed());
        workshop.studio().steps().onRefused(e -> MessageDialog.openError(getSite().getShell(), "That cannot be taken back", e.problem().message()));
        all.addListener(SWT.Dispose, e -> {
            end.run();
            verdicts.close();
        });
        workshop.look().onChange(all, viewer::refresh);
        changed();
    }

    /** Made when it is first asked for: while the window opens, it would take long. */
    private void menu() {
        if (viewer.getTree().getMenu() == null) {
            MenuManager menu = new MenuManager();
            viewer.getTree().setMenu(menu.createContextMenu(viewer.getTree()));
            getSite().registerContextMenu(ID, menu, viewer);
        }
    }

    /** The names, as wide as there is room, and the turns left beside them. */
    private void columns(Composite parent) {
        TreeColumnLayout layout = new TreeColumnLayout();
        parent.setLayout(layout);
        TreeViewerColumn names = new TreeViewerColumn(viewer, SWT.NONE);
        NodeLabels labels = new NodeLabels(workshop.icons(), verdicts, workshop.look(), names.getColumn()::getWidth);
        names.setLabelProvider(new DelegatingStyledCellLabelProvider(labels));
        layout.setColumnData(names.getColumn(), new ColumnWeightData(1, 60, false));
        names.getColumn().addListener(SWT.Resize, e -> viewer.refresh());
        TreeViewerColumn turns = new TreeViewerColumn(viewer, SWT.RIGHT);
        turns.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return labels.beside(element);
            }

            @Override
            public Color getForeground(Object element) {
                return workshop.look().colour(Role.QUIET);
            }
        });
        int room = (int) Math.ceil(workshop.look().measure().width("open", Size.BODY, false)) + 8;
        layout.setColumnData(turns.getColumn(), new ColumnPixelData(room, false));
        ColumnViewerToolTipSupport.enableFor(viewer);
    }

    private void search(Composite parent) {
        search = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage("search");
        search.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.horizontalIndent = 6;
        search.setLayoutData(data);
        TypedText typing = new TypedText(search::setText);
        search.setData(UndoTarget.KEY, typing);
        search.addListener(SWT.Modify, e -> {
            typing.typed(search.getText());
            viewer.refresh();
            if (search.getText().isBlank()) {
                expand();
            } else {
                expandFound();
            }
        });
        search.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                viewer.getTree().setFocus();
            } else if (e.keyCode == SWT.ESC) {
                search.setText("");
            }
        });
    }

    private void changed() {
        Optional<StudioIndex> index = workshop.studio().index();
        workshop.studio().studio().ifPresent(s -> setContentDescription(""));
        if (index.isEmpty() || viewer.getTree().isDisposed()) {
            return;
        }
        boolean first = viewer.getTree().getItemCount() == 0;
        Object[] open = viewer.getExpandedElements();
        tree.index(index.get());
        viewer.refresh();
        if (first) {
            expand();
        } else {
            viewer.setExpandedElements(open);
        }
        // Not at once: while the window opens, it needs the machine for itself.
        viewer.getTree().getDisplay().timerExec(VERDICTS_AFTER, () -> {
            if (!viewer.getTree().isDisposed() && index.equals(workshop.studio().index())) {
                verdicts.compute(index.get().of(FileKind.DESIGN), () -> workshop.look().later(this::signsKnown));
            }
        });
    }

    private void signsKnown() {
        if (!viewer.getTree().isDisposed()) {
            viewer.refresh();
        }
    }

    /** Of thousands that are found only the files are opened; each would cost time. */
    private void expandFound() {
        int parts = workshop.studio().index().map(i -> i.findParts(search.getText()).size()).orElse(0);
        if (parts <= MOST_OPENED) {
            viewer.expandAll();
        } else {
            viewer.expandToLevel(2);
        }
    }

    private void expand() {
        viewer.collapseAll();
        viewer.expandToLevel(2);
        tree.index(workshop.studio().index().orElse(null));
    }

    private void open(Object element) {
        StudioEntry entry = element instanceof Node.Entry file ? file.entry() : element instanceof Node.Use use ? use.design() : null;
        Opening opening = new Opening(getSite().getPage());
        if (entry != null) {
            opening.open(entry.file());
        } else if (element instanceof Node.Held held) {
            opening.open(held.file().file()).filter(PartsEditor.class::isInstance).ifPresent(e -> ((PartsEditor) e).choose(held.part().id()));
        } else {
            viewer.setExpandedState(element, !viewer.getExpandedState(element));
        }
    }

    /** Puts the focus into the search. */
    public void search() {
        search.setFocus();
        search.selectAll();
    }

    /** Chooses a file in the tree. */
    public void reveal(StudioEntry entry) {
        viewer.setSelection(new StructuredSelection(StudioTree.node(entry)), true);
    }

    /** {@return the tree} */
    public TreeViewer viewer() {
        return viewer;
    }

    /** {@return the sort of studio node that is chosen, if any} */
    public Optional<Node> chosen() {
        return Optional.ofNullable((Node) viewer.getStructuredSelection().getFirstElement());
    }

    @Override
    public void setFocus() {
        Focus.into(search.getParent(), viewer.getTree()::setFocus);
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == UndoTarget.class ? adapter.cast(workshop.studio().steps()) : super.getAdapter(adapter);
    }

    /** Shows what has the searched words in its name, id or file, with what is around it. */
    private final class Searched extends ViewerFilter {
        @Override
        public boolean select(Viewer v, Object parent, Object element) {
            String wanted = search.getText().strip().toLowerCase(Locale.ROOT);
            if (wanted.isEmpty() || element instanceof Node.Use) {
                return true;
            }
            if (element instanceof Node.Entry file && has(file.entry(), wanted) || element instanceof Node.Held held && has(held, wanted)) {
                return true;
            }
            if (element instanceof Node.Held held && has(held.file(), wanted)) {
                return true;
            }
            List<Object> children = element instanceof Node.Held ? List.of() : List.of(tree.getChildren(element));
            return children.stream().anyMatch(child -> select(v, element, child));
        }

        private static boolean has(StudioEntry entry, String wanted) {
            return (entry.name() + " " + entry.id() + " " + entry.shown()).toLowerCase(Locale.ROOT).contains(wanted);
        }

        private static boolean has(Node.Held held, String wanted) {
            return (held.part().name() + " " + held.part().id() + " " + held.part().kind()).toLowerCase(Locale.ROOT).contains(wanted);
        }
    }
}
