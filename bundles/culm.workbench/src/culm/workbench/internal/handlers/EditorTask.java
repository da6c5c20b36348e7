package culm.workbench.internal.handlers;

import java.util.function.Consumer;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.parts.PartsEditor;

/** What the menus and keys can do in the editor for a design; a drawing is copied in the editor of parts, too. */
public enum EditorTask {
    /** Puts the focus into the form. */
    FORM(editor -> editor.form().focusFirst()),
    /** Puts the focus onto the marks. */
    MARKS(DesignEditor::focusMarks),
    /** Goes to the next finding. */
    FINDING(DesignEditor::nextFinding),
    /** Does what the chosen finding proposes, or the first one that has a proposal. */
    FIX(DesignEditor::applyFix),
    /** Shows the reed. */
    REED(editor -> editor.showPage(DesignEditor.Page.REED)),
    /** Shows more graphs. */
    GRAPHS(editor -> editor.showPage(DesignEditor.Page.GRAPHS)),
    /** Shows what changes against a blank that works, or against the saved design. */
    CHANGES(editor -> editor.showPage(DesignEditor.Page.CHANGES)),
    /** Keeps the section where it is, or lets it follow the pointer. */
    PIN(DesignEditor::togglePin),
    /** Says of the number with the focus that it was measured or assumed. */
    MEASURED(editor -> editor.form().toggleMeasured()),
    /** Shows the reed larger. */
    LARGER(editor -> editor.zoom(1.25)),
    /** Shows the reed smaller. */
    SMALLER(editor -> editor.zoom(0.8)),
    /** Shows the whole reed. */
    WHOLE(editor -> editor.zoom(0)),
    /** Copies the drawing as a picture. */
    PICTURE(DesignEditor::copyPicture, PartsEditor::copyPicture),
    /** Copies the numbers of the drawing as a table. */
    TABLE(DesignEditor::copyTable, PartsEditor::copyTable),
    /** Writes a drawing into a file. */
    EXPORT(DesignEditor::export),
    /** Writes numbers and findings through an exporter. */
    WRITE_AS(DesignEditor::writeAs),
    /** Prints a drawing. */
    PRINT(DesignEditor::print),
    /** Starts from a blank that works. */
    FIT(DesignEditor::fit),
    /** Opens my limits. */
    LIMITS(DesignEditor::limits);

    private final Consumer<DesignEditor> todo;
    private final Consumer<PartsEditor> withParts;

    EditorTask(Consumer<DesignEditor> todo) {
        this(todo, editor -> { });
    }

    EditorTask(Consumer<DesignEditor> todo, Consumer<PartsEditor> withParts) {
        this.todo = todo;
        this.withParts = withParts;
    }

    void run(PartsEditor editor) {
        withParts.accept(editor);
    }

    void run(DesignEditor editor) {
        todo.accept(editor);
    }
}
