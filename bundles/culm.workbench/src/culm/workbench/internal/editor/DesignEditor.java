package culm.workbench.internal.editor;

import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.part.EditorPart;

import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.design.DesignedBlank;
import culm.figures.Role;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.form.ParameterForm;
import culm.workbench.internal.undo.UndoTarget;

/** The editor for a design. */
public final class DesignEditor extends EditorPart {
	/** The editor's id, as in plugin.xml. */
	public static final String ID = "culm.workbench.designEditor";
	private static final int FORM = 252;

	private final PointerHeight pointer = new PointerHeight();
	private Workshop workshop;
	private DesignSession session;
	private HeaderStrip header;
	private ParameterForm form;
	private ReedPage page;
	private boolean dirty;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		setSite(site);
		setInput(input);
		setPartName(input.getName());
		workshop = Workshop.of(site);
		Path file = input.getAdapter(Path.class);
		if (file == null) {
			throw new PartInitException("This is no file of a studio: " + input.getName());
		}
		try {
			session = new DesignSession(workshop, file);
		} catch (FileProblemException e) {
			throw new PartInitException(new Status(IStatus.ERROR, DesignEditor.class, e.problem().message()));
		}
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite all = new Composite(parent, SWT.NONE);
		GridLayout layout = new GridLayout(2, false);
		layout.marginWidth = 0;
		layout.marginHeight = 0;
		layout.horizontalSpacing = 6;
		layout.verticalSpacing = 0;
		all.setLayout(layout);
		workshop.look().dress(all, Role.PAPER, Role.INK);
		header = new HeaderStrip(all, workshop.look());
		header.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
		form = new ParameterForm(all, workshop, session);
		GridData left = new GridData(SWT.FILL, SWT.FILL, false, true);
		left.widthHint = FORM;
		form.setLayoutData(left);
		page = new ReedPage(all, workshop, session, pointer, this::refused);
		page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		page.findings().onApply(this::apply);
		page.findings().onSelect(this::select);
		session.onChange(this::show);
		show();
	}

	private void show() {
		if (header.isDisposed()) {
			return;
		}
		Shown now = session.shown();
		String name = session.blank().map(DesignedBlank::name).orElse(getEditorInput().getName());
		header.show(name, now.verdict());
		setPartName(name);
		page.show(now, now.blank().map(DesignedBlank::limits).orElse(Limits.STANDARD));
		form.show();
		if (dirty != session.isDirty()) {
			dirty = session.isDirty();
			firePropertyChange(PROP_DIRTY);
		}
		getSite().getService(ICommandService.class).refreshElements("org.eclipse.ui.edit.undo", null);
		getSite().getService(ICommandService.class).refreshElements("org.eclipse.ui.edit.redo", null);
	}

	private void select(Finding finding) {
		getEditorSite().getActionBars().getStatusLineManager().setMessage(finding.severity().word() + ": " + finding.text());
	}

	private void apply(Fix fix) {
		try {
			session.change(edits -> edits.apply(fix), "");
		} catch (FileProblemException e) {
			refused(e);
		}
	}

	private void refused(FileProblemException e) {
		MessageDialog.openError(getSite().getShell(), "That cannot be changed", e.problem().message());
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		try {
			session.save();
		} catch (FileProblemException e) {
			monitor.setCanceled(true);
			MessageDialog.openError(getSite().getShell(), "Nothing was saved", e.problem().message());
		}
	}

	@Override
	public void doSaveAs() {
		throw new UnsupportedOperationException("a copy is made in the studio");
	}

	@Override
	public boolean isDirty() {
		return session != null && session.isDirty();
	}

	@Override
	public boolean isSaveAsAllowed() {
		return false;
	}

	@Override
	public void setFocus() {
		form.focusFirst();
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		if (adapter == UndoTarget.class || adapter == DesignSession.class) {
			return adapter.cast(session);
		}
		return super.getAdapter(adapter);
	}

	/** {@return the form} */
	public ParameterForm form() {
		return form;
	}

	/** {@return the drawings and findings} */
	ReedPage page() {
		return page;
	}

	/** {@return the height the drawings point at} */
	public PointerHeight pointer() {
		return pointer;
	}

	/**
	 * The design editor that is active in a page.
	 *
	 * @param part any part
	 * @return the editor, or null
	 */
	public static DesignEditor of(IEditorPart part) {
		return part instanceof DesignEditor editor ? editor : null;
	}
}
