package culm.workbench.internal;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The perspective in which blanks are designed: the editor in the middle, views around it. */
public final class DesignPerspective implements IPerspectiveFactory {

	/** The perspective's id, as in plugin.xml. */
	public static final String ID = "culm.workbench.design";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
	}
}
