package culm.workbench.internal;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import culm.workbench.internal.studio.StudioView;

/** The perspective in which blanks are designed: the editor in the middle, views around it. */
public final class DesignPerspective implements IPerspectiveFactory {

    /** The perspective's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.design";

    private static final float STUDIO = 0.195f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addStandaloneView(StudioView.ID, true, IPageLayout.LEFT, STUDIO, layout.getEditorArea());
        layout.getViewLayout(StudioView.ID).setCloseable(false);
    }
}
