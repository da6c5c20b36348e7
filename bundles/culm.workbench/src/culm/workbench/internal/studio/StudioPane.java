package culm.workbench.internal.studio;

import java.nio.file.Path;
import java.util.List;
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
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewSite;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.menus.MenuText;
import culm.workbench.internal.parts.PartsEditor;
import culm.workbench.internal.undo.TypedText;
import culm.workbench.internal.undo.UndoTarget;
import culm.workbench.internal.widgets.Focus;
import culm.workbench.internal.widgets.IconGround;
import culm.workbench.internal.widgets.NoticeBar;

/** The studio's folder as a tree, with a search above it. */
final class StudioPane extends Composite {
    private static final int VERDICTS_AFTER = 250;
    private static final int MOST_OPENED = 200;
    private final StudioTree tree = new StudioTree();
    private final IViewSite site;
    private final Workshop workshop;
    private final StudioVerdicts verdicts;
    private Optional<Path> next = Optional.empty();
    private final Text search;
    private final TreeViewer viewer;

    /**
     * A tree of the studio that is open, and of every later one.
     *
     * @param parent where it goes
     * @param site of the view it is in
     * @param workshop what the window works with
     */
    StudioPane(Composite parent, IViewSite site, Workshop workshop) {
        super(parent, SWT.NONE);
        this.site = site;
        this.workshop = workshop;
        verdicts = new StudioVerdicts(workshop.bridge(), workshop.rules());
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 4;
        setLayout(layout);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        search = searchField();
        NoticeBar notice = new NoticeBar(this, workshop.look());
        notice.narrow();
        GridData noticed = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        noticed.exclude = true;
        notice.setLayoutData(noticed);
        Composite columns = new Composite(this, SWT.NONE);
        columns.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        viewer = new TreeViewer(columns, SWT.SINGLE | SWT.V_SCROLL | SWT.FULL_SELECTION);
        viewer.getTree().setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(viewer.getTree(), Role.PAPER, Role.INK);
        viewer.setUseHashlookup(true);
        viewer.setComparer(new SameNode());
        viewer.setContentProvider(tree);
        columns(columns);
        viewer.addFilter(new Searched(search::getText, tree));
        viewer.addOpenListener(e -> open(((IStructuredSelection) e.getSelection()).getFirstElement()));
        viewer.setInput(site);
        viewer.getTree().addListener(SWT.MenuDetect, e -> menu());
        Runnable end = workshop.studio().onChange(changed -> {
            changed.forEach(workshop.notices()::settled);
            changed();
        });
        Runnable silent = workshop.notices().onChange(() -> say(notice));
        say(notice);
        workshop.studio().steps().follow(new EditorsFollow(site.getPage(), file -> next = Optional.of(file)));
        workshop.studio().steps().onRefused(e -> MessageDialog.openError(site.getShell(), "That cannot be taken back", e.problem().message()));
        addListener(SWT.Dispose, e -> {
            end.run();
            silent.run();
            verdicts.close();
        });
        workshop.look().onChange(this, viewer::refresh);
        changed();
    }

    /** Made when it is first asked for: while the window opens, it would take long. */
    private void menu() {
        if (viewer.getTree().getMenu() == null) {
            MenuManager menu = new MenuManager();
            MenuText.TREE.items(site).forEach(menu::add);
            viewer.getTree().setMenu(menu.createContextMenu(viewer.getTree()));
            site.registerContextMenu(StudioView.ID, menu, viewer);
        }
    }

    /** The names, as wide as there is room, and the turns left beside them. */
    private void columns(Composite parent) {
        TreeColumnLayout layout = new TreeColumnLayout();
        parent.setLayout(layout);
        TreeViewerColumn names = new TreeViewerColumn(viewer, SWT.NONE);
        NodeLabels labels = new NodeLabels(workshop.icons(), verdicts, workshop.look(), workshop.units(), names.getColumn()::getWidth);
        names.setLabelProvider(new DelegatingStyledCellLabelProvider(labels) {
            @Override
            protected void paint(Event e, Object element) {
                TreeItem item = (TreeItem) e.item;
                if (List.of(item.getParent().getSelection()).contains(item)) {
                    IconGround.paint(e.gc, workshop.look(), item.getImageBounds(0));
                }
                super.paint(e, element);
            }
        });
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

    private void say(NoticeBar notice) {
        notice.say(workshop.notices().sentence(), new NoticeBar.Offer("dismiss", workshop.notices()::dismiss));
    }

    private Text searchField() {
        Text field = new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        field.setMessage("search");
        field.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.horizontalIndent = 6;
        field.setLayoutData(data);
        TypedText typing = new TypedText(field::setText);
        field.setData(UndoTarget.KEY, typing);
        field.addListener(SWT.Modify, e -> {
            typing.typed(field.getText());
            viewer.refresh();
            if (field.getText().isBlank()) {
                expand();
            } else {
                expandFound();
            }
        });
        field.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                viewer.getTree().setFocus();
            } else if (e.keyCode == SWT.ESC) {
                field.setText("");
            }
        });
        return field;
    }

    private void changed() {
        Optional<StudioIndex> index = workshop.studio().index();
        if (index.isEmpty() || viewer.getTree().isDisposed()) {
            return;
        }
        boolean first = viewer.getTree().getItemCount() == 0;
        Object[] open = viewer.getExpandedElements();
        tree.index(index.get());
        Beside chosen = Beside.of(viewer);
        viewer.refresh();
        chosen.chooseIfGone();
        if (first) {
            expand();
        } else {
            viewer.setExpandedElements(open);
        }
        next.flatMap(file -> index.get().entries().stream().filter(e -> e.file().equals(file)).findFirst()).ifPresent(entry -> {
            next = Optional.empty();
            reveal(entry);
        });
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
    }

    private void open(Object element) {
        StudioEntry entry = element instanceof Node.Entry file ? file.entry() : element instanceof Node.Use use ? use.design() : null;
        Opening opening = new Opening(site.getPage());
        if (entry != null) {
            opening.open(entry.file());
        } else if (element instanceof Node.Held held) {
            opening.open(held.file().file()).filter(PartsEditor.class::isInstance).ifPresent(e -> ((PartsEditor) e).choose(held.part().id()));
        } else {
            viewer.setExpandedState(element, !viewer.getExpandedState(element));
        }
    }

    /** Puts the focus where the keys begin, unless they are somewhere in it already. */
    void begin() {
        Focus.into(this, viewer.getTree()::setFocus);
    }

    /** Puts the focus into the search. */
    void beginSearch() {
        search.setFocus();
        search.selectAll();
    }

    /** Chooses a file in the tree. */
    void reveal(StudioEntry entry) {
        viewer.setSelection(new StructuredSelection(StudioTree.node(entry)), true);
    }

    /** {@return the tree} */
    TreeViewer viewer() {
        return viewer;
    }

    /** {@return the sort of studio node that is chosen, if any} */
    Optional<Node> chosen() {
        return Optional.ofNullable((Node) viewer.getStructuredSelection().getFirstElement());
    }
}
