package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

import culm.figures.Role;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.changes.ChangesPage;
import culm.workbench.internal.explore.ExplorePage;
import culm.workbench.internal.form.ParameterForm;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.sharing.MissingNotice;
import culm.workbench.internal.widgets.Focus;
import culm.workbench.internal.widgets.SoonAfter;

/** What stands in a design's editor: verdict, form, and the pages beside it. */
final class EditorBody {
    private static final int FORM = 252;
    private final DesignSession session;
    private final HeaderRow header;
    private final GuardBars guards;
    private final SoonAfter<ParameterForm> form;
    private final Composite stack;
    private final ReedPage reed;
    private final Late<GraphsPage> graphs;
    private final Late<ChangesPage> changes;
    private final Late<ExplorePage> explore;
    private DesignEditor.Page page = DesignEditor.Page.REED;
    private String called = "";
    private Shown drawn;
    private DesignEditor.Page drawnOn;

    EditorBody(Composite parent, Workshop workshop, DesignSession session, PointerHeight pointer, Consumer<FileProblemException> refused) {
        this.session = session;
        Composite all = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 6;
        layout.verticalSpacing = 0;
        all.setLayout(layout);
        workshop.look().dress(all, Role.PAPER, Role.INK);
        header = new HeaderRow(all, workshop.look(), this::show);
        header.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        guards = new GuardBars(all, session, () -> session.blank().map(b -> MissingNotice.types(b.blank())).orElse(""),
                () -> session.shown().problems().stream().map(p -> p.message() + wayOut(p)).collect(Collectors.joining(". ")), refused);
        guards.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        form = new SoonAfter<>(all, place -> new ParameterForm(place, workshop, session, refused), this::formMade);
        workshop.look().dress(form, Role.PAPER, Role.INK);
        GridData left = new GridData(SWT.FILL, SWT.FILL, false, true);
        left.widthHint = FORM;
        form.setLayoutData(left);
        stack = new Composite(all, SWT.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        workshop.look().clear(stack);
        reed = new ReedPage(stack, workshop, session, pointer, refused);
        graphs = new Late<>(() -> new GraphsPage(stack, workshop.look(), workshop.units(), pointer));
        changes = new Late<>(() -> new ChangesPage(stack, workshop, session, refused));
        explore = new Late<>(() -> new ExplorePage(stack, workshop, session, refused));
        session.layOutAhead(() -> page == DesignEditor.Page.REED && !reed.isDisposed() ? Optional.of(reed.next()) : Optional.empty());
        show(page);
        workshop.units().onChange(all, this::showHeader);
    }

    private static String wayOut(FileProblem problem) {
        return switch (problem.kind()) {
            case LINK_FILE_MISSING, LINK_PART_MISSING, LINK_WRONG_KIND, BAD_LINK ->
                ". Choose another part from its list \u25be at the left, or put back what the link leads to; until then nothing can be computed.";
            default -> "";
        };
    }

    /** Shows a page. */
    void show(DesignEditor.Page now) {
        page = now;
        ((StackLayout) stack.getLayout()).topControl = switch (now) {
            case REED -> reed;
            case GRAPHS -> graphs.get();
            case CHANGES -> changes.get();
            case EXPLORE -> explore.get();
        };
        stack.layout();
        header.chosen(now);
        showShown();
    }

    /** Shows the design as it is now. */
    void refresh(String name) {
        called = name;
        showShown(); // first, for what is painted besides takes longest
        showHeader();
        form.ifMade().ifPresent(ParameterForm::show);
    }

    private void showHeader() {
        header.show(called, session.workshop().units().now().told(session.shown().verdict()), session.shown().assessment().isPresent());
    }

    /** Puts the focus into the first number, as soon as the numbers are there. */
    void focus() {
        Focus.into(header.getParent(), () -> form.ifMade().ifPresentOrElse(ParameterForm::focusFirst, form::setFocus));
    }

    private void formMade() {
        if (form.isFocusControl()) {
            form.get().focusFirst();
        }
    }

    /** Only what can be seen is drawn. */
    private void showShown() {
        Shown now = session.shown();
        if (now == drawn && page == drawnOn && page != DesignEditor.Page.CHANGES && page != DesignEditor.Page.EXPLORE) {
            return;
        }
        drawn = now;
        drawnOn = page;
        switch (page) {
            case REED -> reed.show(now);
            case GRAPHS -> graphs.get().show(now);
            case CHANGES -> changes.get().show();
            case EXPLORE -> explore.get().show();
        }
    }

    boolean isDisposed() {
        return header.isDisposed();
    }

    HeaderRow header() {
        return header;
    }

    GuardBars guards() {
        return guards;
    }

    ParameterForm form() {
        return form.get();
    }

    ReedPage reed() {
        return reed;
    }

    ChangesPage changes() {
        return changes.get();
    }

    ExplorePage explore() {
        return explore.get();
    }

    DesignEditor.Page page() {
        return page;
    }

    /** {@return every drawing of this editor, the one with the focus first} */
    List<Figure> figures() {
        Control focused = Display.getCurrent().getFocusControl();
        GraphsPage more = graphs.get();
        List<Figure> all = new java.util.ArrayList<>(List.of(reed.reed(), reed.section(), more.along(), more.gouge()));
        reed.show(session.shown());
        more.show(session.shown());
        all.addAll(page == DesignEditor.Page.EXPLORE ? 0 : all.size(), explore.ifMade().map(ExplorePage::figures).orElse(List.of()));
        all.addAll(page == DesignEditor.Page.CHANGES ? 0 : all.size(), changes.ifMade().map(ChangesPage::figures).orElse(List.of()));
        if (focused instanceof Figure figure && all.remove(figure)) {
            all.add(0, figure);
        } else if (page == DesignEditor.Page.GRAPHS) {
            all.remove(more.along());
            all.add(0, more.along());
        }
        return all;
    }
}
