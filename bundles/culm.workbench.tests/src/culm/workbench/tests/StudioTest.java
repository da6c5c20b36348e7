package culm.workbench.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignInput;
import culm.workbench.internal.editor.DesignSession;

/** Base of tests that work in a copy of the example studio. */
abstract class StudioTest extends WorkbenchTest {
	@TempDir
	Path folder;

	@BeforeEach
	final void copyStudio() throws IOException {
		Path examples = Path.of(System.getProperty("culm.examples"), "studio");
		try (Stream<Path> all = Files.list(examples)) {
			for (Path file : all.toList()) {
				Files.copy(file, folder.resolve(file.getFileName().toString()));
			}
		}
	}

	@AfterEach
	final void closeEditors() throws Exception {
		ui(() -> page().closeAllEditors(false));
		settle();
	}

	/** Opens a design of the studio and waits until all of it is shown. */
	final DesignEditor open(String name) throws Exception {
		DesignEditor editor = ui(() -> (DesignEditor) page().openEditor(new DesignInput(folder.resolve(name)), DesignEditor.ID));
		shown(editor);
		return editor;
	}

	/** Waits until an editor shows what its design is. */
	final void shown(DesignEditor editor) throws Exception {
		until("the editor shows its design", () -> !session(editor).pending());
	}

	static DesignSession session(DesignEditor editor) {
		return editor.getAdapter(DesignSession.class);
	}

	/** The field of an input; asked on the workbench's thread. */
	final StyledText field(DesignEditor editor, String path) {
		return find(window().getShell(), StyledText.class).stream().filter(t -> path.equals(t.getData("culm.path"))).findFirst()
				.orElseThrow(() -> new AssertionError("no field for " + path));
	}

	/** Types a number into a field and presses Enter. */
	final void type(DesignEditor editor, String path, String text) throws Exception {
		ui(() -> {
			StyledText field = field(editor, path);
			field.setFocus();
			field.setText(text);
			Event enter = new Event();
			enter.detail = SWT.TRAVERSE_RETURN;
			enter.doit = true;
			field.notifyListeners(SWT.Traverse, enter);
		});
		shown(editor);
	}

	/** Runs a command of the menus. */
	final void command(String id) throws Exception {
		ui(() -> window().getService(org.eclipse.ui.handlers.IHandlerService.class).executeCommand(id, null));
	}

	/** All controls of a kind below another. */
	static <T extends Control> List<T> find(Composite below, Class<T> kind) {
		List<T> found = new ArrayList<>();
		for (Control child : below.getChildren()) {
			if (kind.isInstance(child)) {
				found.add(kind.cast(child));
			}
			if (child instanceof Composite composite) {
				found.addAll(find(composite, kind));
			}
		}
		return found;
	}

	final String text(String name) throws IOException {
		return Files.readString(folder.resolve(name));
	}
}
