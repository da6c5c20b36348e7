package culm.workbench.internal.explore;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.graphs.Figure;

/** Exploring a design: four questions, one of them at a time. */
public final class ExplorePage extends Composite {
    /** The questions. */
    public enum Question {
        /** What if. */
        VARIANTS("Variants"),
        /** What to measure better. */
        MATTERS("What matters"),
        /** How many will work. */
        TOLERANCES("How many will work"),
        /** What to choose. */
        CHOICE("Best choice");

        private final String words;

        Question(String words) {
            this.words = words;
        }
    }

    private final DesignSession session;
    private final Choice choice;
    private final Composite stack;
    private final VariantsPage variants;
    private final MattersPage matters;
    private final TolerancesPage tolerances;
    private final ChoicePage best;

    /**
     * The page of a design.
     *
     * @param parent where it goes
     * @param workshop what the window works with
     * @param session the design
     * @param refused told why something cannot be done
     */
    public ExplorePage(Composite parent, Workshop workshop, DesignSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.session = session;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        setLayout(layout);
        choice = new Choice(this, workshop.look(), Size.BODY, List.of(Question.values()).stream().map(q -> q.words).toList(), i -> ask(Question.values()[i]));
        GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        data.horizontalIndent = 8;
        choice.setLayoutData(data);
        stack = new Composite(this, SWT.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        workshop.look().dress(stack, Role.PAPER, Role.INK);
        variants = new VariantsPage(stack, workshop, session, refused);
        matters = new MattersPage(stack, workshop);
        tolerances = new TolerancesPage(stack, workshop, session);
        best = new ChoicePage(stack, workshop, session, refused);
        ((StackLayout) stack.getLayout()).topControl = variants;
    }

    /** Asks a question. */
    public void ask(Question question) {
        choice.choose(question.ordinal());
        ((StackLayout) stack.getLayout()).topControl = switch (question) {
            case VARIANTS -> variants;
            case MATTERS -> matters;
            case TOLERANCES -> tolerances;
            case CHOICE -> best;
        };
        stack.layout();
        show();
    }

    /** {@return the question that is asked} */
    public Question question() {
        return Question.values()[choice.chosen()];
    }

    /** Shows the design as it is now; only what can be seen. */
    public void show() {
        switch (question()) {
            case VARIANTS -> variants.show();
            case MATTERS -> matters.show(session.shown().assessment());
            case TOLERANCES -> tolerances.show();
            case CHOICE -> best.show();
        }
    }

    /** {@return the drawings of the question that is asked} */
    public List<Figure> figures() {
        return switch (question()) {
            case VARIANTS -> variants.figures();
            case MATTERS -> matters.figures();
            case TOLERANCES -> tolerances.figures();
            case CHOICE -> best.figures();
        };
    }

    /** {@return the variants} */
    public VariantsPage variants() {
        return variants;
    }

    /** {@return what matters} */
    public MattersPage matters() {
        return matters;
    }

    /** {@return how many will work} */
    public TolerancesPage tolerances() {
        return tolerances;
    }

    /** {@return the best choice} */
    public ChoicePage best() {
        return best;
    }
}
